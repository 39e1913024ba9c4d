// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"

#include <QWidget>
#include <date/date.h>

#include <set>
#include <vector>

class QCheckBox;
class QLabel;
class QLineEdit;
class QMenu;
class QPushButton;
class QStackedWidget;

/// The month as a page of the register: a line for every hour the station promised, read or not. What was
/// read stands exactly as read; every change asks why and appends a revision, which the panel at the side
/// shows. Everything is reached by keys: PgUp and PgDn turn the month, Enter revises, S D E judge, M says why
/// an hour is missing, V moves, Delete withdraws, Space reads back against the paper and goes on. Shift with
/// the arrows marks several lines for one act. Owns its widgets; the session outlives it.

namespace wickbook::desk {
struct MovePlan;
}

namespace wickbook::ui {

class EntryPanel;
class FindBar;
class HistoryPanel;
class MissingPanel;
class RegisterFilter;
class RegisterModel;
class RegisterSearch;
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

protected:
    void showEvent(QShowEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QWidget* buildTop();
    QMenu* buildMenu();
    QWidget* buildSide();
    void connectView();
    void connectFind();
    void fitColumns();
    void fitNote();
    void reload();
    /// Something in the book has changed: read again now, or once the page is looked at.
    void bookChanged();
    void putCaret(const record::ObservingHour& hour);
    [[nodiscard]] const report::MonthLine* currentLine() const;
    void currentLineChanged();
    /// Lines marked, in time order, those without anything written down left out.
    [[nodiscard]] std::vector<record::StoredObservation> markedLines() const;
    [[nodiscard]] std::set<record::Uuid> markedIds() const;
    void markAgain(const std::set<record::Uuid>& marked);
    void openEntry();
    void saveEntry();
    void openMissing();
    void saveMissing();
    void saveMissingRun();
    [[nodiscard]] std::vector<record::ExpectedHour> missedRun() const;
    void closeSide();
    void judge(record::Quality quality);
    void withdraw();
    void readBack(bool ticked, bool goOn = true);
    void goToNextLine();
    void openPaper();
    void openMove();
    void moveLines(const desk::MovePlan& plan, const QString& why);
    void findOn(bool forward);
    void showFound(const record::ObservingHour& hour, bool wrapped);
    /// By the column under the caret: up, down, and back as on the page.
    void orderByColumn();
    void copyTable();
    void say(const QString& sentence);
    void goToTyped();
    void step(int months);
    void tellUndo(int index);
    void updateSummary();
    /// The sentence why it could not be stored; empty when it was.
    QString perform(const std::optional<record::StoredObservation>& before, const record::Observation& after,
                    const QString& why, const QString& text);
    /// Says how an act on several lines went; false where it was refused.
    bool tell(const store::Result<std::size_t>& done, const QString& text);
    [[nodiscard]] record::Author author(const QString& why) const;

    Session& session_;
    date::year_month month_{};
    int stackIndex_ = 0;                         ///< of the undo stack, as last seen
    bool refused_ = false;                       ///< the book has just refused a change, and that was said
    bool stale_ = false;                         ///< the book has changed while the page was out of sight
    std::optional<record::ObservingHour> caret_; ///< kept over a reload
    RegisterModel* model_ = nullptr;
    RegisterFilter* filter_ = nullptr;
    RegisterView* view_ = nullptr;
    FindBar* find_ = nullptr;
    RegisterSearch* search_ = nullptr;
    EntryPanel* entry_ = nullptr;
    MissingPanel* missing_ = nullptr;
    HistoryPanel* history_ = nullptr;
    QStackedWidget* side_ = nullptr;
    QLabel* heading_ = nullptr;
    QLabel* summary_ = nullptr;
    QLabel* empty_ = nullptr;
    QLabel* message_ = nullptr;
    QLineEdit* filterEdit_ = nullptr;
    QLineEdit* jump_ = nullptr;
    QCheckBox* onlyQueries_ = nullptr;
    QPushButton* undo_ = nullptr;
    QPushButton* redo_ = nullptr;
};

} // namespace wickbook::ui
