// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/month_report.h"

#include <QFrame>
#include <QLocale>

class QCheckBox;
class QComboBox;
class QLabel;

namespace wickbook::ui {

/// Why an hour has no reading: a word of the trade or one's own.
class MissingPanel : public QFrame {
    Q_OBJECT

public:
    explicit MissingPanel(QLocale locale, QWidget* parent = nullptr);

    /// run: how many hours in a row stand without anything written down, this one among them.
    void open(const report::MonthLine& line, int run = 1);
    /// The reason is to hold for the whole run.
    [[nodiscard]] bool forRun() const;
    /// As the book keeps it; empty while nothing is chosen.
    [[nodiscard]] QString reason() const;
    void say(const QString& sentence);

signals:
    void saveAsked();
    void closeAsked();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QLocale locale_;
    QLabel* heading_ = nullptr;
    QComboBox* reason_ = nullptr;
    QCheckBox* run_ = nullptr;
    QLabel* message_ = nullptr;
};

} // namespace wickbook::ui
