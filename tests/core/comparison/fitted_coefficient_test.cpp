// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/fitted_coefficient.h"
#include "tests/core/comparison/compared_pairs.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <random>

using namespace wickbook;
using namespace wickbook::comparison;
using namespace wickbook::comparison::testing;
using psychrometry::Surface;
using ::testing::Contains;
using ::testing::IsEmpty;
using ::testing::Not;

namespace {

double saturation(double celsius, Surface surface) {
    return psychrometry::saturationVapourPressure(units::Temperature::fromCelsius(celsius), surface)
        ->hectopascals();
}

/// Pairs of a bulb with this coefficient; noise, in hPa, is the reference's alone.
std::vector<ComparedPair> synthetic(std::mt19937_64& random, std::size_t n, double coefficient, Surface bulb,
                                    double noise, double least, double most) {
    std::vector<ComparedPair> pairs;
    std::uniform_real_distribution<double> depressions(least, most);
    std::uniform_real_distribution<double> bulbs(bulb == Surface::Ice ? -3.5 : 4.0,
                                                 bulb == Surface::Ice ? -0.3 : 20.0);
    std::normal_distribution<double> error(0.0, 1.0);
    for (std::size_t i = 0; i < n; ++i) {
        const double wet = bulbs(random);
        const double dry = wet + depressions(random);
        const double e = saturation(wet, bulb) - coefficient * 1000.0 * (dry - wet) + noise * error(random);
        pairs.push_back(
            comparedPair(dry, wet, bulb == Surface::Ice, 1000.0, 100 * e / saturation(dry, Surface::Water)));
    }
    return pairs;
}

} // namespace

// tests/reference/beside_numpy.py: numpy.linalg.lstsq on the same pairs.
TEST(FittedCoefficient, AgreesWithNumpy) {
    const auto pairs = besidePairs();
    const auto expected = besideExpected();
    for (const auto& [surface, bulb] : {std::pair{"water", Surface::Water}, {"ice", Surface::Ice}}) {
        const auto fitted = fitCoefficient(pairs, bulb);
        ASSERT_TRUE(fitted.fit) << surface;
        const auto close = [&, name = std::string{surface}](const std::string& what, double value) {
            const double wanted = expected.at(name + " " + what);
            EXPECT_NEAR(value, wanted, 1e-9 * std::abs(wanted)) << name << " " << what;
        };
        EXPECT_EQ(static_cast<double>(fitted.fit->n), expected.at(std::string{surface} + " n"));
        close("coefficient", fitted.fit->slope.value);
        close("error", fitted.fit->slope.standardError);
        close("residual deviation", fitted.fit->residualDeviation);
        close("upper95", fitted.fit->slope.upper95);
        ASSERT_TRUE(fitted.residualOnDepression && fitted.residualOnWind) << surface;
        close("residual on depression slope", fitted.residualOnDepression->slope.value);
        close("residual on depression slope error", fitted.residualOnDepression->slope.standardError);
        close("residual on depression intercept", fitted.residualOnDepression->intercept.value);
        close("residual on depression intercept error", fitted.residualOnDepression->intercept.standardError);
        close("residual on wind slope", fitted.residualOnWind->slope.value);
        close("residual on wind slope error", fitted.residualOnWind->slope.standardError);
        close("residual on wind intercept", fitted.residualOnWind->intercept.value);
    }
    EXPECT_TRUE(fitCoefficient(pairs, Surface::Water).usable());
    EXPECT_THAT(fitCoefficient(pairs, Surface::Ice).refused, Contains(ThinEvidence::TooFew));
}

// A 95 % interval holds the truth in 95 % of the cases: 2,000 seeded runs with a known coefficient.
TEST(FittedCoefficient, IntervalHoldsTheTruthAsOftenAsItSays) {
    struct Case {
        double coefficient;
        Surface bulb;
        double most;
    };
    for (const Case& c :
         {Case{6.66e-4, Surface::Water, 9.0}, {7.99e-4, Surface::Water, 8.0}, {5.94e-4, Surface::Ice, 7.2}}) {
        std::mt19937_64 random(17);
        int inside = 0;
        constexpr int kRuns = 2000;
        for (int run = 0; run < kRuns; ++run) {
            const auto fitted =
                fitCoefficient(synthetic(random, 40, c.coefficient, c.bulb, 0.15, 3.0, c.most), c.bulb);
            ASSERT_TRUE(fitted.usable());
            inside += fitted.fit->slope.includes(c.coefficient) ? 1 : 0;
        }
        const double share = static_cast<double>(inside) / kRuns;
        EXPECT_GE(share, 0.93) << c.coefficient;
        EXPECT_LE(share, 0.97) << c.coefficient;
    }
}

