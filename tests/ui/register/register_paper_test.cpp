// SPDX-License-Identifier: GPL-3.0-or-later
// Reading the register back against the paper: ticks by one key, the page each line stands on, and what takes
// a tick off again.
#include "tests/ui/register/register_case.h"
#include "ui/register/history_panel.h"
#include "ui/register/paper_dialog.h"
#include "ui/register/register_filter.h"
#include "ui/register/register_model.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>

namespace wickbook::ui {

namespace {

using namespace std::chrono_literals;
using test::day;

class ReadingBack : public test::RegisterPageCase {
protected:
    [[nodiscard]] bool ticked(unsigned dayOfMay, record::HourOfDay hour) const {
        return at(day(2025, 5, dayOfMay), hour).values.readBack;
    }
    QString lastRevision() { return part<QListWidget>("revisions").item(revisions() - 1)->text(); }
    int revisions() { return part<QListWidget>("revisions").count(); }
    PaperDialog* paper() {
        key(Qt::Key_P);
        return page_->findChild<PaperDialog*>();
    }
};

TEST_F(ReadingBack, OneKeyTicksALineAndGoesOnToTheNext) {
    page_->showHour({day(2025, 5, 4), 9h});
    for (int i = 0; i < 4; ++i) {
        key(Qt::Key_Space);
    }
    EXPECT_TRUE(ticked(4, 9h));
    EXPECT_TRUE(ticked(4, 21h));
    EXPECT_TRUE(ticked(5, 9h));
    EXPECT_TRUE(ticked(5, 21h));
    EXPECT_FALSE(ticked(3, 21h));
    EXPECT_EQ(page_->currentHour(), (record::ObservingHour{day(2025, 5, 6), 9h}));
    // The 6th was not read: there is nothing to read back, and the hand goes on.
    key(Qt::Key_Space);
    key(Qt::Key_Space);
    EXPECT_EQ(page_->currentHour(), (record::ObservingHour{day(2025, 5, 7), 9h}));
    EXPECT_FALSE(session_->book().atHour({day(2025, 5, 6), 9h})->has_value());
    EXPECT_TRUE(part<QLabel>("summary").text().contains(QStringLiteral("4 of 24 read back")))
        << part<QLabel>("summary").text().toStdString();
    EXPECT_EQ(at(day(2025, 5, 4), 9h).stamp.author.why, "read back against the paper");
    EXPECT_EQ(at(day(2025, 5, 4), 9h).stamp.author.who, "T");
}

TEST_F(ReadingBack, ATickedLineIsPassedOverAndTheTickComesOffByKeys) {
    page_->showHour({day(2025, 5, 4), 9h});
    key(Qt::Key_Space);
    key(Qt::Key_Up);
    key(Qt::Key_Space);
    EXPECT_EQ(at(day(2025, 5, 4), 9h).revisionCount, 2) << "ticking twice is no change";
    EXPECT_EQ(page_->currentHour(), (record::ObservingHour{day(2025, 5, 4), 21h}));
    key(Qt::Key_Up);
    key(Qt::Key_Space, Qt::ShiftModifier);
    EXPECT_FALSE(ticked(4, 9h));
    EXPECT_EQ(page_->currentHour(), (record::ObservingHour{day(2025, 5, 4), 9h}));
    EXPECT_EQ(revisions(), 3);
    EXPECT_TRUE(lastRevision().contains(QStringLiteral("no longer read back")));
}

TEST_F(ReadingBack, UndoAndRedoAppendAndTheHistorySaysSo) {
    page_->showHour({day(2025, 5, 4), 9h});
    key(Qt::Key_Space);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_FALSE(ticked(4, 9h));
    key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(ticked(4, 9h));
    EXPECT_EQ(at(day(2025, 5, 4), 9h).revisionCount, 4);
    page_->showHour({day(2025, 5, 4), 9h});
    EXPECT_EQ(revisions(), 4);
    EXPECT_TRUE(lastRevision().contains(QStringLiteral("read back against the paper")));
    EXPECT_TRUE(session_->book().verify()->sound());
}

TEST_F(ReadingBack, WhatChangesTheReadingTakesTheTickOffAndJudgingDoesNot) {
    page_->showHour({day(2025, 5, 4), 9h});
    key(Qt::Key_Space);
    key(Qt::Key_Up);
    key(Qt::Key_D);
    EXPECT_TRUE(ticked(4, 9h)) << "what was judged is no word of the paper";
    key(Qt::Key_Return);
    type("note", QStringLiteral("hazy"));
    type("why", QStringLiteral("forgotten"));
    QTest::keyClick(&part<QLineEdit>("why"), Qt::Key_Return);
    EXPECT_EQ(at(day(2025, 5, 4), 9h).values.note, "hazy");
    EXPECT_EQ(at(day(2025, 5, 4), 9h).values.origin, record::Origin::Observed) << "a note corrects nothing";
    EXPECT_FALSE(ticked(4, 9h)) << "the note was not read back";
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(ticked(4, 9h)) << "as it was, it was read back";
    key(Qt::Key_Delete);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(ticked(4, 9h));
}

TEST_F(ReadingBack, SeveralMarkedLinesAreTickedAsOneStep) {
    page_->showHour({day(2025, 5, 4), 9h});
    key(Qt::Key_Down, Qt::ShiftModifier);
    key(Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_TRUE(part<QLabel>("summary").text().contains(QStringLiteral("3 lines marked")))
        << part<QLabel>("summary").text().toStdString();
    key(Qt::Key_Space);
    EXPECT_TRUE(ticked(4, 9h) && ticked(4, 21h) && ticked(5, 9h));
    EXPECT_EQ(session_->undoStack().count(), 1);
    EXPECT_TRUE(part<QLabel>("summary").text().contains(QStringLiteral("3 lines marked")))
        << "the marks are lost with the act";
    key(Qt::Key_D);
    EXPECT_EQ(at(day(2025, 5, 5), 9h).values.quality, record::Quality::Doubtful);
    EXPECT_EQ(session_->undoStack().count(), 2);
    key(Qt::Key_Z, Qt::ControlModifier);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_FALSE(ticked(4, 9h) || ticked(4, 21h) || ticked(5, 9h));
}

TEST_F(ReadingBack, TheMonthsPageIsNamedAsOneStepOfUndo) {
    auto* asked = paper();
    ASSERT_NE(asked, nullptr);
    QTest::keyClicks(asked->focusWidget(), QStringLiteral("Pocket-book 3"));
    QTest::keyClick(asked->focusWidget(), Qt::Key_Tab);
    QTest::keyClicks(asked->focusWidget(), QStringLiteral("17"));
    EXPECT_TRUE(asked->findChild<QLabel*>(QStringLiteral("paperSummary"))
                    ->text()
                    .contains(QStringLiteral("24 lines will stand on: Pocket-book 3, p. 17")));
    QTest::keyClick(asked, Qt::Key_Return);
    const record::PaperPlace place{"Pocket-book 3", "17"};
    EXPECT_EQ(at(day(2025, 5, 1), 9h).values.paper, place);
    EXPECT_EQ(at(day(2025, 5, 13), 21h).values.paper, place);
    EXPECT_EQ(session_->undoStack().count(), 1);
    page_->showHour({day(2025, 5, 13), 21h});
    EXPECT_EQ(cell(RegisterModel::Paper), QStringLiteral("Pocket-book 3, p. 17"));
    EXPECT_TRUE(lastRevision().contains(QStringLiteral("paper Pocket-book 3, p. 17")))
        << lastRevision().toStdString();
    session_->undoStack().undo();
    EXPECT_EQ(at(day(2025, 5, 1), 9h).values.paper, std::nullopt);
    EXPECT_EQ(at(day(2025, 5, 13), 21h).revisionCount, 3);
}

TEST_F(ReadingBack, MarkedLinesAreMeantFirstAndAnEmptyPlaceIsTakenAway) {
    page_->showHour({day(2025, 5, 1), 9h});
    key(Qt::Key_Down, Qt::ShiftModifier);
    auto* asked = paper();
    asked->findChild<QLineEdit*>(QStringLiteral("paperPage"))->setText(QStringLiteral("16"));
    asked->accept();
    EXPECT_EQ(at(day(2025, 5, 1), 21h).values.paper, (record::PaperPlace{"", "16"}));
    EXPECT_EQ(at(day(2025, 5, 2), 9h).values.paper, std::nullopt);
    delete asked;
    asked = paper(); // still marked, and their place stands in the fields
    EXPECT_EQ(asked->findChild<QLineEdit*>(QStringLiteral("paperPage"))->text(), QStringLiteral("16"));
    EXPECT_FALSE(asked->findChild<QPushButton*>(QStringLiteral("paperKeep"))->isEnabled());
    asked->findChild<QLineEdit*>(QStringLiteral("paperPage"))->clear();
    asked->accept();
    EXPECT_EQ(at(day(2025, 5, 1), 21h).values.paper, std::nullopt);
}

TEST_F(ReadingBack, ABoxWaitsBesideEveryLineOnceTheMonthKnowsPaper) {
    const auto& model = *page_->findChild<RegisterModel*>();
    const auto state = [&](int row) {
        return static_cast<PaperState>(
            model.index(row, RegisterModel::ReadBack).data(RegisterModel::PaperRole).toInt());
    };
    EXPECT_EQ(state(0), PaperState::Nothing);
    EXPECT_FALSE(part<QLabel>("summary").text().contains(QStringLiteral("read back")));
    page_->showHour({day(2025, 5, 1), 9h});
    key(Qt::Key_Space);
    EXPECT_EQ(state(0), PaperState::ReadBack);
    EXPECT_EQ(state(1), PaperState::Open);
    EXPECT_EQ(state(10), PaperState::Nothing) << "nothing was written on the 6th";
}

TEST_F(ReadingBack, AClickOnABoxTicksItAndAnotherTakesItOff) {
    page_->showHour({day(2025, 5, 1), 9h});
    key(Qt::Key_Space); // the month knows paper from now on
    const auto click = [this](int row) {
        const QModelIndex box = view_->model()->index(row, RegisterModel::ReadBack);
        view_->scrollTo(box);
        QTest::mouseClick(view_->viewport(), Qt::LeftButton, {}, view_->visualRect(box).center());
    };
    click(2); // 2 May, 9 h
    EXPECT_TRUE(ticked(2, 9h));
    EXPECT_EQ(page_->currentHour(), (record::ObservingHour{day(2025, 5, 2), 9h})) << "the caret has gone on";
    click(2);
    EXPECT_FALSE(ticked(2, 9h));
    EXPECT_EQ(at(day(2025, 5, 2), 9h).revisionCount, 3);
    click(10); // 6 May, 9 h: nothing is written down there
    EXPECT_FALSE(session_->book().atHour({day(2025, 5, 6), 9h})->has_value());
}

TEST_F(ReadingBack, AMissingHourIsReadBackToo) {
    page_->showHour({day(2025, 5, 6), 9h});
    key(Qt::Key_M);
    auto& reason = part<QComboBox>("reason");
    QTest::keyClicks(&reason, QStringLiteral("ill"));
    QTest::keyClick(&reason, Qt::Key_Return);
    key(Qt::Key_Space);
    EXPECT_TRUE(ticked(6, 9h));
    page_->showHour({day(2025, 5, 6), 9h});
    key(Qt::Key_M);
    reason.setEditText(QStringLiteral("away"));
    QTest::keyClick(&reason, Qt::Key_Return);
    EXPECT_EQ(at(day(2025, 5, 6), 9h).values.missingReason, "away");
    EXPECT_FALSE(ticked(6, 9h)) << "the paper said ill";
}

TEST_F(ReadingBack, SortedByTheTickThoseThatWaitStandTogether) {
    page_->showHour({day(2025, 5, 3), 9h});
    key(Qt::Key_Space);
    view_->sortByColumn(RegisterModel::ReadBack, Qt::DescendingOrder);
    EXPECT_EQ(view_->model()->index(0, RegisterModel::ReadBack).data().toString(),
              QStringLiteral("read back"));
    EXPECT_TRUE(view_->model()->index(1, RegisterModel::ReadBack).data().toString().isEmpty());
}

class Estimating : public test::RegisterPageCase {};

TEST_F(Estimating, NeedsAReasonIsMarkedAndStaysOutOfExtremes) {
    const auto& model = *page_->findChild<RegisterModel*>();
    const auto driest = model.report().summary.all.lowestHumidity;
    const auto counted = model.report().summary.all.n;
    // 6 May was not read; an estimate far drier than the month must be no extreme (job description: estimates
    // are marked and stay out of extremes).
    page_->showHour({day(2025, 5, 6), 21h});
    key(Qt::Key_Return);
    type("dry", QStringLiteral("20.0"));
    type("wet", QStringLiteral("12.0"));
    QTest::mouseClick(&part<QCheckBox>("estimated"), Qt::LeftButton, {}, QPoint(8, 8));
    QTest::keyClick(&part<QLineEdit>("dry"), Qt::Key_Return);
    EXPECT_FALSE(session_->book().atHour({day(2025, 5, 6), 21h})->has_value()) << "without a reason";
    EXPECT_TRUE(part<QLineEdit>("why").hasFocus());
    QTest::keyClicks(&part<QLineEdit>("why"), QStringLiteral("from the thermograph"));
    QTest::keyClick(&part<QLineEdit>("why"), Qt::Key_Return);
    const record::StoredObservation stored = at(day(2025, 5, 6), 21h);
    EXPECT_EQ(stored.values.origin, record::Origin::Estimated);
    EXPECT_EQ(stored.values.quality, record::Quality::NotJudged) << "origin and quality are two things";
    EXPECT_EQ(stored.stamp.author.why, "from the thermograph");
    EXPECT_EQ(cell(RegisterModel::Origin), QStringLiteral("estimated"));
    EXPECT_EQ(cell(RegisterModel::State), QStringLiteral("estimated, not read"));
    EXPECT_EQ(model.report().summary.all.n, counted);
    ASSERT_TRUE(driest && model.report().summary.all.lowestHumidity);
    EXPECT_EQ(model.report().summary.all.lowestHumidity->value, driest->value);

    // A note more does not make it read; a value found in the pocket-book does.
    key(Qt::Key_Return);
    type("note", QStringLiteral("paper torn"));
    type("why", QStringLiteral("note added"));
    QTest::keyClick(&part<QLineEdit>("why"), Qt::Key_Return);
    EXPECT_EQ(at(day(2025, 5, 6), 21h).values.origin, record::Origin::Estimated);
    key(Qt::Key_Return);
    type("dry", QStringLiteral("13.1"));
    type("wet", QStringLiteral("11.2"));
    QTest::mouseClick(&part<QCheckBox>("estimated"), Qt::LeftButton, {}, QPoint(8, 8));
    type("why", QStringLiteral("page found"));
    QTest::keyClick(&part<QLineEdit>("why"), Qt::Key_Return);
    EXPECT_EQ(at(day(2025, 5, 6), 21h).values.origin, record::Origin::Observed);
    EXPECT_EQ(at(day(2025, 5, 6), 21h).revisionCount, 3);
}

} // namespace

} // namespace wickbook::ui
