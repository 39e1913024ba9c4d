// SPDX-License-Identifier: GPL-3.0-or-later
// exp, ln and the inverses of this room against the C library's, in long double where it is wider; columns
// against one pair after another; columns against the equations as they are printed.
#include "core/psychrometry/elementary.h"
#include "core/psychrometry/humidity_columns.h"
#include "core/psychrometry/psychrometer.h"
#include "core/psychrometry/sonntag.h"

#include <gtest/gtest.h>

#include <bit>
#include <cmath>
#include <limits>
#include <random>
#include <vector>

using namespace wickbook;
using namespace wickbook::psychrometry;

namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

long double wide(double value) {
    return static_cast<long double>(value);
}

/// ln e after Sonntag 1990 (Z. Meteorol. 70, 340–344), as printed, with the C library's logarithm.
long double printedLogarithm(long double celsius, Surface surface) {
    const long double kelvin = celsius + 273.15L;
    return surface == Surface::Water ? -6096.9385L / kelvin + 16.635794L - 2.711193e-2L * kelvin +
                                           1.673952e-5L * kelvin * kelvin + 2.433502L * std::log(kelvin)
                                     : -6024.5282L / kelvin + 24.7219L + 1.0613868e-2L * kelvin -
                                           1.3198825e-5L * kelvin * kelvin - 0.49382577L * std::log(kelvin);
}

/// The root by halving, to the last digit of a long double.
long double printedInverse(long double logarithm, Surface surface, long double low, long double high) {
    for (int i = 0; i < 200; ++i) {
        const long double middle = low + (high - low) / 2;
        (printedLogarithm(middle, surface) > logarithm ? high : low) = middle;
    }
    return low;
}

/// Pairs of every kind, and among them missing ones and ones outside the range.
struct Pairs {
    std::vector<EquationPair> rows;
    std::vector<double> dry, wet, pressure, perKelvin, enhancement;
    std::vector<Surface> bulb;

    explicit Pairs(std::size_t count) {
        std::mt19937_64 random(20);
        std::uniform_real_distribution<double> temperature(-62, 62);
        std::uniform_real_distribution<double> depression(-0.5, 15);
        std::uniform_real_distribution<double> hectopascals(600, 1080);
        for (std::size_t i = 0; i < count; ++i) {
            EquationPair pair;
            pair.dry = i % 53 == 7 ? kNaN : temperature(random);
            pair.wet = i % 59 == 11 ? kNaN : pair.dry - depression(random);
            pair.bulb = i % 3 == 0 && pair.wet < 0.5 ? Surface::Ice : Surface::Water;
            pair.pressure = i % 61 == 13 ? kNaN : hectopascals(random);
            pair.perKelvin = i % 67 == 17 ? kNaN : 6.66e-4;
            pair.enhancement = i % 2 == 0 ? 1.0 : 1.0047;
            rows.push_back(pair);
            dry.push_back(pair.dry);
            wet.push_back(pair.wet);
            bulb.push_back(pair.bulb);
            pressure.push_back(pair.pressure);
            perKelvin.push_back(pair.perKelvin);
            enhancement.push_back(pair.enhancement);
        }
    }
    [[nodiscard]] PairColumns columns() const { return {dry, wet, bulb, pressure, perKelvin, enhancement}; }
};

bool sameBits(double one, double other) {
    // A missing value is missing, whatever else its bits say.
    return std::isnan(one) ? std::isnan(other)
                           : std::bit_cast<std::uint64_t>(one) == std::bit_cast<std::uint64_t>(other);
}

} // namespace

TEST(Elementary, ExponentialAndLogarithmOfTheCLibrary) {
    double worstExponential = 0;
    double worstLogarithm = 0;
    std::mt19937_64 random(7);
    std::uniform_real_distribution<double> argument(-40, 40);
    for (int i = 0; i < 200'000; ++i) {
        const double x = argument(random);
        const auto power = std::exp(wide(x));
        worstExponential =
            std::max(worstExponential, static_cast<double>(std::abs(wide(exponential(x)) - power) / power));
        const double y = static_cast<double>(power);
        const auto logarithm = std::log(wide(y));
        worstLogarithm =
            std::max(worstLogarithm, static_cast<double>(std::abs(wide(naturalLogarithm(y)) - logarithm) /
                                                         std::max(1.0L, std::abs(logarithm))));
    }
    constexpr double kTwoUnits = 2 * std::numeric_limits<double>::epsilon();
    EXPECT_LT(worstExponential, kTwoUnits);
    EXPECT_LT(worstLogarithm, kTwoUnits);
    EXPECT_EQ(exponential(0.0), 1.0);
    EXPECT_EQ(naturalLogarithm(1.0), 0.0);
    EXPECT_TRUE(std::isnan(exponential(kNaN)));
}

