// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/review/review_work.h"
#include "ui/session/session.h"

#include <QWidget>

class QKeyEvent;
class QLabel;
class QListView;
class QProgressBar;
class QPushButton;
class QStackedWidget;

/// "Look through the whole register": a window of its own beside the main one. It reads and judges the whole
/// book on a thread of its own, then asks in groups, worst first. Every answer is an ordinary revision that
/// can be undone; what is answered leaves the list. Where the book has changed otherwise, it says so and
/// offers to look again. The session is borrowed and outlives the window.

namespace wickbook::ui {

class RunPanel;
class RunsModel;
struct Run;

class ReviewWindow : public QWidget {
    Q_OBJECT

public:
    explicit ReviewWindow(Session& session, QWidget* parent = nullptr);
    ~ReviewWindow() override;

    /// Looks through the book from the beginning; does nothing while it is at it already.
    void look();
    [[nodiscard]] bool isLooking() const { return work_.isRunning(); }

signals:
    void openInRegister(const wickbook::record::ObservingHour& hour);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    /// Closing stops the work.
    void closeEvent(QCloseEvent* event) override;

private:
    void build();
    QWidget* buildWorking();
    QWidget* buildSaid();
    QWidget* buildFound();
    void connectParts();
    void showProgress(desk::WholeStage stage, int done, int total);
    void showReview(const desk::RegisterReview& review);
    void showSaid(const QString& sentence);
    void showRow(int row);
    void bookChanged();
    void updateSummary();
    void updateStale();
    void judge(record::Quality quality);
    void correct(const checks::LikelyCause& cause, const QString& reason, bool paperSaysSo);
    void openCurrent();
    void step(int rows);
    bool takeKey(const QKeyEvent& event);
    void say(const QString& sentence, bool wrong = false);
    [[nodiscard]] const Run* currentRun() const;

    Session& session_;
    ReviewWork work_;
    std::size_t looked_ = 0;
    bool answering_ = false; ///< the change the session tells of is ours
    bool stale_ = false;     ///< the book holds something that was not looked at
    RunsModel* runs_ = nullptr;
    QLabel* summary_ = nullptr;
    QWidget* staleRow_ = nullptr;
    QStackedWidget* stack_ = nullptr;
    QLabel* stage_ = nullptr;
    QProgressBar* bar_ = nullptr;
    QPushButton* cancel_ = nullptr;
    QLabel* said_ = nullptr;
    QPushButton* again_ = nullptr;
    QListView* list_ = nullptr;
    RunPanel* panel_ = nullptr;
    QLabel* message_ = nullptr;
};

} // namespace wickbook::ui