TEST(FittedCoefficient, TheReferencesCommonUncertaintyIsCarried) {
    std::mt19937_64 random(4);
    auto pairs = synthetic(random, 60, 7.5e-4, Surface::Water, 0.0, 3.0, 9.0);
    const auto sharp = fitCoefficient(pairs, Surface::Water);
    const auto fitted = fitCoefficient(pairs, Surface::Water, 2.0);
    for (ComparedPair& pair : pairs) {
        pair.referenceHumidity += 2.0; // every reading off by the same: what the uncertainty speaks of
    }
    const auto shifted = fitCoefficient(pairs, Surface::Water);
    EXPECT_NEAR(fitted.fromReference, sharp.fit->slope.value - shifted.fit->slope.value, 1e-12);
    EXPECT_NEAR(fitted.relativeUncertainty, fitted.fromReference / fitted.fit->slope.value, 1e-6);
}

TEST(FittedCoefficient, ThinEvidenceIsRefusedWithTheReason) {
    std::mt19937_64 random(5);
    const auto enough = synthetic(random, 30, 7e-4, Surface::Water, 0.1, 3.0, 9.0);
    EXPECT_THAT(fitCoefficient(enough, Surface::Water).refused, IsEmpty());
    const auto few = synthetic(random, 29, 7e-4, Surface::Water, 0.1, 3.0, 9.0);
    EXPECT_THAT(fitCoefficient(few, Surface::Water).refused, ::testing::ElementsAre(ThinEvidence::TooFew));
    const auto damp =
        fitCoefficient(synthetic(random, 200, 7e-4, Surface::Water, 0.1, 0.5, 2.9), Surface::Water);
    EXPECT_THAT(damp.refused, ::testing::ElementsAre(ThinEvidence::TooFew, ThinEvidence::DepressionsSmall));
    EXPECT_EQ(damp.smallDepression, 200U);
    EXPECT_FALSE(damp.fit);
    const auto narrow = synthetic(random, 60, 7e-4, Surface::Water, 0.1, 4.0, 6.0);
    EXPECT_THAT(fitCoefficient(narrow, Surface::Water).refused,
                ::testing::ElementsAre(ThinEvidence::NarrowRange));
    const auto nonsense = synthetic(random, 60, -7e-4, Surface::Water, 0.1, 3.0, 9.0);
    EXPECT_THAT(fitCoefficient(nonsense, Surface::Water).refused,
                ::testing::ElementsAre(ThinEvidence::NotACoefficient));
}

TEST(FittedCoefficient, WaterAndIceStayApart) {
    std::mt19937_64 random(6);
    auto pairs = synthetic(random, 40, 7.2e-4, Surface::Water, 0.0, 3.0, 9.0);
    const auto ice = synthetic(random, 40, 6.1e-4, Surface::Ice, 0.0, 3.0, 6.5);
    pairs.insert(pairs.end(), ice.begin(), ice.end());
    EXPECT_NEAR(fitCoefficient(pairs, Surface::Water).fit->slope.value, 7.2e-4, 1e-12);
    EXPECT_NEAR(fitCoefficient(pairs, Surface::Ice).fit->slope.value, 6.1e-4, 1e-12);
    // Above 0 °C a wick that was not named is wet; below, nobody knows.
    for (ComparedPair& pair : pairs) {
        pair.own.wick = psychrometry::WickState::NotGiven;
    }
    EXPECT_EQ(fitCoefficient(pairs, Surface::Water).given, 40U);
    EXPECT_EQ(fitCoefficient(pairs, Surface::Ice).given, 0U);
}

TEST(FittedCoefficient, NothingGivenNothingFitted) {
    const auto fitted = fitCoefficient({}, Surface::Water);
    EXPECT_FALSE(fitted.fit);
    EXPECT_FALSE(fitted.usable());
    EXPECT_THAT(fitted.refused, Not(Contains(ThinEvidence::DepressionsSmall)));
}
