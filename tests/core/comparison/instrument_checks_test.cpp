// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/overlap.h"
#include "core/comparison/pair_in_bath.h"
#include "core/comparison/salt_points.h"
#include "core/record/station_record.h"
#include "tests/core/comparison/compared_pairs.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

using namespace wickbook;
using namespace wickbook::comparison;

namespace {

using units::TemperatureUnit;

units::ReadTemperature tenths(std::int64_t digits, TemperatureUnit unit = TemperatureUnit::Celsius) {
    return {{digits, 1}, unit};
}

record::Thermometer thermometerReadTo(units::Decimal step, TemperatureUnit unit = TemperatureUnit::Celsius) {
    record::Thermometer thermometer;
    thermometer.id = record::Uuid::fromSeed(60, static_cast<std::uint64_t>(step.mantissa));
    thermometer.step = step;
    thermometer.unit = unit;
    return thermometer;
}

} // namespace

// Two bulbs in one bath within 0.1 °C are a pair (common practice, no source).
TEST(PairInBath, TheIcePointTellsWhichTheBathDoesNot) {
    const auto fine = thermometerReadTo({1, 1});
    record::PairCheck check;
    check.dryInBath = tenths(203);
    check.wetInBath = tenths(200);
    auto verdict = judgePair(check, fine, fine);
    ASSERT_TRUE(verdict.inBath);
    EXPECT_NEAR(verdict.inBath->value, 0.3, 1e-9);
    EXPECT_TRUE(verdict.inBath->large);
    EXPECT_FALSE(verdict.dryAtIce || verdict.atIce || verdict.inBathCorrected);

    check.dryAtIce = tenths(3);
    check.wetAtIce = tenths(0);
    verdict = judgePair(check, fine, fine);
    ASSERT_TRUE(verdict.dryAtIce && verdict.inBathCorrected);
    EXPECT_NEAR(verdict.dryAtIce->off, 0.3, 1e-9);
    EXPECT_NEAR(verdict.dryAtIce->correction, -0.3, 1e-9);
    EXPECT_NEAR(verdict.inBathCorrected->value, 0.0, 1e-9);
    EXPECT_FALSE(verdict.inBathCorrected->large);
    EXPECT_TRUE(verdict.differs());
}

TEST(PairInBath, ExactlyTheToleranceIsStillAPair) {
    const auto fine = thermometerReadTo({1, 1});
    record::PairCheck check;
    check.dryAtIce = tenths(2);
    check.wetAtIce = tenths(1);
    EXPECT_FALSE(judgePair(check, fine, fine).atIce->large);
    check.dryAtIce = tenths(3);
    EXPECT_TRUE(judgePair(check, fine, fine).atIce->large);
    // One step for a coarse pair (common practice, no source).
    const auto coarse = thermometerReadTo({5, 1});
    check.dryAtIce = tenths(5);
    check.wetAtIce = tenths(0);
    EXPECT_FALSE(judgePair(check, coarse, coarse).atIce->large);
}

// JCGM 100:2008, 4.3.7: half a step as a rectangular distribution, u = step/√12.
TEST(PairInBath, UncertaintyOfADifference) {
    const auto fine = thermometerReadTo({1, 1});
    record::PairCheck check;
    check.dryInBath = tenths(200);
    check.wetInBath = tenths(200);
    const double reading = 0.1 / std::sqrt(12.0);
    EXPECT_NEAR(judgePair(check, fine, fine).inBath->expandedUncertainty,
                2 * std::sqrt(2 * reading * reading + kBathUncertainty * kBathUncertainty), 1e-12);
}

TEST(PairInBath, AFahrenheitScaleIsCorrectedInItsOwnDegrees) {
    const auto scale = thermometerReadTo({1, 1}, TemperatureUnit::Fahrenheit);
    record::PairCheck check;
    check.dryAtIce = tenths(325, TemperatureUnit::Fahrenheit);
    const auto verdict = judgePair(check, scale, scale);
    EXPECT_NEAR(verdict.dryAtIce->correction, -0.5, 1e-9);
    const auto correction = correctionFromIce(*verdict.dryAtIce, scale, nullptr);
    ASSERT_EQ(correction.points.size(), 1U);
    EXPECT_NEAR(correction.points[0].reading, 32.0, 1e-9);
    EXPECT_NEAR(correction.points[0].correction, -0.5, 1e-9);
}

