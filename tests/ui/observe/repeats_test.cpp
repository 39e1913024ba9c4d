// SPDX-License-Identifier: GPL-3.0-or-later
// Whirl by whirl: rows with the wet bulb first, the lowest settled one becomes the reading, all are kept.
#include "tests/ui/observe/observe_case.h"
#include "ui/observe/repeats_panel.h"
#include "ui/observe/whirl_beat.h"
#include "ui/observe/whirl_timer.h"

#include <QAbstractButton>
#include <QCheckBox>

namespace {

using namespace wickbook;

record::NewStation whirledStation() {
    record::NewStation station = test::hillStation();
    station.exposure = psychrometry::Exposure::Whirled;
    return station;
}

class RepeatsTest : public test::ObserveCase {
protected:
    RepeatsTest() : ObserveCase(whirledStation()) {}
    [[nodiscard]] ui::RepeatsPanel& panel() const { return *page_->findChild<ui::RepeatsPanel*>(); }
    [[nodiscard]] ui::WhirlTimer& beat() const { return *page_->findChild<ui::WhirlTimer*>(); }
};

TEST_F(RepeatsTest, FoldedAwayUntilAskedForByOneKey) {
    EXPECT_TRUE(panel().isHidden());
    EXPECT_EQ(QApplication::focusWidget(), field(ui::EntryField::Wet)) << "a whirled instrument: wet first";
    press(Qt::Key_R);
    EXPECT_FALSE(panel().isHidden());
    EXPECT_TRUE(panel().owns(QApplication::focusWidget()));
    EXPECT_TRUE(field(ui::EntryField::Wet)->text().isEmpty()) << "the key itself is no text";
}

TEST_F(RepeatsTest, WhirledUntilSettledByKeysAloneAndAllRowsAreKept) {
    press(Qt::Key_R);
    for (const char* number : {"15.5", "16.6", "14.4", "16.5", "14.2", "16.4"}) {
        type(QString::fromLatin1(number));
        press(Qt::Key_Return);
    }
    // The last Enter found the wet bulb settled, and saved.
    const auto stored = saved();
    ASSERT_TRUE(stored.has_value());
    EXPECT_EQ(stored->wet.value->value, (units::Decimal{142, 1}));
    EXPECT_EQ(stored->dry.value->value, (units::Decimal{164, 1}));
    ASSERT_EQ(stored->repeats.size(), 3U);
    EXPECT_EQ(stored->repeats[0].wet->value, (units::Decimal{155, 1}));
    EXPECT_EQ(stored->repeats[0].dry->value, (units::Decimal{166, 1}));
    EXPECT_EQ(stored->repeats[2].wet->value, (units::Decimal{142, 1}));
    EXPECT_TRUE(panel().isHidden()) << "folded away again for the next hour";
}

TEST_F(RepeatsTest, LowestSettledBringsItsOwnDryBulb) {
    press(Qt::Key_R);
    for (const char* number : {"14.2", "16.6", "14.3", "16.4"}) {
        type(QString::fromLatin1(number));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    EXPECT_EQ(field(ui::EntryField::Wet)->text(), QStringLiteral("14.2"));
    EXPECT_EQ(field(ui::EntryField::Dry)->text(), QStringLiteral("16.6"));
    EXPECT_TRUE(label("repeatsState").startsWith(QStringLiteral("Settled: whirl 1")));
}

TEST_F(RepeatsTest, UnsettledIsAskedOnceThenKeptAsRead) {
    press(Qt::Key_R);
    for (const char* number : {"15.5", "16.6", "14.4", "16.5"}) {
        type(QString::fromLatin1(number));
        press(Qt::Key_Return);
    }
    press(Qt::Key_Return); // in the empty third row: done with whirling
    EXPECT_FALSE(saved().has_value());
    EXPECT_TRUE(label("observeMessage").contains(QStringLiteral("not settled")))
        << label("observeMessage").toStdString();
    press(Qt::Key_Return);
    const auto stored = saved();
    ASSERT_TRUE(stored.has_value());
    EXPECT_EQ(stored->wet.value->value, (units::Decimal{144, 1})); // the lowest
    EXPECT_EQ(stored->repeats.size(), 2U);
}

TEST_F(RepeatsTest, RisingWetBulbIsADryingWick) {
    press(Qt::Key_R);
    for (const char* number : {"14.2", "16.6", "14.9", "16.5"}) {
        type(QString::fromLatin1(number));
        press(Qt::Key_Return);
    }
    EXPECT_TRUE(label("repeatsState").contains(QStringLiteral("the wick is drying")));
    EXPECT_FALSE(saved().has_value());
}

TEST_F(RepeatsTest, WhatWasTypedInTheTwoBulbsIsTheFirstWhirl) {
    type(QStringLiteral("14.4"));
    press(Qt::Key_Return);
    type(QStringLiteral("16.5"));
    press(Qt::Key_R);
    ASSERT_EQ(panel().rows().size(), 1);
    EXPECT_EQ(panel().rows().front(), (ui::RepeatText{QStringLiteral("14.4"), QStringLiteral("16.5")}));
    EXPECT_EQ(QApplication::focusWidget(), panel().fields().at(2));
}

TEST_F(RepeatsTest, NotANumberInARowIsRefusedAndStays) {
    press(Qt::Key_R);
    for (const char* number : {"14.2", "16.6", "1x", "16.5"}) {
        type(QString::fromLatin1(number));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    page_->save();
    EXPECT_FALSE(saved().has_value());
    EXPECT_EQ(QApplication::focusWidget(), panel().fields().at(2));
    EXPECT_EQ(panel().fields().at(2)->text(), QStringLiteral("1x"));
}

TEST_F(RepeatsTest, RowsOfAnUnfinishedEntryAreThereAgain) {
    press(Qt::Key_R);
    type(QStringLiteral("15.5"));
    press(Qt::Key_Return);
    type(QStringLiteral("16.6"));
    page_->keepDraft();
    page_.reset();
    openPage();
    EXPECT_FALSE(panel().isHidden());
    ASSERT_EQ(panel().rows().size(), 1);
    EXPECT_EQ(panel().rows().front().dry, QStringLiteral("16.6"));
    EXPECT_EQ(field(ui::EntryField::Wet)->text(), QStringLiteral("15.5"));
}

// Turns a second that give 3 m/s at the bulbs: v / (2 pi r), computed; 3 m/s is asked for in OIML Bulletin
// 123.
TEST(WhirlBeat, FollowsFromTheArm) {
    EXPECT_NEAR(*ui::turnsPerSecond(30), 1.6, 0.05);
    EXPECT_NEAR(*ui::turnsPerSecond(20), 2.4, 0.05);
    EXPECT_NEAR(*ui::turnsPerSecond(15), 3.2, 0.05);
    EXPECT_FALSE(ui::turnsPerSecond(0).has_value());
    EXPECT_FALSE(ui::turnsPerSecond(-20).has_value());
    EXPECT_FALSE(ui::turnsPerSecond(300).has_value());
}

TEST_F(RepeatsTest, BeatStartsAndStopsWithTheSpaceBar) {
    EXPECT_TRUE(beat().isHidden());
    press(Qt::Key_B);
    EXPECT_FALSE(beat().isHidden());
    EXPECT_TRUE(label("whirlRate").startsWith(QStringLiteral("1.6 ")))
        << "30 cm until another arm is written";
    press(Qt::Key_Space);
    EXPECT_TRUE(beat().isRunning());
    EXPECT_TRUE(QTest::qWaitFor([&] { return label("whirlCounted") == QStringLiteral("turn 1"); }, 5000));
    press(Qt::Key_Space);
    EXPECT_FALSE(beat().isRunning());
}

TEST_F(RepeatsTest, ArmIsRememberedForThisBook) {
    press(Qt::Key_B);
    auto* arm = beat().findChild<ui::TypedNumberEdit*>(QStringLiteral("whirlArm"));
    arm->setFocus();
    arm->selectAll();
    type(QStringLiteral("15"));
    EXPECT_TRUE(label("whirlRate").startsWith(QStringLiteral("3.2 ")));
    page_.reset();
    openPage();
    EXPECT_TRUE(label("whirlRate").startsWith(QStringLiteral("3.2 ")));
}

TEST_F(RepeatsTest, NoMovementShowsNumbersOnlyAndNoSoundUnasked) {
    press(Qt::Key_B);
    const auto ticks = beat().findChildren<QCheckBox*>();
    ASSERT_EQ(ticks.size(), 2);
    EXPECT_FALSE(ticks.front()->isChecked()) << "no sound unless asked for";
    ticks.back()->setChecked(true);
    press(Qt::Key_Space);
    ASSERT_TRUE(QTest::qWaitFor([&] { return label("whirlCounted") == QStringLiteral("turn 1"); }, 5000));
    EXPECT_FALSE(beat().findChild<ui::WhirlCircle*>()->isMoving());
}

// A screen has its repeats too, without a beat.
TEST(RepeatsInAScreen, HiddenByDefaultAndWithoutABeat) {
    test::OpenBook book;
    ui::ObservePage page(book.session(), book.drafts());
    page.show();
    QApplication::setActiveWindow(&page);
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    page.focusEntry();
    EXPECT_TRUE(page.findChild<ui::RepeatsPanel*>()->isHidden());
    EXPECT_FALSE(page.findChild<QAbstractButton*>(QStringLiteral("beatLink"))->isVisible());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_R);
    EXPECT_FALSE(page.findChild<ui::RepeatsPanel*>()->isHidden());
}

} // namespace
