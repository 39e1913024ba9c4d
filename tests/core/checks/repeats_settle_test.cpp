// SPDX-License-Identifier: GPL-3.0-or-later
// Whirl by whirl: when the wet bulb has settled and which whirl is the reading. That whirling is repeated
// until the wet bulb falls no further, and that the lowest wet bulb is taken, is common practice, no source;
// the tolerance of two tenths or one scale step likewise. All readings are made up here.
#include "core/checks/repeats_settle.h"

#include <gtest/gtest.h>

#include <utility>
#include <vector>

using namespace wickbook;

namespace {

constexpr auto kTenths = units::TemperatureDifference::fromKelvins(0.1);

units::ReadTemperature tenths(int value, units::TemperatureUnit unit = units::TemperatureUnit::Celsius) {
    return {{value, 1}, unit};
}

/// Wet and dry of each whirl, in tenths.
std::vector<record::Repeat> rows(const std::vector<std::pair<int, int>>& pairs,
                                 units::TemperatureUnit unit = units::TemperatureUnit::Celsius) {
    std::vector<record::Repeat> made;
    for (const auto& [wet, dry] : pairs) {
        made.push_back({tenths(wet, unit), tenths(dry, unit)});
    }
    return made;
}

} // namespace

TEST(RepeatsSettle, NothingWhirledIsNoReading) {
    const auto verdict = checks::settle({}, kTenths);
    EXPECT_FALSE(verdict.settled);
    EXPECT_FALSE(verdict.row.has_value());
    EXPECT_EQ(verdict.whirls, 0U);
}

TEST(RepeatsSettle, OneWhirlHasNotSettled) {
    const auto verdict = checks::settle(rows({{142, 164}}), kTenths);
    EXPECT_FALSE(verdict.settled);
    EXPECT_FALSE(verdict.rising);
    EXPECT_EQ(verdict.row, 0U);
}

TEST(RepeatsSettle, FallingByMoreThanTwoTenthsGoesOn) {
    const auto verdict = checks::settle(rows({{155, 166}, {147, 165}, {144, 164}}), kTenths);
    EXPECT_FALSE(verdict.settled);
    EXPECT_FALSE(verdict.rising);
    EXPECT_EQ(verdict.row, 2U); // the lowest so far
}

TEST(RepeatsSettle, TwoTenthsApartHaveSettledAndTheLowerIsTaken) {
    // 14.4 and 14.2 differ by 0.2 exactly, and by a little more in binary.
    const auto verdict = checks::settle(rows({{155, 166}, {144, 165}, {142, 163}}), kTenths);
    EXPECT_TRUE(verdict.settled);
    EXPECT_EQ(verdict.row, 2U);
}

TEST(RepeatsSettle, OfEqualWetBulbsTheLaterIsTaken) {
    const auto verdict = checks::settle(rows({{142, 165}, {142, 164}}), kTenths);
    EXPECT_TRUE(verdict.settled);
    EXPECT_EQ(verdict.row, 1U);
}

TEST(RepeatsSettle, ALowerWetBulbThatNothingAgreesWithIsNotSettled) {
    const auto verdict = checks::settle(rows({{130, 166}, {150, 165}, {149, 164}}), kTenths);
    EXPECT_TRUE(verdict.settled);
    EXPECT_EQ(verdict.row, 2U);
}

TEST(RepeatsSettle, RisingWetBulbIsADryingWick) {
    EXPECT_TRUE(checks::settle(rows({{142, 164}, {149, 164}}), kTenths).rising);
    // Settled once, then drying: the lowest settled stays the reading.
    const auto later = checks::settle(rows({{143, 164}, {142, 164}, {146, 164}}), kTenths);
    EXPECT_TRUE(later.settled);
    EXPECT_TRUE(later.rising);
    EXPECT_EQ(later.row, 1U);
}

TEST(RepeatsSettle, DryingByTwoTenthsAWhirlIsSeenAtTheThird) {
    EXPECT_FALSE(checks::settle(rows({{140, 164}, {142, 164}}), kTenths).rising);
    EXPECT_TRUE(checks::settle(rows({{140, 164}, {142, 164}, {144, 164}}), kTenths).rising);
}

TEST(RepeatsSettle, WettedAgainItSettlesAfresh) {
    const auto verdict = checks::settle(rows({{147, 164}, {155, 164}, {142, 164}, {142, 163}}), kTenths);
    EXPECT_TRUE(verdict.settled);
    EXPECT_FALSE(verdict.rising);
    EXPECT_EQ(verdict.row, 3U);
}

TEST(RepeatsSettle, ACoarseScaleAgreesWithinOneStep) {
    const auto half = units::TemperatureDifference::fromKelvins(0.5);
    EXPECT_TRUE(checks::settle(rows({{150, 165}, {145, 165}}), half).settled);
    EXPECT_FALSE(checks::settle(rows({{155, 165}, {145, 165}}), half).settled);
    EXPECT_FALSE(checks::settle(rows({{150, 165}, {145, 165}}), kTenths).settled);
}

TEST(RepeatsSettle, FahrenheitIsComparedAsALengthOnTheScale) {
    // Half a degree Fahrenheit is 0.278 K: one step of that scale, more than two tenths of a degree Celsius.
    const auto fahrenheit = rows({{575, 620}, {570, 620}}, units::TemperatureUnit::Fahrenheit);
    EXPECT_TRUE(checks::settle(fahrenheit, units::TemperatureDifference::fromFahrenheitDegrees(0.5)).settled);
    EXPECT_FALSE(
        checks::settle(fahrenheit, units::TemperatureDifference::fromFahrenheitDegrees(0.2)).settled);
}

TEST(RepeatsSettle, ARowWithoutAWetBulbIsPassedOver) {
    std::vector<record::Repeat> made = rows({{142, 164}});
    made.push_back({std::nullopt, tenths(164)});
    made.push_back({tenths(141), std::nullopt});
    const auto verdict = checks::settle(made, kTenths);
    EXPECT_TRUE(verdict.settled);
    EXPECT_EQ(verdict.row, 2U);
    EXPECT_EQ(verdict.whirls, 2U);
}
