// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"

#include <QLocale>
#include <QWidget>

class QLabel;
class QTableView;

namespace wickbook::ui {

class QueriesModel;

/// The queries to settle, keyed through with one hand: S sound, D doubtful, E erroneous, Enter opens the
/// line; the caret moves on by itself, since a judged reading leaves the list.
class QueriesPanel : public QWidget {
    Q_OBJECT

public:
    QueriesPanel(Session& session, QLocale locale, QWidget* parent = nullptr);

    void show(const report::MonthReport& report);
    [[nodiscard]] QTableView& view() const { return *view_; }

signals:
    void openAsked(const wickbook::record::ObservingHour& hour);
    void said(const QString& sentence);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void judge(record::Quality quality);
    void explain();

    Session& session_;
    QLocale locale_;
    QueriesModel* model_ = nullptr;
    QLabel* heading_ = nullptr;
    QTableView* view_ = nullptr;
    QLabel* explained_ = nullptr;
    QLabel* keys_ = nullptr;
};

} // namespace wickbook::ui
