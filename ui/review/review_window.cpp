// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/review/review_window.h"

#include "ui/commands/judge_readings.h"
#include "ui/commands/revise_observation.h"
#include "ui/review/review_words.h"
#include "ui/review/run_panel.h"
#include "ui/review/runs_model.h"
#include "ui/style/look.h"
#include "ui/text/error_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QProgressBar>
#include <QPushButton>
#include <QShortcut>
#include <QStackedWidget>
#include <QTableView>

namespace wickbook::ui {

namespace {
enum Lying { Working, Said, Found };
}

ReviewWindow::ReviewWindow(Session& session, QWidget* parent)
    : QWidget(parent, Qt::Window), session_(session) {
    build();
    connectParts();
}

ReviewWindow::~ReviewWindow() = default;

void ReviewWindow::connectParts() {
    connect(&work_, &ReviewWork::progressed, this, &ReviewWindow::showProgress);
    connect(&work_, &ReviewWork::finished, this, [this](const auto& review) { showReview(*review); });
    connect(&work_, &ReviewWork::stopped, this,
            [this] { showSaid(tr("Stopped. Nothing was changed, and nothing is kept of it.")); });
    connect(&work_, &ReviewWork::failed, this,
            [this](const store::StoreError& error) { showSaid(storeErrorWords(error)); });
    connect(&session_, &Session::observationsChanged, this, &ReviewWindow::bookChanged);
    connect(&session_, &Session::factsChanged, this, [this] {
        stale_ = true;
        updateStale();
    });
    connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& now) { panel_->show(runs_->run(now.row()), runs_->unit()); });
    connect(panel_, &RunPanel::judgeAsked, this, &ReviewWindow::judge);
    connect(panel_, &RunPanel::causeTaken, this, &ReviewWindow::correct);
    connect(&panel_->table(), &QTableView::doubleClicked, this, &ReviewWindow::openCurrent);
    list_->installEventFilter(this);
    panel_->table().installEventFilter(this);
    panel_->findChild<QLineEdit*>(QStringLiteral("why"))->installEventFilter(this);
    const auto shortcut = [this](const QKeySequence& keys, auto what) {
        connect(new QShortcut(keys, this), &QShortcut::activated, this, what);
    };
    shortcut(QKeySequence::Undo, [this] { session_.undoStack().undo(); });
    shortcut(Qt::CTRL | Qt::SHIFT | Qt::Key_Z, [this] { session_.undoStack().redo(); });
    shortcut(Qt::CTRL | Qt::Key_Y, [this] { session_.undoStack().redo(); });
    shortcut(Qt::Key_F5, [this] { look(); });
    shortcut(QKeySequence::Close, [this] { close(); });
}

void ReviewWindow::look() {
    if (work_.isRunning()) {
        return;
    }
    stale_ = false;
    updateStale();
    say({});
    looked_ = 0;
    runs_->show({}, session_.unit());
    summary_->setText(tr("Every reading is judged among its neighbours; what is marked and not yet judged is "
                         "asked about here."));
    stack_->setCurrentIndex(Working);
    showProgress(desk::WholeStage::Reading, 0, 0);
    cancel_->setFocus(Qt::OtherFocusReason);
    work_.start(session_.path(), session_.now());
}

void ReviewWindow::showProgress(desk::WholeStage stage, int done, int total) {
    const QString of = tr("reading %1 of %2").arg(QString::number(done), QString::number(total));
    switch (stage) {
    case desk::WholeStage::Reading:
        stage_->setText(total == 0 ? tr("Opening the book") : tr("Reading the book: %1").arg(of));
        break;
    case desk::WholeStage::Learning:
        stage_->setText(tr("Learning what this station usually reads"));
        break;
    case desk::WholeStage::Judging:
        stage_->setText(tr("Judging: %1").arg(of));
        break;
    }
    bar_->setRange(0, stage == desk::WholeStage::Learning ? 0 : total); // learning: no end in sight to show
    bar_->setValue(done);
}

void ReviewWindow::showSaid(const QString& sentence) {
    summary_->clear();
    said_->setText(sentence);
    stack_->setCurrentIndex(Said);
    again_->setFocus(Qt::OtherFocusReason);
}

