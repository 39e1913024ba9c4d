// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/month_report.h"

#include <QFrame>
#include <QLocale>

class QComboBox;
class QLabel;

namespace wickbook::ui {

/// Why an hour has no reading: a word of the trade or one's own.
class MissingPanel : public QFrame {
    Q_OBJECT

public:
    explicit MissingPanel(QLocale locale, QWidget* parent = nullptr);

    void open(const report::MonthLine& line);
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
    QLabel* message_ = nullptr;
};

} // namespace wickbook::ui
