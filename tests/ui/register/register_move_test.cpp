// SPDX-License-Identifier: GPL-3.0-or-later
// Lines moved from the register page: one or several, to another date, hour or month, as one step of undo.
#include "tests/ui/register/register_case.h"
#include "ui/commands/move_observations.h"
#include "ui/moving/month_edit.h"
#include "ui/moving/move_dialog.h"
#include "ui/register/register_model.h"

#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>

namespace wickbook::ui {

namespace {

using namespace std::chrono_literals;
using test::day;

class Moving : public test::RegisterPageCase {
protected:
    MoveDialog* dialog() {
        delete page_->findChild<MoveDialog*>();
        key(Qt::Key_V);
        return page_->findChild<MoveDialog*>();
    }
    [[nodiscard]] bool there(record::StationDate date, record::HourOfDay hour) const {
        return session_->book().atHour({date, hour})->has_value();
    }
    static QString summary(const MoveDialog& asked) {
        return asked.findChild<QLabel*>(QStringLiteral("moveSummary"))->text();
    }
};

TEST_F(Moving, OneLineGoesToAnotherDateByKeysAlone) {
    const record::StoredObservation line = at(day(2025, 5, 5), 9h);
    page_->showHour({day(2025, 5, 5), 9h});
    auto* asked = dialog();
    ASSERT_NE(asked, nullptr);
    EXPECT_FALSE(asked->findChild<QPushButton*>(QStringLiteral("moveLines"))->isEnabled());
    ASSERT_EQ(asked->focusWidget()->objectName(), QStringLiteral("moveDate"));
    QTest::keyClick(asked->focusWidget(), Qt::Key_Up); // the 6th, of which nothing was written down
    EXPECT_TRUE(summary(*asked).contains(QStringLiteral("one line to 6 May 2025, 9 h")))
        << summary(*asked).toStdString();
    QTest::keyClick(asked, Qt::Key_Return);
    const record::StoredObservation moved = at(day(2025, 5, 6), 9h);
    EXPECT_EQ(moved.id(), line.id()) << "the line has lost its history";
    EXPECT_EQ(moved.values.dry, line.values.dry);
    EXPECT_EQ(moved.values.instant - line.values.instant, 24h);
    EXPECT_EQ(moved.stamp.author.why, "written in the wrong place");
    EXPECT_FALSE(there(day(2025, 5, 5), 9h));
    EXPECT_EQ(page_->currentHour(), (record::ObservingHour{day(2025, 5, 6), 9h}));
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(at(day(2025, 5, 5), 9h).values, line.values);
    EXPECT_FALSE(there(day(2025, 5, 6), 9h));
    key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(there(day(2025, 5, 6), 9h));
    EXPECT_EQ(session_->book().history(line.id())->size(), 4U);
    EXPECT_TRUE(session_->book().verify()->sound());
}

TEST_F(Moving, MarkedLinesMakeRoomForOneAnother) {
    // 3, 4 and 5 May, both hours, a day on: the 6th is free, so every line finds its place.
    std::vector<record::Uuid> ids;
    for (const unsigned date : {3U, 4U, 5U}) {
        ids.push_back(at(day(2025, 5, date), 9h).id());
        ids.push_back(at(day(2025, 5, date), 21h).id());
    }
    page_->showHour({day(2025, 5, 3), 9h});
    for (int i = 0; i < 5; ++i) {
        key(Qt::Key_Down, Qt::ShiftModifier);
    }
    auto* asked = dialog();
    QTest::keyClick(asked->focusWidget(), Qt::Key_Up);
    EXPECT_TRUE(summary(*asked).contains(QStringLiteral("6 lines to 4 May 2025, 9 h … 6 May 2025, 21 h")))
        << summary(*asked).toStdString();
    QTest::keyClick(asked, Qt::Key_Return);
    EXPECT_EQ(at(day(2025, 5, 4), 9h).id(), ids[0]);
    EXPECT_EQ(at(day(2025, 5, 6), 21h).id(), ids[5]);
    EXPECT_FALSE(there(day(2025, 5, 3), 9h));
    EXPECT_EQ(session_->undoStack().count(), 1);
    session_->undoStack().undo();
    EXPECT_EQ(at(day(2025, 5, 3), 9h).id(), ids[0]);
    EXPECT_EQ(at(day(2025, 5, 5), 21h).id(), ids[5]);
}

TEST_F(Moving, SaysWhatStaysAndWhyBeforeAnythingIsDone) {
    page_->showHour({day(2025, 5, 12), 21h});
    key(Qt::Key_Down, Qt::ShiftModifier);
    key(Qt::Key_Down, Qt::ShiftModifier); // 12 at 21 h, 13 at 9 and 21 h
    auto* asked = dialog();
    auto* date = asked->focusWidget();
    QTest::keyClick(date, Qt::Key_Up); // the 13th at 21 h moves on itself to the 14th, which is still to come
    const auto& staying = *asked->findChild<QListWidget*>(QStringLiteral("moveStaying"));
    // Now is 14 May, 12 h: 14 May, 9 h is past and free. 13 May, 21 h can't leave, so 12 May, 21 h stays too.
    ASSERT_EQ(staying.count(), 2);
    EXPECT_TRUE(staying.item(0)->text().contains(QStringLiteral("12 May, 21 h")));
    EXPECT_TRUE(
        staying.item(0)->text().contains(QStringLiteral("13 May has a reading at that hour already")));
    EXPECT_TRUE(staying.item(1)->text().contains(QStringLiteral("14 May is still to come")));
    const auto count = session_->book().history(at(day(2025, 5, 12), 21h).id())->size();
    asked->reject();
    EXPECT_EQ(session_->book().history(at(day(2025, 5, 12), 21h).id())->size(), count);
    EXPECT_FALSE(session_->undoStack().canUndo());
}

TEST_F(Moving, ToAnotherHourKeepsHowFarOffItWasRead) {
    record::Observation late = reading(day(2025, 5, 6), 9h, "14.0", "12.0");
    late.instant += 7min;
    write(late);
    page_->showHour({day(2025, 5, 6), 9h});
    auto* asked = dialog();
    asked->findChild<QComboBox*>(QStringLiteral("moveWhere"))->setCurrentIndex(MoveDialog::OtherHour);
    auto& hour = *asked->findChild<QComboBox*>(QStringLiteral("moveHour"));
    EXPECT_TRUE(summary(*asked).contains(QStringLiteral("They stand there already")));
    hour.setCurrentIndex(hour.findData(21 * 60));
    QTest::keyClick(asked, Qt::Key_Return);
    const record::Observation moved = at(day(2025, 5, 6), 21h).values;
    EXPECT_EQ(moved.instant, late.instant + 12h);
    EXPECT_FALSE(there(day(2025, 5, 6), 9h));
}

TEST_F(Moving, AnExtraReadingGoesByItsClockAndCanBeGivenAnHour) {
    record::Observation extra = reading(day(2025, 5, 6), 9h, "15.0", "12.5");
    record::placeInTime(extra, session_->station(),
                        record::Instant{(day(2025, 5, 6) + 11h + 30min).time_since_epoch()});
    ASSERT_FALSE(extra.hour.has_value());
    write(extra);
    const auto line = session_->book().atInstant(extra.instant).value();
    ASSERT_TRUE(line);
    auto plan = planMove(*session_, {*line}, {{}, -3, {}});
    ASSERT_TRUE(plan && plan->moving.size() == 1);
    EXPECT_FALSE(plan->moving[0].after.hour.has_value());
    EXPECT_EQ(plan->moving[0].after.instant, extra.instant - 72h);
    plan = planMove(*session_, {*line}, {{}, 0, record::HourOfDay{9h}});
    ASSERT_TRUE(plan && plan->moving.size() == 1);
    EXPECT_EQ(plan->moving[0].after.hour, (record::ObservingHour{day(2025, 5, 6), 9h}));
    EXPECT_EQ(plan->moving[0].after.instant, extra.instant) << "when it was read stays as it was";
    // An hour the station never read at, and one that has a reading.
    plan = planMove(*session_, {*line}, {{}, 0, record::HourOfDay{15h}});
    ASSERT_TRUE(plan && plan->staying.size() == 1);
    EXPECT_EQ(plan->staying[0].reason, desk::StayReason::NoSuchHour);
    plan = planMove(*session_, {*line}, {{}, 1, record::HourOfDay{9h}});
    ASSERT_TRUE(plan && plan->staying.size() == 1);
    EXPECT_EQ(plan->staying[0].reason, desk::StayReason::HourTaken);
}

TEST_F(Moving, UndoIsToldAndSaysWhyItCannotWhereTheOldPlaceIsTaken) {
    page_->showHour({day(2025, 5, 5), 9h});
    auto* asked = dialog();
    QTest::keyClick(asked->focusWidget(), Qt::Key_Up);
    QTest::keyClick(asked, Qt::Key_Return);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(part<QLabel>("message").text(), QStringLiteral("Undone: moved one line to 6 May 2025, 9 h"));
    key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(part<QLabel>("message").text(), QStringLiteral("moved one line to 6 May 2025, 9 h"));
    write(reading(day(2025, 5, 5), 9h, "11.0", "9.5")); // by another hand
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(
        part<QLabel>("message").text().contains(QStringLiteral("There is a reading at this hour already")))
        << part<QLabel>("message").text().toStdString();
    EXPECT_TRUE(there(day(2025, 5, 6), 9h)) << "half undone";
    EXPECT_EQ(at(day(2025, 5, 5), 9h).values.dry.value->value.toText(), "11.0");
    EXPECT_TRUE(session_->book().verify()->sound());
}

TEST_F(Moving, TwoLinesCannotShareAnHour) {
    const auto plan = planMove(*session_, {at(day(2025, 5, 5), 9h), at(day(2025, 5, 5), 21h)},
                               {{}, 1, record::HourOfDay{9h}});
    ASSERT_TRUE(plan);
    ASSERT_EQ(plan->moving.size(), 1U);
    ASSERT_EQ(plan->staying.size(), 1U);
    EXPECT_EQ(plan->staying[0].reason, desk::StayReason::HourTaken);
    EXPECT_EQ(plan->staying[0].line.values.hour->hour, record::HourOfDay{21h});
}

// A week keyed under May that belongs to April: story 8 of the trade's day-to-day mistakes.
TEST_F(Moving, AWeekOfTheWrongMonthIsMovedAsOneUndoableAct) {
    std::vector<record::StoredObservation> week;
    page_->showHour({day(2025, 5, 7), 9h});
    for (int i = 0; i < 14; ++i) {
        week.push_back(at(day(2025, 5, 7) + date::days{i / 2}, i % 2 == 0 ? record::HourOfDay{9h} : 21h));
        if (i > 0) {
            key(Qt::Key_Down, Qt::ShiftModifier);
        }
    }
    auto* asked = dialog();
    asked->findChild<QComboBox*>(QStringLiteral("moveWhere"))->setCurrentIndex(MoveDialog::OtherMonth);
    auto& month = *asked->findChild<MonthEdit*>(QStringLiteral("moveMonth"));
    month.setFocus();
    QTest::keyClick(&month, Qt::Key_Down);
    EXPECT_EQ(summary(*asked), QStringLiteral("14 lines go to the same days and hours of April 2025."));
    auto& why = *asked->findChild<QLineEdit*>(QStringLiteral("moveWhy"));
    why.selectAll();
    QTest::keyClicks(&why, QStringLiteral("page 7 is April's"));
    QTest::keyClick(asked, Qt::Key_Return);
    EXPECT_EQ(page_->month(), date::year{2025} / 4);
    for (int i = 0; i < 14; ++i) {
        const auto hour = i % 2 == 0 ? record::HourOfDay{9h} : record::HourOfDay{21h};
        const record::StoredObservation moved = at(day(2025, 4, 7) + date::days{i / 2}, hour);
        EXPECT_EQ(moved.id(), week[static_cast<std::size_t>(i)].id());
        EXPECT_EQ(moved.stamp.author.why, "page 7 is April's");
        EXPECT_FALSE(there(day(2025, 5, 7) + date::days{i / 2}, hour));
    }
    EXPECT_EQ(session_->undoStack().count(), 1);
    key(Qt::Key_Z, Qt::ControlModifier);
    for (const record::StoredObservation& line : week) {
        EXPECT_EQ(session_->book().observation(line.id()).value()->values, line.values);
        EXPECT_EQ(session_->book().history(line.id())->size(), 3U);
    }
    EXPECT_TRUE(session_->book().verify()->sound());
}

} // namespace

} // namespace wickbook::ui
