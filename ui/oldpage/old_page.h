// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/station_record.h"
#include "ui/oldpage/end_panel.h"
#include "ui/oldpage/page_model.h"
#include "ui/session/session.h"

#include <QPersistentModelIndex>
#include <QWidget>

#include <optional>

class QCheckBox;
class QComboBox;
class QFrame;
class QLabel;
class QLineEdit;
class QPushButton;

/// From an old page: a month of the paper register typed off line by line. A line goes into the book when the
/// pen leaves it, with the book and page it stands on; what could not be stored stays on the screen. Nothing
/// here is refused for being unlikely: the paper is the original, and what it says is kept and marked.
/// The same page typed a second time is read back against the first.

namespace wickbook::desk {
struct MovePlan;
}

namespace wickbook::ui {

class MonthEdit;
class PageView;

class OldPage : public QWidget {
    Q_OBJECT

public:
    /// settingsFile: where the habits of the page are kept (page_habits.h); empty: nowhere.
    OldPage(Session& session, QString settingsFile, QWidget* parent = nullptr);
    ~OldPage() override;

    void showMonth(date::year_month month);
    [[nodiscard]] date::year_month month() const { return month_; }
    /// Puts the pen on the first stop that is still open.
    void focusPage();
    /// Stores what the pen has not left yet; false where something could not be stored.
    bool leaveAll();

signals:
    void closeAsked();
    /// The station has no hours then: its periods are the Station page's.
    void stationAsked();

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    // old_page_layout.cpp
    void build();
    QWidget* buildTop();
    QWidget* buildChoices();
    QWidget* buildReasonBar();
    QWidget* buildFoot();
    QWidget* buildEmpty();
    void addKeys();
    void fitColumns();
    void takeHeadOrder();

    // old_page.cpp
    [[nodiscard]] store::Result<std::vector<PageLine>> readLines() const;
    void bookChanged();
    void applyHabits(const PageHabits& habits);
    void keepHabits();
    void stepMonth(int by);
    void goToDay();
    void movePenColumn(int by);
    void chooseColumns();
    void chooseMonth();
    void currentChanged(const QModelIndex& current, const QModelIndex& previous);
    void showWords();
    void showEmpty();
    void say(const QString& sentence, bool wrong = false);
    [[nodiscard]] QString lineWords(const PageLine& line) const;

    // old_page_saving.cpp
    bool leaveLine(int number);
    bool leaveAgain(int number);
    bool write(int number, const record::Observation& after, const QString& why, bool keepTyped = false);
    void noteStored(int number, const record::Uuid& subject);
    void judge(int number);
    void judgeAround(int number);
    void askReason(int number);
    void giveReason();
    void dropReason();
    void tryAgain();
    [[nodiscard]] record::PaperPlace paper() const;
    [[nodiscard]] QString lineName(const PageLine& line) const;

    // old_page_end.cpp
    void showEnd();
    void refreshEnd();
    void closeEnd();
    [[nodiscard]] std::vector<EndQuery> endQueries() const;
    void addFindings(std::vector<EndQuery>& queries, int number) const;
    void addDifferences(std::vector<EndQuery>& queries, int number) const;
    [[nodiscard]] QString endSummary() const;
    void takeCause(int number, const checks::LikelyCause& cause, const QString& reason, bool paperSaysSo);
    void takeCauseHere(int index);
    void settle(int number, PageField field, bool again);
    void judgeLine(int number, record::Quality quality);
    void goToLine(int number, PageField field);
    void setReadingBack(bool on);
    void openMove();
    void moveLines(const desk::MovePlan& plan, const QString& why);

    Session& session_;
    QString settingsFile_;
    PageHabits habits_;
    date::year_month month_{};
    bool saving_ = false;
    bool loaded_ = false;
    bool stale_ = false; ///< the book has changed while the page was out of sight
    QString reason_;     ///< why lines that were in the book are changed; asked once for the page
    std::optional<int> askedFor_;
    PageModel* model_ = nullptr;
    PageView* view_ = nullptr;
    EndPanel* end_ = nullptr;
    QLabel* heading_ = nullptr;
    MonthEdit* monthEdit_ = nullptr;
    QLineEdit* day_ = nullptr;
    QLineEdit* paperBook_ = nullptr;
    QLineEdit* paperPage_ = nullptr;
    QLineEdit* readBy_ = nullptr;
    QCheckBox* withoutPoint_ = nullptr;
    QComboBox* direction_ = nullptr;
    QComboBox* hours_ = nullptr;
    QCheckBox* notesAtEnd_ = nullptr;
    QLabel* words_ = nullptr;
    QLabel* message_ = nullptr;
    QPushButton* retry_ = nullptr;
    QFrame* reasonBar_ = nullptr;
    QLineEdit* reasonEdit_ = nullptr;
    QWidget* empty_ = nullptr;
    QLabel* emptyWords_ = nullptr;
    QPushButton* emptyTurn_ = nullptr;
    QPushButton* readAgain_ = nullptr;
    QPushButton* move_ = nullptr;
};

} // namespace wickbook::ui