void ReviewWindow::showReview(const desk::RegisterReview& review) {
    looked_ = review.looked;
    runs_->show(review, session_.unit());
    runs_->refresh(session_); // judged while it was being looked through
    if (runs_->rowCount() == 0) {
        showSaid({});
        updateSummary();
        return;
    }
    stack_->setCurrentIndex(Found);
    updateSummary();
    showRow(0);
    list_->setFocus(Qt::OtherFocusReason);
}

const Run* ReviewWindow::currentRun() const {
    return runs_->run(list_->currentIndex().row());
}

void ReviewWindow::showRow(int row) {
    list_->setCurrentIndex(runs_->index(row, 0));
    panel_->show(runs_->run(row), runs_->unit());
}

void ReviewWindow::updateSummary() {
    const std::size_t open = runs_->openQuestions();
    const QString looked = tr("%1 looked at").arg(readingsWords(looked_));
    if (open > 0) {
        summary_->setText(tr("%1 to ask about, in %2 groups, worst first; %3.")
                              .arg(readingsWords(open), QString::number(runs_->rowCount()), looked));
        stack_->setCurrentIndex(Found);
        return;
    }
    showSaid(tr("Nothing to ask: no reading is marked that has not been judged; %1.").arg(looked));
}

void ReviewWindow::updateStale() {
    staleRow_->setVisible(stale_);
}

void ReviewWindow::bookChanged() {
    if (stack_->currentIndex() == Working) {
        stale_ = true; // what was entered now may be behind the reader's back
        updateStale();
        return;
    }
    const Run* before = currentRun();
    const bool inTable = panel_->table().hasFocus();
    const bool answered = runs_->refresh(session_);
    // A change that answers or asks again is one of ours, or undone or done elsewhere to the same readings;
    // anything else was not looked at.
    if (!answered && !answering_) {
        stale_ = true;
        updateStale();
    }
    if (looked_ == 0) {
        return;
    }
    updateSummary();
    if (runs_->rowCount() > 0) {
        showRow(runs_->rowOf(before));
        if (inTable || stack_->focusWidget() == nullptr) {
            (currentRun() == before ? static_cast<QWidget*>(&panel_->table()) : list_)
                ->setFocus(Qt::OtherFocusReason);
        }
    }
}

void ReviewWindow::judge(record::Quality quality) {
    const Run* run = currentRun();
    const auto readings = panel_->readings();
    if (run == nullptr || readings.empty()) {
        say(tr("Choose a reading that is asked about first, or go to the list for the whole group."));
        return;
    }
    if (const QString readOnly = session_.readOnlySentence(); !readOnly.isEmpty()) {
        say(readOnly, true);
        return;
    }
    const QString judged = tr("judged %1").arg(qualityWords(quality));
    const QString why =
        panel_->why().isEmpty() ? judged : QStringLiteral("%1: %2").arg(judged, panel_->why());
    const QString what =
        tr("%1: %2, %3")
            .arg(judged, readingsWords(readings.size()), spanWords(locale(), run->found.from, run->found.to));
    answering_ = true;
    const auto done = JudgeReadings::perform(session_, readings, quality,
                                             {session_.observer().toStdString(), why.toStdString()}, what);
    answering_ = false;
    if (!done) {
        stale_ = stale_ || done.error().kind == store::StoreErrorKind::ChangedMeanwhile;
        updateStale();
        say(storeErrorWords(done.error()), true);
        return;
    }
    panel_->clearWhy();
    say(tr("%1 %2. Ctrl+Z takes it back.").arg(readingsWords(*done), judged));
}