TEST(PairInBath, AZeroThatMovedMovesTheWholeTable) {
    const auto fine = thermometerReadTo({1, 1});
    record::Correction known;
    known.points = {{0, -0.1}, {10, 0.0}, {20, 0.2}};
    known.standardUncertainty = 0.05;
    record::PairCheck check;
    check.dryAtIce = tenths(3);
    const auto verdict = judgePair(check, fine, fine);
    const auto correction = correctionFromIce(*verdict.dryAtIce, fine, &known);
    // At 0.3 the ice point now reads right.
    EXPECT_NEAR(0.3 + record::correctionAtReading(correction, 0.3), 0.0, 1e-9);
    EXPECT_NEAR(correction.points[2].correction - correction.points[0].correction, 0.3, 1e-9);
    EXPECT_GE(correction.standardUncertainty, 0.05);
}

// CRC Handbook of Chemistry and Physics, constant-humidity solutions at 25 °C, ± 2 %.
TEST(SaltPoints, PublishedValues) {
    const std::array<double, 6> published{11, 33, 53, 75, 84, 97};
    for (std::size_t i = 0; i < published.size(); ++i) {
        EXPECT_EQ(saltPoints().at(i).humidity, published.at(i));
        EXPECT_EQ(static_cast<std::size_t>(saltPoints().at(i).salt), i);
    }
    EXPECT_TRUE(saltPoints().front().isToxic);
}

TEST(SaltPoints, SensorJudgedByThem) {
    record::SaltCheck check;
    check.readings = {{record::Salt::SodiumChloride, {785, 1}}, {record::Salt::LithiumChloride, {13, 0}}};
    auto verdict = judgeSalts(check);
    ASSERT_EQ(verdict.points.size(), 2U);
    EXPECT_EQ(verdict.points[0].reading.salt, record::Salt::LithiumChloride); // from dry to damp
    EXPECT_TRUE(verdict.points[0].within);
    EXPECT_NEAR(verdict.points[1].off, 3.5, 1e-9);
    EXPECT_FALSE(verdict.points[1].within);
    EXPECT_EQ(verdict.off(), 1U);
    EXPECT_EQ(verdict.span, 64.0);
    EXPECT_TRUE(verdict.temperatureFits);
    check.temperature = units::Decimal{4, 0};
    EXPECT_FALSE(judgeSalts(check).temperatureFits);
}

TEST(SaltPoints, NamesAreRead) {
    EXPECT_EQ(record::saltFromName("nacl"), record::Salt::SodiumChloride);
    EXPECT_EQ(record::saltFromName("Mg(NO3)2"), record::Salt::MagnesiumNitrate);
    EXPECT_FALSE(record::saltFromName("NaC"));
    EXPECT_FALSE(record::saltFromName(""));
}

namespace {

OverlapPair overlapPair(double dry, double wet, double shift, unsigned month) {
    OverlapPair pair;
    pair.station = comparison::testing::comparedPair(dry, wet, false, 1000, 0).own;
    pair.other = comparison::testing::comparedPair(dry + shift, wet + shift, false, 1000, 0).own;
    pair.month = date::year{2026} / date::month{month};
    return pair;
}

std::vector<OverlapPair> overlapWith(double shift, double noise, std::size_t n) {
    std::mt19937_64 random(12);
    std::normal_distribution<double> error(shift, noise);
    std::vector<OverlapPair> pairs;
    for (std::size_t i = 0; i < n; ++i) {
        pairs.push_back(overlapPair(12 + static_cast<double>(i % 9), 9, error(random),
                                    static_cast<unsigned>(i % 12) + 1));
    }
    return pairs;
}

} // namespace

TEST(Overlap, JoinsWhatIsAlikeAndBreaksWhatDiffers) {
    EXPECT_EQ(compareOverlap(overlapWith(0.02, 0.05, 120)).verdict, JoinVerdict::Alike);
    const auto warmer = compareOverlap(overlapWith(0.6, 0.1, 120));
    EXPECT_EQ(warmer.verdict, JoinVerdict::Differs);
    EXPECT_NEAR(warmer.dry->value, 0.6, 0.05);
    EXPECT_TRUE(warmer.showsAllSeasons());
    EXPECT_EQ(compareOverlap(overlapWith(0.15, 0.9, 40)).verdict, JoinVerdict::Undecided);
    EXPECT_EQ(compareOverlap(overlapWith(0.0, 0.0, 29)).verdict, JoinVerdict::TooFew);
    EXPECT_EQ(compareOverlap({}).verdict, JoinVerdict::TooFew);
}
