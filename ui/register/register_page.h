// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"

#include <QWidget>
#include <date/date.h>

class QCheckBox;
class QLabel;
class QLineEdit;
class QSortFilterProxyModel;
class QSplitter;
class QStackedWidget;

/// The month as a page of the register: a line for every hour the station promised, read or not. What was
/// read stands exactly as read; every change asks why and appends a revision, which the panel at the side
/// shows. Everything is reached by keys: PgUp and PgDn turn the month, Enter revises, S D E judge, M says why
/// an hour is missing, Delete withdraws. Owns its widgets; the session outlives it.

namespace wickbook::ui {

class EntryPanel;
class HistoryPanel;
class RegisterModel;
class RegisterView;

class RegisterPage : public QWidget {
    Q_OBJECT

public:
    explicit RegisterPage(Session& session, QWidget* parent = nullptr);
    ~RegisterPage() override;

    [[nodiscard]] date::year_month month() const;
    /// The observation's line under the caret; none on an hour without one.
    [[nodiscard]] std::optional<record::ObservingHour> currentHour() const;

public slots:
    void showMonth(date::year_month month);
    /// Turns to the month of the hour and puts the caret on its line; an extra reading is found by its date
    /// and clock time.
    void showHour(const wickbook::record::ObservingHour& hour);

signals:
    /// An hour not yet written down that can still be read now is entered on the Observe page.
    void openInObserve(const wickbook::record::ObservingHour& hour);

private:
    void build();
    void reload();
    void currentLineChanged();
    void openEntry();
    void openMissing();
    void closeEntry();
    void judge(record::Quality quality);
    void withdraw();
    void copyTable();
    void say(const QString& sentence);
    void askForDate();
    void updateSummary();

    Session& session_;
    RegisterModel* model_ = nullptr;
    QSortFilterProxyModel* filter_ = nullptr;
    RegisterView* view_ = nullptr;
    EntryPanel* entry_ = nullptr;
    HistoryPanel* history_ = nullptr;
    QStackedWidget* side_ = nullptr;
    QLabel* heading_ = nullptr;
    QLabel* summary_ = nullptr;
    QLabel* empty_ = nullptr;
    QLabel* message_ = nullptr;
    QLineEdit* search_ = nullptr;
    QLineEdit* jump_ = nullptr;
    QCheckBox* onlyQueries_ = nullptr;
};

} // namespace wickbook::ui
