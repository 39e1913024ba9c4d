// SPDX-License-Identifier: GPL-3.0-or-later
// The first-order budget against drawing every input at random (JCGM 101:2008): the whole chain, also near 0
// and 100 %, where first order fails and the interval shown must stay inside 0…100.
#include "tests/core/psychrometry/reference_tools.h"

#include <algorithm>
#include <random>

using namespace wickbook::psychrometry;
using namespace wickbook::psychrometry::testing;

namespace {

struct Case {
    const char* name;
    Exposure exposure;
    double dry;
    double humidity;
    Surface bulb;
    double step;
    UncertaintyInput input;
};

struct Drawn {
    double deviation = 0; ///< standard deviation of U, %
    double inside = 0;    ///< share of draws, cut to 0…100, within the interval shown
};

Drawn draw(const Case& c, double wet, double p, const CoefficientRule& rule,
           const UncertaintyBudget& budget) {
    constexpr int kDraws = 200'000;
    std::mt19937_64 random(1889);
    std::normal_distribution<double> normal;
    std::uniform_real_distribution<double> reading(-c.step / 2, c.step / 2);
    const double r = c.input.correctionCorrelation;
    const double relative = entryOf(c.exposure).relativeUncertainty;
    double sum = 0;
    double squares = 0;
    int inside = 0;
    for (int i = 0; i < kDraws; ++i) {
        const double z1 = normal(random);
        const double z2 = r * z1 + std::sqrt(1 - r * r) * normal(random);
        const double t = c.dry + reading(random) + c.input.dryCorrectionKelvins * z1;
        double w = wet + reading(random) + c.input.wetCorrectionKelvins * z2 +
                   c.input.ventilationKelvins * normal(random);
        const double drawnPressure = p + c.input.pressureHectopascals * normal(random);
        const auto k = rule.at(c.bulb, celsius(w), hectopascals(drawnPressure)).value();
        const double a = k.perKelvin * (1 + relative * normal(random));
        const double e = k.enhancement * saturation(w, c.bulb) - a * drawnPressure * (t - w);
        const double u = 100 * e / (k.enhancement * saturation(t, Surface::Water));
        sum += u;
        squares += u * u;
        const double cut = std::clamp(u, 0.0, 100.0);
        inside += cut >= budget.lowestHumidity && cut <= budget.highestHumidity ? 1 : 0;
    }
    const double mean = sum / kDraws;
    return {std::sqrt(squares / kDraws - mean * mean), static_cast<double>(inside) / kDraws};
}

} // namespace

TEST(MonteCarlo, AgreesWithFirstOrder) {
    const UncertaintyInput plain;
    const UncertaintyInput corrected{0.1, 0.1, 0.0, 0.05, 1.0};
    const UncertaintyInput common{0.3, 0.3, 0.9, 0.05, 10.0};
    const std::vector<Case> cases{
        {"whirled 23/16", Exposure::Whirled, 23, 47.9, Surface::Water, 0.1, plain},
        {"screen 23/16", Exposure::Screen, 23, 44.5, Surface::Water, 0.1, corrected},
        {"aspirated, common error", Exposure::Aspirated, 10, 70, Surface::Water, 0.2, common},
        {"sling, opposite errors",
         Exposure::SlingUs,
         30,
         20,
         Surface::Water,
         0.5,
         {0.2, 0.2, -0.5, 0.1, 1.0}},
        {"ice", Exposure::Whirled, -5, 60, Surface::Ice, 0.1, corrected},
        {"near 0 %", Exposure::Screen, 35, 1, Surface::Water, 0.1, corrected},
        {"near 100 %", Exposure::Whirled, 5, 99.5, Surface::Water, 0.1, corrected},
        {"at 100 %", Exposure::Aspirated, 5, 100, Surface::Water, 1.0, corrected},
        {"ice near 100 %", Exposure::Aspirated, -10, 99.9, Surface::Ice, 0.1, corrected},
    };
    Worst worst("Monte Carlo, u(RH) relative to first order");
    for (const Case& c : cases) {
        SCOPED_TRACE(c.name);
        CoefficientRule rule;
        rule.exposure = c.exposure;
        constexpr double kPressure = 990;
        const double w =
            wetBulbFor(celsius(c.dry), percent(c.humidity), c.bulb, hectopascals(kPressure), rule)
                .value()
                .celsius();
        const auto budget = uncertaintyBudget(celsius(c.dry), celsius(w), c.bulb, hectopascals(kPressure),
                                              rule, c.step, c.input)
                                .value();
        const Drawn drawn = draw(c, w, kPressure, rule, budget);
        // 200 000 draws know a standard deviation to 0.16 %; second order adds up to about 1 % at ± 0.5 K.
        worst.see(drawn.deviation / (budget.relativeHumidityU95 / 2), 1.0, 0.02, c.name);
        EXPECT_GE(budget.lowestHumidity, 0.0);
        EXPECT_LE(budget.highestHumidity, 100.0);
        EXPECT_LE(budget.lowestHumidity, c.humidity);
        EXPECT_GE(budget.highestHumidity, std::min(c.humidity, 100.0) - 1e-9);
        // k = 2 of a nearly normal distribution holds 95.4 %; cutting both alike can only add. A rectangular
        // part adds, too.
        EXPECT_GT(drawn.inside, 0.945);
    }
}
