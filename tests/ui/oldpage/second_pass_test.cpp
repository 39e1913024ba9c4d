// SPDX-License-Identifier: GPL-3.0-or-later
// The page typed a second time, the month that was wrong, and what happens when the disk says no.
#include "tests/ui/oldpage/old_page_case.h"
#include "ui/commands/move_observations.h"
#include "ui/moving/month_edit.h"
#include "ui/moving/move_dialog.h"

#include <QDialog>
#include <sys/resource.h>

#include <csignal>

namespace wickbook::ui {

namespace {

using test::day;
using test::OldPageCase;

class SecondPass : public OldPageCase {
protected:
    void SetUp() override {
        OldPageCase::SetUp();
        hand(QStringLiteral("12.4\n10.1\n9.8\n8.7\n13.1\n11.0\nma\n"));
        hand(Qt::Key_Up); // off the line after it
    }
    void secondPass() {
        part<QPushButton>("typeAgain").click();
        ASSERT_TRUE(model().isReadingBack());
        penOn(0, PageField::Dry);
    }
};

TEST_F(SecondPass, IsBlindAndMarksWhatIsAlike) {
    secondPass();
    EXPECT_EQ(cell(0, PageField::Dry), QString{}) << "the first pass must not be seen";
    EXPECT_EQ(cell(0, PageField::Wet), QString{});
    hand(QStringLiteral("12.4\n10.1\n"));
    ASSERT_TRUE(kept(1, 9)->values.readBack);
    EXPECT_EQ(kept(1, 9)->revisionCount, 2);
    EXPECT_EQ(model().markOf(model().line(0)), PageMark::ReadBack);
    hand(QStringLiteral("9.8\n8.7\n13.1\n11.0\nma\n"));
    EXPECT_TRUE(kept(2, 21)->values.readBack) << "a missing line is read back too";
    session_->undoStack().undo();
    EXPECT_FALSE(kept(2, 21)->values.readBack) << "read back can be taken back";
    part<QPushButton>("typeAgain").click();
    EXPECT_EQ(cell(0, PageField::Dry), QStringLiteral("12.4"));
}

TEST_F(SecondPass, DifferencesAreShownWithBothValuesAndThePaperDecides) {
    secondPass();
    hand(QStringLiteral("12.4\n11.0\n8.9\n8.7\n"));
    EXPECT_FALSE(kept(1, 9)->values.readBack);
    EXPECT_EQ(model().markOf(model().line(0)), PageMark::Differs);
    penOn(0, PageField::Dry);
    const QString words = part<QLabel>("lineWords").text();
    EXPECT_TRUE(words.contains(QStringLiteral("10.1")) && words.contains(QStringLiteral("11.0")))
        << words.toStdString();
    hand(Qt::Key_E, Qt::ControlModifier);
    const auto* end = page_->findChild<EndPanel*>();
    ASSERT_EQ(end->queries().size(), 2U);
    hand(QStringLiteral("2")); // the paper says what was typed the second time
    EXPECT_EQ(kept(1, 9)->values.wet.value->value.toText(), "11.0");
    EXPECT_EQ(kept(1, 9)->values.origin, record::Origin::Observed);
    EXPECT_TRUE(kept(1, 9)->values.readBack);
    EXPECT_TRUE(QString::fromStdString(kept(1, 9)->stamp.author.why).contains(QStringLiteral("10.1")));
    ASSERT_EQ(end->queries().size(), 1U);
    hand(QStringLiteral("1")); // the paper says what is in the book
    EXPECT_EQ(kept(1, 21)->values.dry.value->value.toText(), "9.8");
    EXPECT_TRUE(kept(1, 21)->values.readBack);
    EXPECT_TRUE(end->queries().empty());
}

TEST_F(SecondPass, AgreeingWithWhatWasReadBeforeACorrectionIsAgreeing) {
    record::Observation corrected = kept(1, 9)->values;
    corrected.wet.value->value = {99, 1};
    corrected.origin = record::Origin::Corrected;
    store::ObservationChange change;
    change.subject = kept(1, 9)->id();
    change.values = corrected;
    change.author = {"T", "misread by one"};
    ASSERT_TRUE(session_->write(change));
    secondPass();
    hand(QStringLiteral("12.4\n10.1\n")); // as the paper still has it
    EXPECT_EQ(kept(1, 9)->values.wet.value->value.toText(), "9.9") << "the correction must stay";
    EXPECT_TRUE(kept(1, 9)->values.readBack);
}

TEST_F(SecondPass, AChangeLaterTakesTheReadBackMarkAway) {
    secondPass();
    hand(QStringLiteral("12.4\n10.1\n"));
    part<QPushButton>("typeAgain").click();
    penOn(0, PageField::Dry);
    hand(QStringLiteral("12.5"));
    hand(Qt::Key_Down);
    EXPECT_EQ(kept(1, 9)->values.dry.value->value.toText(), "12.5");
    EXPECT_FALSE(kept(1, 9)->values.readBack);
}

class WrongMonth : public OldPageCase {
protected:
    /// A week and the month's last day, which April has not.
    void SetUp() override {
        OldPageCase::SetUp();
        for (int i = 0; i < 14; ++i) {
            hand(QStringLiteral("%1\n%2\n").arg(10.0 + i * 0.3, 0, 'f', 1).arg(8.5 + i * 0.2, 0, 'f', 1));
        }
        hand(Qt::Key_G, Qt::ControlModifier);
        hand(QStringLiteral("31\n11.1\n9.9\n"));
    }
    MoveDialog* dialog() {
        part<QPushButton>("otherMonth").click();
        return page_->findChild<MoveDialog*>();
    }
};

TEST_F(WrongMonth, GoesToTheSameDaysOfAnotherAsOneStepOfUndo) {
    write(reading(day(2025, 4, 3), std::chrono::hours{9}, "9.0", "8.0")); // in the way of one
    const record::StoredObservation first = *kept(1, 9);
    auto* asked = dialog();
    ASSERT_NE(asked, nullptr);
    auto& month = *asked->findChild<MonthEdit*>(QStringLiteral("moveMonth"));
    EXPECT_FALSE(asked->findChild<QPushButton*>(QStringLiteral("moveLines"))->isEnabled());
    ASSERT_EQ(asked->focusWidget(), &month);
    QTest::keyClick(&month, Qt::Key_Up);
    const auto& staying = *asked->findChild<QListWidget*>(QStringLiteral("moveStaying"));
    ASSERT_EQ(staying.count(), 2) << "the 31st, and the hour that is taken";
    EXPECT_TRUE(staying.item(0)->text().contains(QStringLiteral("3 Mar, 9 h")));
    EXPECT_TRUE(staying.item(1)->text().contains(QStringLiteral("31 Mar")));
    const int steps = session_->undoStack().count();
    QTest::keyClick(asked, Qt::Key_Return);
    EXPECT_EQ(session_->undoStack().count(), steps + 1);
    EXPECT_EQ(page_->month(), date::year{2025} / 4);
    ASSERT_TRUE(kept(1, 9, 4));
    EXPECT_EQ(kept(1, 9, 4)->id(), first.id()) << "the line has lost its history";
    EXPECT_EQ(kept(1, 9, 4)->values.dry, first.values.dry);
    EXPECT_EQ(kept(1, 9, 4)->values.instant - first.values.instant, std::chrono::hours{31 * 24});
    EXPECT_FALSE(kept(1, 9));
    EXPECT_TRUE(kept(31, 9)) << "a day that April has not must stay";
    EXPECT_TRUE(kept(3, 9)) << "a line whose hour is taken must stay";
    EXPECT_EQ(kept(3, 9, 4)->values.dry.value->value.toText(), "9.0");
    EXPECT_EQ(session_->book().history(first.id())->size(), 2U);

    session_->undoStack().undo();
    EXPECT_EQ(kept(1, 9)->values, first.values);
    EXPECT_TRUE(kept(7, 21));
    EXPECT_FALSE(kept(1, 9, 4));
    session_->undoStack().redo();
    EXPECT_TRUE(kept(7, 21, 4));
    EXPECT_FALSE(kept(7, 21));
    EXPECT_TRUE(session_->book().verify().value().sound());
}

TEST_F(WrongMonth, AllOrNothing) {
    std::vector<record::StoredObservation> lines{*kept(1, 9), *kept(1, 21)};
    const auto plan = planMove(*session_, lines, {date::year{2025} / 4, 0, {}});
    ASSERT_TRUE(plan);
    ASSERT_EQ(plan->moving.size(), 2U);
    // Meanwhile the second line's new hour is taken.
    write(reading(day(2025, 4, 1), std::chrono::hours{21}, "9.0", "8.0"));
    const auto moved = MoveObservations::perform(*session_, *plan, {"T", ""}, QStringLiteral("move"));
    ASSERT_FALSE(moved);
    EXPECT_EQ(moved.error().kind, store::StoreErrorKind::HourTaken);
    EXPECT_TRUE(kept(1, 9)) << "half a move";
    EXPECT_FALSE(kept(1, 9, 4));
}

/// No file may grow past so many bytes while this lives: what a full disk does to a write.
class NoRoom {
public:
    NoRoom() {
        ::getrlimit(RLIMIT_FSIZE, &before_);
        handler_ = std::signal(SIGXFSZ, SIG_IGN);
        const rlimit none{64, before_.rlim_max};
        ::setrlimit(RLIMIT_FSIZE, &none);
    }
    NoRoom(const NoRoom&) = delete;
    NoRoom& operator=(const NoRoom&) = delete;
    ~NoRoom() {
        ::setrlimit(RLIMIT_FSIZE, &before_);
        std::signal(SIGXFSZ, handler_);
    }

private:
    rlimit before_{};
    void (*handler_)(int) = SIG_DFL;
};

TEST_F(OldPageCase, WhatCouldNotBeStoredStaysOnThePageAndIsOfferedAgain) {
    {
        const NoRoom noRoom;
        hand(QStringLiteral("12.4\n10.1\n9.8\n8.7\n"));
    }
    EXPECT_FALSE(kept(1, 9));
    EXPECT_EQ(cell(0, PageField::Dry), QStringLiteral("12.4"));
    EXPECT_EQ(cell(1, PageField::Wet), QStringLiteral("8.7"));
    EXPECT_EQ(model().markOf(model().line(0)), PageMark::Unsaved);
    EXPECT_FALSE(part<QLabel>("pageMessage").text().isEmpty());
    auto& again = part<QPushButton>("tryAgain");
    ASSERT_TRUE(again.isVisible());
    again.click();
    EXPECT_TRUE(kept(1, 9));
    EXPECT_TRUE(kept(1, 21));
    EXPECT_FALSE(again.isVisible());
    EXPECT_EQ(model().markOf(model().line(0)), PageMark::Kept);
    EXPECT_TRUE(session_->book().verify().value().sound());
}

} // namespace

} // namespace wickbook::ui
