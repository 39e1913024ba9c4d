// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/class_round.h"

#include <gtest/gtest.h>

namespace {

using namespace wickbook;
using comparison::PupilPair;
using comparison::RoundCause;

PupilPair pupil(int number, const char* dry, const char* wet,
                units::TemperatureUnit unit = units::TemperatureUnit::Celsius) {
    PupilPair pair;
    pair.number = number;
    if (*dry != '\0') {
        pair.dry = units::ReadTemperature{*units::parseDecimal(dry), unit};
    }
    if (*wet != '\0') {
        pair.wet = units::ReadTemperature{*units::parseDecimal(wet), unit};
    }
    return pair;
}

comparison::RoundSetting whirled() {
    comparison::RoundSetting setting;
    setting.coefficient.exposure = psychrometry::Exposure::Whirled;
    setting.step = units::TemperatureDifference::fromKelvins(0.5);
    return setting;
}

/// Air of 23 / 16 °C read by a careful class to half degrees, and one more pupil.
comparison::ClassRound roundWith(const PupilPair& last) {
    const std::vector<PupilPair> pairs{pupil(1, "23.0", "16.0"), pupil(2, "23.0", "16.5"),
                                       pupil(3, "23.5", "16.0"), pupil(4, "22.5", "16.0"),
                                       pupil(5, "23.0", "15.5"), pupil(6, "23.0", "16.0"),
                                       pupil(7, "23.5", "16.5"), last};
    return comparison::judgeRound(pairs, whirled());
}

TEST(ClassRoundSpread, MedianAbsoluteDeviationOfTheTextbookSample) {
    // 1 1 2 2 4 6 9 has median 2 and median absolute deviation 1: a common textbook example, from memory.
    // 1.4826 makes it the standard deviation of normal errors (Rousseeuw and Croux 1993, J. Am. Stat. Assoc.
    // 88).
    const auto spread = comparison::spreadOf({9, 1, 2, 6, 1, 4, 2});
    ASSERT_TRUE(spread);
    EXPECT_EQ(spread->n, 7U);
    EXPECT_DOUBLE_EQ(spread->median, 2);
    EXPECT_DOUBLE_EQ(spread->robustDeviation, 1.4826);
    EXPECT_DOUBLE_EQ(spread->lowest, 1);
    EXPECT_DOUBLE_EQ(spread->highest, 9);
    // Type 7 by hand: h = 6 × 0.25 = 1.5 between 1 and 2 of the sorted values.
    EXPECT_DOUBLE_EQ(spread->lowerQuartile, 1.5);
    EXPECT_FALSE(comparison::spreadOf({}));
}

TEST(ClassRound, MediansOfTheSameAirGiveItsHumidity) {
    // 23 / 16 °C whirled, 1013.25 hPa: 47.9 % by the equation this project shows (tests/core/psychrometry
    // holds that equation against published tables).
    const auto round = roundWith(pupil(8, "23.0", "16.0"));
    EXPECT_DOUBLE_EQ(round.dry->median, 23.0);
    EXPECT_DOUBLE_EQ(round.wet->median, 16.0);
    EXPECT_NEAR(round.relativeHumidity->median, 47.9, 0.05);
    for (const auto& one : round.pupils) {
        EXPECT_FALSE(one.farOff) << one.pair.number;
        EXPECT_FALSE(one.cause) << one.pair.number;
    }
}

struct SlipCase {
    const char* dry;
    const char* wet;
    RoundCause cause;
};

class ClassRoundSlip : public ::testing::TestWithParam<SlipCase> {};

// Which slip a teacher would name: common practice, no source.
TEST_P(ClassRoundSlip, IsFarOffAndNamed) {
    const auto round = roundWith(pupil(8, GetParam().dry, GetParam().wet));
    const auto& last = round.pupils.back();
    EXPECT_TRUE(last.farOff);
    ASSERT_TRUE(last.cause);
    EXPECT_EQ(comparison::roundCauseName(*last.cause), comparison::roundCauseName(GetParam().cause));
    for (std::size_t i = 0; i + 1 < round.pupils.size(); ++i) {
        EXPECT_FALSE(round.pupils[i].farOff) << "one slip moved the others: " << i + 1;
    }
}

INSTANTIATE_TEST_SUITE_P(Slips, ClassRoundSlip,
                         ::testing::Values(SlipCase{"23.0", "22.5", RoundCause::DryWick},
                                           SlipCase{"23.0", "19.0", RoundCause::DryWick},
                                           SlipCase{"16.0", "23.0", RoundCause::Swapped},
                                           SlipCase{"33.0", "16.0", RoundCause::DryTenOff},
                                           SlipCase{"23.0", "6.0", RoundCause::WetTenOff},
                                           SlipCase{"28.0", "16.0", RoundCause::DryFiveOff},
                                           SlipCase{"23.0", "11.0", RoundCause::WetFiveOff},
                                           SlipCase{"73.5", "61.0", RoundCause::FahrenheitForCelsius},
                                           SlipCase{"2.3", "16.0", RoundCause::DryPointMoved},
                                           SlipCase{"23.0", "160", RoundCause::WetPointMoved},
                                           SlipCase{"26.5", "17.2", RoundCause::WarmAir}));

TEST(ClassRound, FahrenheitThermometersAreJudgedInTheirOwnDegrees) {
    const auto f = units::TemperatureUnit::Fahrenheit;
    const std::vector<PupilPair> pairs{pupil(1, "73", "61", f), pupil(2, "74", "61", f),
                                       pupil(3, "73", "60", f), pupil(4, "73", "61", f),
                                       pupil(5, "83", "61", f)};
    auto setting = whirled();
    setting.step = units::TemperatureDifference::fromFahrenheitDegrees(1);
    const auto round = comparison::judgeRound(pairs, setting);
    EXPECT_EQ(round.pupils.back().cause, RoundCause::DryTenOff);
    EXPECT_FALSE(round.pupils.front().farOff);
}

TEST(ClassRound, ThreeAreTooFewToCallOneFarOff) {
    const std::vector<PupilPair> pairs{pupil(1, "23.0", "16.0"), pupil(2, "23.0", "16.0"),
                                       pupil(3, "33.0", "16.0")};
    const auto round = comparison::judgeRound(pairs, whirled());
    EXPECT_TRUE(round.tooFewToJudge);
    EXPECT_DOUBLE_EQ(round.dry->median, 23.0);
    EXPECT_FALSE(round.pupils.back().farOff);
}

TEST(ClassRound, OneBulbAloneCountsForItsMedianAndHasNoHumidity) {
    const auto round = roundWith(pupil(8, "23.0", ""));
    EXPECT_EQ(round.dry->n, 8U);
    EXPECT_EQ(round.wet->n, 7U);
    EXPECT_FALSE(round.pupils.back().derivation);
    EXPECT_FALSE(round.pupils.back().farOff);
}

TEST(ClassRound, HalfTheClassWithDryWicksIsStillSeenAtTheMedian) {
    // Three of eight: the median stays with the others (breakdown point of the median: one half).
    const std::vector<PupilPair> pairs{pupil(1, "23.0", "16.0"), pupil(2, "23.0", "16.0"),
                                       pupil(3, "23.0", "16.5"), pupil(4, "23.0", "15.5"),
                                       pupil(5, "23.0", "16.0"), pupil(6, "23.0", "21.0"),
                                       pupil(7, "23.0", "22.0"), pupil(8, "23.0", "22.5")};
    const auto round = comparison::judgeRound(pairs, whirled());
    EXPECT_DOUBLE_EQ(round.wet->median, 16.25);
    for (std::size_t i = 5; i < 8; ++i) {
        EXPECT_EQ(round.pupils[i].cause, RoundCause::DryWick) << i + 1;
    }
}

TEST(ClassRound, NothingGivenIsNothingJudged) {
    const auto round = comparison::judgeRound({}, whirled());
    EXPECT_TRUE(round.pupils.empty());
    EXPECT_FALSE(round.dry);
    EXPECT_TRUE(round.tooFewToJudge);
}

} // namespace
