// SPDX-License-Identifier: GPL-3.0-or-later
// Property tests with fixed seeds: what goes in comes back, over the whole range.
#include "tests/core/psychrometry/reference_tools.h"

#include <random>

using namespace wickbook::psychrometry;
using namespace wickbook::psychrometry::testing;
using wickbook::units::VapourPressure;

namespace {

constexpr int kRounds = 20'000;

double between(std::mt19937_64& random, double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random);
}

CoefficientRule ruleFor(Exposure exposure) {
    CoefficientRule rule;
    rule.exposure = exposure;
    if (exposure == Exposure::Own) {
        rule.perKelvin = 7.3e-4;
        rule.perKelvinIce = 6.4e-4;
    }
    return rule;
}

} // namespace

// Dew point → e → dew point, and the same over ice. The goal is 0.001 K; the solver is held to a millionth.
TEST(RoundTripProperty, DewAndFrostPoint) {
    std::mt19937_64 random(11);
    Worst dew("dew point round trip, K");
    Worst frost("frost point round trip, K");
    for (int i = 0; i < kRounds; ++i) {
        const double f = i % 2 == 0 ? 1.0 : enhancementFactor(hectopascals(between(random, 300, 1100)));
        const double t = between(random, -60, 60);
        dew.see(dewPoint(VapourPressure::fromHectopascals(f * saturation(t, Surface::Water)), f)
                    .value()
                    .celsius(),
                t, 1e-6, "water");
        const double ice = between(random, -60, kTriplePointCelsius);
        frost.see(frostPoint(VapourPressure::fromHectopascals(f * saturation(ice, Surface::Ice)), f)
                      .value()
                      .celsius(),
                  ice, 1e-6, "ice");
    }
}

// RH → wet bulb → RH with every exposure, water and ice, 500…1080 hPa. 1e-6 % is 1e-8 K of the solver at
// most.
TEST(RoundTripProperty, HumidityThroughTheWetBulb) {
    std::mt19937_64 random(12);
    Worst worst("RH round trip, %");
    int ice = 0;
    for (const ExposureEntry& entry : exposureTable()) {
        const auto rule = ruleFor(entry.exposure);
        for (int i = 0; i < kRounds; ++i) {
            const Surface bulb = i % 2 == 0 ? Surface::Water : Surface::Ice;
            const double t = bulb == Surface::Water ? between(random, -58, 60) : between(random, -55, 12);
            const double u = between(random, 0.01, 100);
            const auto p = hectopascals(between(random, 500, 1080));
            const auto wet = wetBulbFor(celsius(t), percent(u), bulb, p, rule);
            if (!wet) {
                // Only an ice bulb may have no place: above its melting point; or a bulb below the range.
                ASSERT_EQ(wet.error(), PsychrometryError::NoSolution);
                ASSERT_TRUE(bulb == Surface::Ice || t < -50) << t << " " << u;
                continue;
            }
            ice += bulb == Surface::Ice ? 1 : 0;
            if (bulb == Surface::Water) {
                ASSERT_LE(wet->celsius(), t + 1e-9);
            }
            const auto c = rule.at(bulb, *wet, p).value();
            const auto e = vapourPressure(celsius(t), *wet, bulb, p, c);
            ASSERT_TRUE(e) << t << " " << u;
            worst.see(relativeHumidity(*e, celsius(t), c.enhancement).value().percent(), u, 1e-6,
                      std::string(entry.name));
        }
    }
    EXPECT_GT(ice, kRounds);
}

// derive() on the pair of a known air gives that air back, whatever the exposure; and what it gives hangs
// together.
TEST(RoundTripProperty, DeriveKeepsTheAir) {
    std::mt19937_64 random(13);
    for (const ExposureEntry& entry : exposureTable()) {
        for (int i = 0; i < kRounds / 4; ++i) {
            PairInput input;
            input.coefficient = ruleFor(entry.exposure);
            input.wick = i % 2 == 0 ? WickState::Water : WickState::Ice;
            const Surface bulb = i % 2 == 0 ? Surface::Water : Surface::Ice;
            input.dry = celsius(bulb == Surface::Water ? between(random, -50, 60) : between(random, -50, 5));
            input.pressure = hectopascals(between(random, 500, 1080));
            const double u = between(random, 1, 100);
            const auto wet = wetBulbFor(input.dry, percent(u), bulb, input.pressure, input.coefficient);
            // derive() takes ice between 0 °C and the triple point at 0.01 °C as 0 °C.
            if (!wet || (bulb == Surface::Ice && wet->celsius() > 0.0)) {
                continue;
            }
            input.wet = *wet;
            const auto result = derive(input);
            ASSERT_FALSE(result.problem) << name(*result.problem) << " " << input.dry.celsius() << " " << u;
            ASSERT_NEAR(result.relativeHumidity->percent(), u, 1e-6);
            ASSERT_LE(result.relativeHumidity->percent(), 100.0);
            ASSERT_GE(result.vapourPressureDeficit->hectopascals(), 0.0);
            ASSERT_GT(*result.absoluteHumidity, 0.0);
            ASSERT_TRUE(result.uncertainty);
            ASSERT_GE(result.uncertainty->lowestHumidity, 0.0);
            ASSERT_LE(result.uncertainty->highestHumidity, 100.0);
            ASSERT_NE(result.dewPoint.has_value(), result.dewPointProblem.has_value());
            if (result.dewPoint) {
                ASSERT_LE(result.dewPoint->celsius(), input.dry.celsius() + 1e-8);
            }
            if (result.dewPoint && result.frostPoint) {
                ASSERT_LE(result.frostPoint->celsius(), 0.0);
                ASSERT_GE(result.frostPoint->celsius(), result.dewPoint->celsius() - 1e-3);
            }
        }
    }
}