void ReviewWindow::correct(const checks::LikelyCause& cause, const QString& reason, bool paperSaysSo) {
    const RunLine* line = panel_->current();
    if (line == nullptr) {
        return;
    }
    const record::StoredObservation before = line->checked.reading.stored;
    record::Observation after = before.values;
    if (cause.dryRead) {
        after.dry = {*cause.dryRead, false};
    }
    if (cause.wetRead) {
        after.wet = {*cause.wetRead, false};
    }
    if (cause.wick != record::WickState::NotGiven) {
        after.wick = cause.wick;
    }
    QString refused = session_.readOnlySentence();
    if (refused.isEmpty() && after == before.values) {
        refused = tr("What should have stood there is not known. Judge the reading doubtful or erroneous "
                     "instead.");
    }
    if (refused.isEmpty()) {
        if (!paperSaysSo) {
            after.origin = record::Origin::Corrected;
        }
        const QString why =
            (paperSaysSo ? tr("slip of the keys: %1") : tr("slip at the thermometer: %1")).arg(reason);
        const QString text =
            tr("corrected %1, %2")
                .arg(shortDateWords(locale(), record::filedDate(before.values)), timeOfWords(before.values));
        answering_ = true;
        const auto done = ReviseObservation::perform(
            session_, before, after, {session_.observer().toStdString(), why.toStdString()}, text);
        answering_ = false;
        if (done) {
            say(tr("%1: %2. What was read first is kept. Ctrl+Z takes it back.").arg(text, reason));
            return;
        }
        refused = storeErrorWords(done.error());
    }
    panel_->show(currentRun(), runs_->unit());
    list_->setFocus(Qt::OtherFocusReason);
    say(refused, true);
}

void ReviewWindow::openCurrent() {
    const RunLine* line = panel_->current();
    if (line == nullptr) {
        return;
    }
    const record::Observation& values = line->checked.reading.values();
    emit openInRegister(values.hour.value_or(record::ObservingHour{record::filedDate(values), {}}));
}

void ReviewWindow::step(int rows) {
    const int row = list_->currentIndex().row() + rows;
    if (row >= 0 && row < runs_->rowCount()) {
        showRow(row);
        list_->setFocus(Qt::OtherFocusReason);
    }
}

bool ReviewWindow::takeKey(const QKeyEvent& event) {
    if ((event.modifiers() & ~Qt::KeypadModifier) != Qt::NoModifier) {
        return false;
    }
    if (event.key() == Qt::Key_Escape && !panel_->stopAsking()) {
        work_.isRunning() ? work_.stop() : static_cast<void>(close());
        return true;
    }
    if (event.key() == Qt::Key_Escape) {
        return true; // back from the question to the notes
    }
    if (stack_->currentIndex() != Found) {
        return false;
    }
    switch (event.key()) {
    case Qt::Key_S:
        judge(record::Quality::Sound);
        return true;
    case Qt::Key_D:
        judge(record::Quality::Doubtful);
        return true;
    case Qt::Key_E:
        judge(record::Quality::Erroneous);
        return true;
    case Qt::Key_W:
        panel_->focusWhy();
        return true;
    case Qt::Key_N:
        step(1);
        return true;
    case Qt::Key_P:
        step(-1);
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        openCurrent();
        return true;
    default:
        return event.key() >= Qt::Key_1 && event.key() <= Qt::Key_3 &&
               panel_->takeCause(event.key() - Qt::Key_1);
    }
}

void ReviewWindow::keyPressEvent(QKeyEvent* event) {
    if (!takeKey(*event)) {
        QWidget::keyPressEvent(event);
    }
}

void ReviewWindow::closeEvent(QCloseEvent* event) {
    work_.stop();
    QWidget::closeEvent(event);
}

bool ReviewWindow::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusIn && watched == list_) {
        panel_->chooseAll();
        return false;
    }
    if (event->type() == QEvent::FocusIn && watched == &panel_->table()) {
        panel_->chooseCurrent();
        return false;
    }
    if (event->type() != QEvent::KeyPress) {
        return false;
    }
    const auto* key = static_cast<QKeyEvent*>(event);
    if (watched == list_ || watched == &panel_->table()) {
        return takeKey(*key);
    }
    // The why: letters are letters there, Enter and Escape go back to the keys.
    if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter || key->key() == Qt::Key_Escape) {
        (panel_->table().selectionModel()->hasSelection() ? static_cast<QWidget*>(&panel_->table()) : list_)
            ->setFocus(Qt::OtherFocusReason);
        return true;
    }
    return false;
}

void ReviewWindow::say(const QString& sentence, bool wrong) {
    message_->setText(sentence);
    message_->setVisible(!sentence.isEmpty()); // an empty line is room for the notes
    if (message_->property("wrong").toBool() != wrong) {
        message_->setProperty("wrong", wrong);
        refreshLook(*message_);
    }
}

} // namespace wickbook::ui
