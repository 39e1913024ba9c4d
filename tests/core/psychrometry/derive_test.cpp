// SPDX-License-Identifier: GPL-3.0-or-later
// The rules of derive(), in their order. Limits without a source beside them: common practice, no source.
#include "core/psychrometry/quantities.h"
#include "tests/core/psychrometry/reference_tools.h"

#include <limits>

using namespace wickbook::psychrometry;
using namespace wickbook::psychrometry::testing;
using wickbook::units::TemperatureDifference;

namespace {

PairInput pairOf(double dry, double wet, WickState wick = WickState::NotGiven,
                 Exposure exposure = Exposure::Whirled) {
    PairInput input;
    input.dry = celsius(dry);
    input.wet = celsius(wet);
    input.wick = wick;
    input.coefficient.exposure = exposure;
    return input;
}

void hasNoNumbers(const Derivation& result) {
    EXPECT_FALSE(result.vapourPressure);
    EXPECT_FALSE(result.relativeHumidity);
    EXPECT_FALSE(result.dewPoint);
    EXPECT_FALSE(result.frostPoint);
    EXPECT_FALSE(result.vapourPressureDeficit);
    EXPECT_FALSE(result.absoluteHumidity);
    EXPECT_FALSE(result.mixingRatio);
    EXPECT_FALSE(result.uncertainty);
    EXPECT_FALSE(result.takenAsSaturation);
}

} // namespace

// 23/16 at 1013.25 hPa: whirled 47.90 % and 11.38 °C (printed tables: 48 %; common practice, no source),
// screen 44.54 %.
TEST(Derive, TwentyThreeSixteen) {
    const auto whirled = derive(pairOf(23, 16));
    EXPECT_NEAR(whirled.relativeHumidity->percent(), 47.90, 0.01);
    EXPECT_NEAR(whirled.dewPoint->celsius(), 11.38, 0.01);
    EXPECT_EQ(whirled.wickUsed, WickState::Water);
    EXPECT_FALSE(whirled.frostPoint);
    EXPECT_FALSE(whirled.extrapolated);
    EXPECT_NEAR(whirled.coefficient->perKelvin, 6.66e-4, 1e-15);
    EXPECT_DOUBLE_EQ(whirled.coefficient->enhancement, 1.0);
    EXPECT_NEAR(whirled.depression.kelvins(), 7.0, 1e-12);
    // e = 13.4585 hPa: the gas law by hand, 216.67 e / 296.15 and 621.98 e / (1013.25 − e).
    const double e = whirled.vapourPressure->hectopascals();
    EXPECT_NEAR(*whirled.absoluteHumidity, 216.67 * e / 296.15, 1e-9);
    EXPECT_NEAR(*whirled.mixingRatio, 621.98 * e / (1013.25 - e), 1e-9);
    EXPECT_NEAR(whirled.vapourPressureDeficit->hectopascals() + e, saturation(23, Surface::Water), 1e-9);
    EXPECT_NEAR(derive(pairOf(23, 16, WickState::NotGiven, Exposure::Screen)).relativeHumidity->percent(),
                44.54, 0.01);
}

TEST(Derive, ANumberByHandHasNoEnhancement) {
    auto input = pairOf(20, 15, WickState::NotGiven, Exposure::Aspirated);
    EXPECT_GT(derive(input).coefficient->enhancement, 1.004);
    input.coefficient.perKelvin = 6.62e-4;
    EXPECT_DOUBLE_EQ(derive(input).coefficient->enhancement, 1.0);
    EXPECT_DOUBLE_EQ(derive(input).coefficient->perKelvin, 6.62e-4);
}

TEST(Derive, OwnServesBothSurfacesUnlessTwoAreGiven) {
    auto input = pairOf(-4, -5, WickState::Ice, Exposure::Own);
    EXPECT_EQ(derive(input).problem, PsychrometryError::CoefficientOutOfRange);
    input.coefficient.perKelvin = 7e-4;
    EXPECT_DOUBLE_EQ(derive(input).coefficient->perKelvin, 7e-4);
    EXPECT_DOUBLE_EQ(derive(input).coefficient->relativeUncertainty, 0.04);
    input.coefficient.perKelvinIce = 6.2e-4;
    input.coefficient.relativeUncertainty = 0.02;
    EXPECT_DOUBLE_EQ(derive(input).coefficient->perKelvin, 6.2e-4);
    EXPECT_DOUBLE_EQ(derive(input).coefficient->relativeUncertainty, 0.02);
    input.wick = WickState::Water;
    EXPECT_DOUBLE_EQ(derive(input).coefficient->perKelvin, 7e-4);
}

