// SPDX-License-Identifier: GPL-3.0-or-later
// The reading being typed is never overwritten: by the clock, by another program, by changed facts, by
// turning the page. And no key that follows can replace what is typed already.
#include "tests/ui/observe/observe_case.h"
#include "ui/commands/revise_observation.h"

#include <QLineEdit>
#include <QSignalSpy>
#include <QStackedWidget>

namespace {

using namespace wickbook;
using test::day;

class NothingOverwritesTest : public test::ObserveCase {
protected:
    /// "-0.4" half typed in the dry bulb, with initials, the caret after the point.
    void typeHalf() { type(QStringLiteral("-0.")); }
    void expectHalfAndFinish() {
        EXPECT_EQ(QApplication::focusWidget(), field(ui::EntryField::Dry));
        type(QStringLiteral("4"));
        EXPECT_EQ(field(ui::EntryField::Dry)->text(), QStringLiteral("-0.4"));
        EXPECT_EQ(page_->entry().dry, QStringLiteral("-0.4"));
        EXPECT_EQ(page_->entry().hourMinutes, 9 * 60);
    }
    [[nodiscard]] record::Instant at(int hour) const {
        return date::sys_days{date::year{2026} / 11 / 22} + std::chrono::hours{hour};
    }
};

TEST_F(NothingOverwritesTest, TheClockLeavesABegunEntryAlone) {
    typeHalf();
    book_.clock()->set(at(20)); // by now 21 h would be on offer
    page_->followClock();
    expectHalfAndFinish();
}

TEST_F(NothingOverwritesTest, TheClockMovesAnUntouchedPageOnAndKeepsTheInitials) {
    QLineEdit* initials = nullptr;
    for (QLineEdit* edit : page_->findChildren<QLineEdit*>()) {
        if (edit->accessibleName().startsWith(QStringLiteral("observer"))) {
            initials = edit;
        }
    }
    ASSERT_NE(initials, nullptr);
    initials->setFocus();
    type(QStringLiteral("MK"));
    book_.clock()->set(at(20));
    page_->followClock();
    EXPECT_EQ(page_->entry().hourMinutes, 21 * 60);
    EXPECT_EQ(page_->entry().observer, QStringLiteral("MK"));
    EXPECT_EQ(initials->text(), QStringLiteral("MK"));
}

TEST_F(NothingOverwritesTest, TheClockLeavesAHalfTypedDateAlone) {
    auto* dateEdit = page_->findChild<QLineEdit*>(QStringLiteral("observeDate"));
    dateEdit->setFocus();
    dateEdit->selectAll();
    type(QStringLiteral("21/1"));
    book_.clock()->set(at(20));
    page_->followClock();
    EXPECT_EQ(dateEdit->text(), QStringLiteral("21/1"));
}

TEST_F(NothingOverwritesTest, AnotherProgramsReadingComesInMeanwhile) {
    typeHalf();
    const auto clock = book_.clock();
    auto other = ui::Session::open(book_.path(), clock);
    ASSERT_TRUE(other.has_value());
    record::Observation observation;
    const record::ObservingHour hour{day(2026, 11, 21), std::chrono::hours{21}};
    record::placeInTime(observation, (*other)->station(), *record::momentOf((*other)->station(), hour));
    observation.hour = hour;
    observation.dry.value = units::ReadTemperature{{120, 1}, units::TemperatureUnit::Celsius};
    observation.wet.value = units::ReadTemperature{{110, 1}, units::TemperatureUnit::Celsius};
    store::ObservationChange change;
    change.values = observation;
    change.author = {"B", {}};
    QSignalSpy seen(&book_.session(), &ui::Session::observationsChanged);
    ASSERT_TRUE((*other)->write(change).has_value());
    ASSERT_TRUE(seen.wait(6000)) << "the session looks for outside writes every two seconds";
    expectHalfAndFinish();
}

TEST_F(NothingOverwritesTest, AnotherProgramFillsTheVeryHourThatIsBeingTyped) {
    typeHalf();
    book_.keep(day(2026, 11, 22), 9, {120, 1}, {110, 1});
    EXPECT_TRUE(label("observeMessage").contains(QStringLiteral("written down already")));
    expectHalfAndFinish();
}

TEST_F(NothingOverwritesTest, TheStationsFactsChange) {
    typeHalf();
    auto facts = book_.session().station().facts();
    facts.name = "Invented Hill, new name";
    ASSERT_TRUE(book_.session().reviseFacts(facts, {"A", "renamed"}).has_value());
    expectHalfAndFinish();
}

TEST_F(NothingOverwritesTest, TheStationsFactsChangeWhileADateIsTyped) {
    auto* dateEdit = page_->findChild<QLineEdit*>(QStringLiteral("observeDate"));
    dateEdit->setFocus();
    dateEdit->selectAll();
    type(QStringLiteral("21/1"));
    auto facts = book_.session().station().facts();
    facts.name = "Invented Hill, new name";
    ASSERT_TRUE(book_.session().reviseFacts(facts, {"A", "renamed"}).has_value());
    type(QStringLiteral("1/2026"));
    press(Qt::Key_Return);
    EXPECT_EQ(page_->entry().date, QDate(2026, 11, 21));
}

TEST_F(NothingOverwritesTest, TurningThePageAndBackDoesNotLetTheNextKeyReplaceTheReading) {
    type(QStringLiteral("-0.4"));
    press(Qt::Key_Return);
    type(QStringLiteral("-0"));
    page_->focusEntry(); // what turning back to the page does
    type(QStringLiteral(".6"));
    EXPECT_EQ(field(ui::EntryField::Dry)->text(), QStringLiteral("-0.4"));
    EXPECT_EQ(field(ui::EntryField::Wet)->text(), QStringLiteral("-0.6"));
}

TEST_F(NothingOverwritesTest, ComingBackWithOneBulbTypedGoesOnWithTheOther) {
    type(QStringLiteral("-0.4"));
    page_->focusEntry();
    EXPECT_EQ(QApplication::focusWidget(), field(ui::EntryField::Wet));
    type(QStringLiteral("-0.6"));
    EXPECT_EQ(field(ui::EntryField::Dry)->text(), QStringLiteral("-0.4"));
    EXPECT_EQ(field(ui::EntryField::Wet)->text(), QStringLiteral("-0.6"));
}

TEST_F(NothingOverwritesTest, AWindowThatGoesWithAnUnspokenNoteGoesQuietly) {
    type(QStringLiteral("14.2"));
    press(Qt::Key_Return);
    type(QStringLiteral("16.4")); // the margin has something to say once the field is left
    auto window = std::make_unique<QStackedWidget>();
    auto* page = page_.release();
    window->addWidget(page);
    window->show();
    QApplication::setActiveWindow(window.get());
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    page->findChild<ui::EntryForm*>()->field(ui::EntryField::Wet)->setFocus();
    window.reset(); // the field loses the keyboard while its window is being taken down
    openPage();
    EXPECT_EQ(field(ui::EntryField::Wet)->text(), QStringLiteral("16.4"));
}

TEST_F(NothingOverwritesTest, AnotherHourOpenedTakesTheNumbersAlong) {
    type(QStringLiteral("16.4"));
    page_->openHour({day(2026, 11, 21), std::chrono::hours{21}});
    EXPECT_EQ(field(ui::EntryField::Dry)->text(), QStringLiteral("16.4"));
    EXPECT_EQ(page_->entry().date, QDate(2026, 11, 21));
}

TEST_F(NothingOverwritesTest, ADraftWhoseReadingIsInTheBookIsNotOfferedAgain) {
    type(QStringLiteral("16.4"));
    press(Qt::Key_Return);
    type(QStringLiteral("14.2"));
    page_->keepDraft();
    page_.reset();
    // Killed between the writing and the taking away of the draft.
    book_.keep(day(2026, 11, 22), 9, {164, 1}, {142, 1});
    openPage();
    EXPECT_TRUE(field(ui::EntryField::Dry)->text().isEmpty());
    EXPECT_EQ(page_->entry().hourMinutes, 21 * 60);
}

} // namespace