TEST(Sonntag, LogarithmSlopeAndInverseAreThePrintedEquations) {
    for (const auto surface : {Surface::Water, Surface::Ice}) {
        const Sonntag& k = surface == Surface::Water ? kSonntagWater : kSonntagIce;
        const double highest = surface == Surface::Water ? 60.0 : 0.01;
        for (double t = -60; t <= highest; t += 0.0371) {
            const LogSaturation at = logSaturationAt(t, k);
            const long double expected = printedLogarithm(wide(t), surface);
            ASSERT_NEAR(at.value, static_cast<double>(expected), 2e-14) << t;
            const long double h = 1e-3L;
            ASSERT_NEAR(at.slope,
                        static_cast<double>((printedLogarithm(wide(t) + h, surface) -
                                             printedLogarithm(wide(t) - h, surface)) /
                                            (2 * h)),
                        1e-9)
                << t;
            const double root = surface == Surface::Water ? waterTemperatureOf(static_cast<double>(expected))
                                                          : iceTemperatureOf(static_cast<double>(expected));
            ASSERT_NEAR(root, t, 1e-11) << t;
        }
        const long double middle = printedLogarithm(-20.25L, surface);
        EXPECT_NEAR(static_cast<double>(printedInverse(middle, surface, -60, wide(highest))), -20.25, 1e-12);
    }
}

TEST(HumidityColumns, EveryWidthGivesTheBitsOfOnePairAfterAnother) {
    // 64 rows make a block: none, fewer, whole blocks, and a rest of one.
    for (const std::size_t count : {0U, 1U, 63U, 64U, 65U, 6'400U, 6'401U}) {
        const Pairs pairs(count);
        for (const Width width : {Width::Baseline, Width::Widest}) {
            std::vector<double> e(count), humidity(count), dew(count);
            humidityOf(pairs.columns(), {e, humidity, dew}, width);
            for (std::size_t i = 0; i < count; ++i) {
                const EquationHumidity one = humidityOf(pairs.rows[i]);
                ASSERT_TRUE(sameBits(e[i], one.vapourPressure)) << count << " " << i;
                ASSERT_TRUE(sameBits(humidity[i], one.relativeHumidity)) << count << " " << i;
                ASSERT_TRUE(sameBits(dew[i], one.dewPoint)) << count << " " << i;
            }
        }
    }
}

TEST(HumidityColumns, AreThePsychrometerEquationAndMissingStaysMissing) {
    const std::size_t count = 20'000;
    const Pairs pairs(count);
    std::vector<double> e(count), humidity(count), dew(count);
    humidityOf(pairs.columns(), {e, humidity, dew});
    std::size_t missing = 0;
    std::size_t without = 0; // a dew point below −60 °C
    for (std::size_t i = 0; i < count; ++i) {
        const EquationPair& pair = pairs.rows[i];
        const long double saturation = std::exp(printedLogarithm(wide(pair.wet), pair.bulb));
        const long double vapour =
            wide(pair.enhancement) * saturation -
            wide(pair.perKelvin) * wide(pair.pressure) * (wide(pair.dry) - wide(pair.wet));
        const double highest = pair.bulb == Surface::Ice ? 0.01 : 60.0;
        const bool had =
            pair.dry >= -60 && pair.dry <= 60 && pair.wet >= -60 && pair.wet <= highest && vapour > 0;
        ASSERT_EQ(!std::isnan(e[i]), had) << i;
        ASSERT_EQ(!std::isnan(humidity[i]), had) << i;
        if (!had) {
            ++missing;
            ASSERT_TRUE(std::isnan(dew[i])) << i;
            continue;
        }
        // Next to no vapour is left as the difference of two like numbers: their last digits then weigh.
        const long double size = wide(pair.enhancement) * saturation;
        ASSERT_NEAR(e[i], static_cast<double>(vapour), static_cast<double>(size) * 1e-13) << i;
        const long double expected =
            100 * vapour /
            (wide(pair.enhancement) * std::exp(printedLogarithm(wide(pair.dry), Surface::Water)));
        const double lost = std::max(1.0, static_cast<double>(size / vapour));
        ASSERT_NEAR(humidity[i], static_cast<double>(expected), static_cast<double>(expected) * lost * 1e-13)
            << i;
        const long double logarithm = std::log(vapour / wide(pair.enhancement));
        const bool within = logarithm >= printedLogarithm(-60, Surface::Water) &&
                            logarithm <= printedLogarithm(60, Surface::Water);
        ASSERT_EQ(!std::isnan(dew[i]), within) << i;
        without += within ? 0U : 1U;
        if (within) {
            const long double root = printedInverse(logarithm, Surface::Water, -60, 60);
            ASSERT_NEAR(dew[i], static_cast<double>(root), 1e-11 + static_cast<double>(size / vapour) * 1e-12)
                << i;
        }
    }
    EXPECT_GT(missing, count / 20);
    EXPECT_GT(without, 5U);
    EXPECT_LT(missing, count * 2 / 3);
}

TEST(HumidityColumns, TheEndsOfTheRangeBelongToIt) {
    for (const double t : {-60.0, 60.0}) {
        const EquationHumidity result = humidityOf(EquationPair{t, t, Surface::Water, 1000, 6.66e-4, 1.0047});
        EXPECT_EQ(result.relativeHumidity, 100.0);
        EXPECT_NEAR(result.dewPoint, t, 1e-11);
    }
    EXPECT_TRUE(
        std::isnan(humidityOf(EquationPair{60.1, 20, Surface::Water, 1000, 6.66e-4, 1}).vapourPressure));
    EXPECT_TRUE(std::isnan(humidityOf(EquationPair{5, 0.02, Surface::Ice, 1000, 5.94e-4, 1}).vapourPressure));
}