TEST(Derive, WickMustBeGivenNearZero) {
    for (const double wet : {-30.0, -0.1, 0.0, 0.05}) {
        const auto result = derive(pairOf(wet + 2, wet));
        EXPECT_EQ(result.problem, PsychrometryError::WickStateUnknown) << wet;
        EXPECT_EQ(result.wickUsed, WickState::NotGiven);
        EXPECT_NEAR(result.depression.kelvins(), 2.0, 1e-12);
        hasNoNumbers(result);
    }
    EXPECT_FALSE(derive(pairOf(2, 0.06)).problem);
    EXPECT_TRUE(derive(pairOf(2, -0.5, WickState::Water)).relativeHumidity);
    EXPECT_TRUE(derive(pairOf(2, -0.5, WickState::Ice)).relativeHumidity);
}

TEST(Derive, StepAndCorrectionWidenTheBand) {
    const auto k = [](double value) { return TemperatureDifference::fromKelvins(value); };
    EXPECT_TRUE(wickStateNeeded(celsius(0.05), k(0.1), k(0)));
    EXPECT_FALSE(wickStateNeeded(celsius(0.051), k(0.1), k(0)));
    EXPECT_TRUE(wickStateNeeded(celsius(0.5), k(1), k(0)));
    EXPECT_FALSE(wickStateNeeded(celsius(0.6), k(1), k(0)));
    EXPECT_TRUE(wickStateNeeded(celsius(0.3), k(0.1), k(0.3)));
    EXPECT_TRUE(wickStateNeeded(celsius(0.3), k(0.1), k(-0.3)));
    EXPECT_FALSE(wickStateNeeded(celsius(0.4), k(0.1), k(-0.3)));
    auto input = pairOf(2, 0.3);
    input.wetCorrection = k(-0.3);
    EXPECT_EQ(derive(input).problem, PsychrometryError::WickStateUnknown);
}

TEST(Derive, WaterBulbAboveDryWithinReadingError) {
    // Tenths as written: 20.2 − 20.0 has no exact binary fraction.
    for (const auto& [dry, wet] : {std::pair{20.0, 20.2}, {5.3, 5.5}, {0.9, 1.1}, {-3.0, -2.9}}) {
        const auto result = derive(pairOf(dry, wet, WickState::Water));
        ASSERT_TRUE(result.relativeHumidity) << dry;
        EXPECT_TRUE(result.takenAsSaturation);
        EXPECT_NEAR(result.relativeHumidity->percent(), 100.0, 1e-9);
        EXPECT_DOUBLE_EQ(result.dewPoint->celsius(), dry);
        EXPECT_NEAR(result.vapourPressureDeficit->hectopascals(), 0.0, 1e-9);
        EXPECT_LT(result.depression.kelvins(), 0.0);
        EXPECT_DOUBLE_EQ(result.uncertainty->highestHumidity, 100.0);
    }
    EXPECT_FALSE(derive(pairOf(20, 20)).takenAsSaturation);
    const auto beyond = derive(pairOf(20, 20.3));
    EXPECT_EQ(beyond.problem, PsychrometryError::WetAboveDry);
    hasNoNumbers(beyond);
    auto halves = pairOf(20, 20.5);
    halves.resolution = TemperatureDifference::fromKelvins(0.5);
    EXPECT_TRUE(derive(halves).takenAsSaturation);
}

TEST(Derive, SaturationOfAnAspiratedPairHasItsDewPointAtTheDryBulb) {
    const auto result = derive(pairOf(20, 20, WickState::Water, Exposure::Aspirated));
    EXPECT_NEAR(result.dewPoint->celsius(), 20.0, 1e-9);
    EXPECT_NEAR(result.relativeHumidity->percent(), 100.0, 1e-9);
}

// In saturated air at −10 °C an aspirated ice bulb stands at −9.673 (same file as edge_cases).
TEST(Derive, IceBulbAboveDryInFog) {
    const auto fog = derive(pairOf(-10, -9.7, WickState::Ice, Exposure::Aspirated));
    ASSERT_TRUE(fog.relativeHumidity);
    EXPECT_FALSE(fog.takenAsSaturation);
    EXPECT_NEAR(fog.relativeHumidity->percent(), 99.2, 0.3);
    const auto taken = derive(pairOf(-10, -9.5, WickState::Ice, Exposure::Aspirated));
    ASSERT_TRUE(taken.relativeHumidity);
    EXPECT_TRUE(taken.takenAsSaturation);
    EXPECT_NEAR(taken.relativeHumidity->percent(), 100.0, 1e-9);
    EXPECT_DOUBLE_EQ(taken.dewPoint->celsius(), -10.0);
    EXPECT_GT(taken.frostPoint->celsius(), -10.0); // supersaturated over ice
    const auto beyond = derive(pairOf(-10, -9.4, WickState::Ice, Exposure::Aspirated));
    EXPECT_EQ(beyond.problem, PsychrometryError::IceOverDry);
    hasNoNumbers(beyond);
}

// Read at the freezing halt, dry −1: 118 % – not a number to show.
TEST(Derive, FreezingHaltBelowZeroHasNoNumbers) {
    hasNoNumbers(derive(pairOf(-1, 0, WickState::Ice)));
    hasNoNumbers(derive(pairOf(-1, 0, WickState::Water)));
}

TEST(Derive, IceNoWarmerThanMelting) {
    const auto atZero = derive(pairOf(2, 0.0, WickState::Ice));
    const auto within = derive(pairOf(2, 0.1, WickState::Ice));
    ASSERT_TRUE(within.relativeHumidity);
    EXPECT_DOUBLE_EQ(within.relativeHumidity->percent(), atZero.relativeHumidity->percent());
    EXPECT_EQ(derive(pairOf(2, 0.2, WickState::Ice)).problem, PsychrometryError::IceAboveZero);
    EXPECT_EQ(derive(pairOf(20, 12, WickState::Ice)).problem, PsychrometryError::IceAboveZero);
}

TEST(Derive, NoVapour) {
    const auto result = derive(pairOf(25, 5));
    EXPECT_EQ(result.problem, PsychrometryError::NoVapour);
    EXPECT_TRUE(result.coefficient);
    hasNoNumbers(result);
}

TEST(Derive, DewPointBelowRangeIsMissingAndSaysSo) {
    auto input = pairOf(-40, -40);
    input.wick = WickState::Ice;
    input.wet = wetBulbFor(input.dry, percent(2), Surface::Ice, input.pressure, input.coefficient).value();
    const auto result = derive(input);
    ASSERT_TRUE(result.relativeHumidity);
    EXPECT_NEAR(result.relativeHumidity->percent(), 2.0, 1e-6);
    EXPECT_FALSE(result.dewPoint);
    EXPECT_EQ(result.dewPointProblem, PsychrometryError::BelowRange);
    EXPECT_FALSE(result.uncertainty->dewPointU95);
    EXPECT_TRUE(result.extrapolated);
}

TEST(Derive, FrostPointOnlyAtOrBelowZero) {
    EXPECT_FALSE(derive(pairOf(5, 3.5)).frostPoint);
    const auto cold = derive(pairOf(-4, -5.2, WickState::Ice));
    ASSERT_TRUE(cold.frostPoint);
    EXPECT_GT(cold.frostPoint->celsius(), cold.dewPoint->celsius());
    EXPECT_FALSE(cold.extrapolated);
    EXPECT_TRUE(derive(pairOf(-20.5, -20.8, WickState::Ice)).extrapolated);
}

TEST(Derive, NothingNotFiniteGetsThrough) {
    constexpr double kNan = std::numeric_limits<double>::quiet_NaN();
    constexpr double kInfinity = std::numeric_limits<double>::infinity();
    for (const double bad : {kNan, kInfinity, -kInfinity, 1e300, -1e300}) {
        std::vector<PairInput> inputs(10, pairOf(20, 15));
        inputs[0].dry = celsius(bad);
        inputs[1].wet = celsius(bad);
        inputs[2].pressure = hectopascals(bad);
        inputs[3].coefficient.perKelvin = bad;
        inputs[4].resolution = TemperatureDifference::fromKelvins(bad);
        inputs[5].wetCorrection = TemperatureDifference::fromKelvins(bad);
        inputs[6].coefficient.relativeUncertainty = bad;
        inputs[7].uncertainty.dryCorrectionKelvins = bad;
        inputs[8].uncertainty.correctionCorrelation = bad;
        inputs[9].uncertainty.pressureHectopascals = bad;
        for (std::size_t i = 0; i < inputs.size(); ++i) {
            SCOPED_TRACE(std::to_string(i) + " " + std::to_string(bad));
            const auto result = derive(inputs[i]);
            EXPECT_TRUE(std::isfinite(result.depression.kelvins()));
            if (i < 4) {
                EXPECT_TRUE(result.problem);
                hasNoNumbers(result);
            }
            if (result.relativeHumidity) {
                EXPECT_TRUE(std::isfinite(result.relativeHumidity->percent()));
            }
            if (result.uncertainty) {
                EXPECT_TRUE(std::isfinite(result.uncertainty->lowestHumidity));
                EXPECT_TRUE(std::isfinite(result.uncertainty->highestHumidity));
            }
            // A budget from a value that is none must be missing, never a number.
            if (i > 6 && !std::isfinite(bad)) {
                EXPECT_FALSE(result.uncertainty);
                EXPECT_TRUE(result.relativeHumidity);
            }
        }
        EXPECT_FALSE(saturationVapourPressure(celsius(bad), Surface::Water));
        EXPECT_FALSE(saturationVapourPressure(celsius(bad), Surface::Ice));
        EXPECT_FALSE(saturationSlope(celsius(bad), Surface::Water));
        EXPECT_FALSE(magnusVapourPressure(celsius(bad), Surface::Ice));
        EXPECT_FALSE(dewPoint(wickbook::units::VapourPressure::fromHectopascals(bad)));
        EXPECT_FALSE(frostPoint(wickbook::units::VapourPressure::fromHectopascals(bad)));
        EXPECT_FALSE(wetBulbFor(celsius(bad), percent(50), Surface::Water, hectopascals(1000), {}));
        EXPECT_FALSE(wetBulbFor(celsius(20), percent(bad), Surface::Water, hectopascals(1000), {}));
        EXPECT_FALSE(wetBulbFor(celsius(20), percent(50), Surface::Water, hectopascals(bad), {}));
    }
    EXPECT_FALSE(dewPoint(wickbook::units::VapourPressure::fromHectopascals(10), 0.0));
    EXPECT_EQ(dewPoint(wickbook::units::VapourPressure::fromHectopascals(0)).error(),
              PsychrometryError::NoVapour);
    EXPECT_EQ(dewPoint(wickbook::units::VapourPressure::fromHectopascals(1e-4)).error(),
              PsychrometryError::BelowRange);
    EXPECT_EQ(dewPoint(wickbook::units::VapourPressure::fromHectopascals(200)).error(),
              PsychrometryError::AboveRange);
    EXPECT_EQ(frostPoint(wickbook::units::VapourPressure::fromHectopascals(6.2)).error(),
              PsychrometryError::AboveRange);
}

TEST(Derive, RangeComesFirst) {
    EXPECT_EQ(derive(pairOf(60.1, 30)).problem, PsychrometryError::TemperatureOutOfRange);
    EXPECT_EQ(derive(pairOf(-60.1, -61)).problem, PsychrometryError::TemperatureOutOfRange);
    auto input = pairOf(20, 15);
    for (const double p : {299.9, 1100.1, 0.0, -1000.0}) {
        input.pressure = hectopascals(p);
        EXPECT_EQ(derive(input).problem, PsychrometryError::PressureOutOfRange);
    }
    input.pressure = hectopascals(300);
    EXPECT_FALSE(derive(input).problem);
    for (const double a : {0.0, -6.6e-4, 5.1e-3}) {
        input.coefficient.perKelvin = a;
        EXPECT_EQ(derive(input).problem, PsychrometryError::CoefficientOutOfRange);
    }
}

TEST(Derive, BatchIsTheSameOneByOne) {
    std::vector<PairInput> inputs{pairOf(23, 16), pairOf(2, -0.5), pairOf(-10, -9.9, WickState::Ice),
                                  pairOf(25, 5)};
    const auto results = deriveAll(inputs);
    ASSERT_EQ(results.size(), inputs.size());
    for (std::size_t i = 0; i < inputs.size(); ++i) {
        const auto single = derive(inputs[i]);
        EXPECT_EQ(results[i].problem, single.problem);
        EXPECT_EQ(results[i].relativeHumidity, single.relativeHumidity);
        EXPECT_EQ(results[i].dewPoint, single.dewPoint);
    }
    EXPECT_TRUE(deriveAll({}).empty());
}
