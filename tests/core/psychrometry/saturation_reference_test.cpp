// SPDX-License-Identifier: GPL-3.0-or-later
// Saturation vapour pressure against published tables and IAPWS (sources: tests/reference/README.md).
#include "tests/core/psychrometry/reference_tools.h"

using namespace wickbook::psychrometry;
using namespace wickbook::psychrometry::testing;
using wickbook::support::readReference;

// A row's tolerance ("abs .006", "rel 3e-4") is how exactly its own formula is printed; how far that formula
// stands from IAPWS is the row's diff_from_iapws_pct, and ours from IAPWS the stated formula error. Old
// United States tables are about 1 % low over warm water.
TEST(SaturationReference, PublishedTables) {
    Worst published("saturation_published.csv, hPa");
    Worst iapws("saturation_published.csv, relative to IAPWS");
    for (const auto& row : readReference("saturation_published.csv")) {
        const double expected = row.need("e_hpa");
        const double t = row.need("t_c");
        const Surface surface = surfaceOf(row.text("phase"));
        const std::string& tolerance = row.text("tolerance");
        ASSERT_TRUE(tolerance.starts_with("abs ") || tolerance.starts_with("rel ")) << row.where();
        const double size = std::stod(tolerance.substr(4)) * (tolerance.starts_with("abs") ? 1.0 : expected);
        const double difference = row.need("diff_from_iapws_pct") / 100.0;
        const double got = saturation(t, surface);
        published.see(got, expected, size + std::abs(difference) * expected, row.where());
        // The value undone by its known difference is IAPWS; half a unit of 0.001 % is the difference's
        // rounding.
        iapws.see(got / (expected / (1.0 + difference)) - 1.0, 0.0, formulaError(t, surface) + 5.5e-6,
                  row.where());
    }
    EXPECT_EQ(published.count(), 36);
}

namespace {

/// One column as the file prints it: six significant digits, so half a unit of the sixth.
double roundingOfSixDigits(double value) {
    return 0.5 * std::pow(10.0, std::floor(std::log10(value)) - 5.0) * 1.001;
}

void comparesWithFile(const std::string& name, Surface surface, int rows) {
    Worst reference(name + ", relative to IAPWS / Murphy-Koop");
    Worst sonntag(name + ", Sonntag column, hPa");
    Worst magnus(name + ", WMO Magnus column, hPa");
    for (const auto& row : readReference(name)) {
        const double t = row.need("t_c");
        const double got = saturation(t, surface);
        const double expected = row.need("e_ref_hpa");
        // Formula error as stated for the range, beside the reference's own rounding.
        reference.see(got / expected - 1.0, 0.0,
                      formulaError(t, surface) + roundingOfSixDigits(expected) / expected, row.where());
        const double asComputed = row.need("sonntag1990_hpa");
        sonntag.see(got, asComputed, roundingOfSixDigits(asComputed), row.where());
        const double asMagnus = row.need("wmo_magnus_hpa");
        magnus.see(magnusVapourPressure(celsius(t), surface).value().hectopascals(), asMagnus,
                   roundingOfSixDigits(asMagnus), row.where());
    }
    EXPECT_EQ(reference.count(), rows);
}

} // namespace

TEST(SaturationReference, OverWater) {
    comparesWithFile("svp_water.csv", Surface::Water, 101);
}

TEST(SaturationReference, OverIce) {
    comparesWithFile("svp_ice.csv", Surface::Ice, 52);
}

// The analytic slope against the difference of the same formula; h² e'''/6 is below 1e-8 of the slope.
TEST(Saturation, SlopeIsTheDerivative) {
    for (const Surface surface : {Surface::Water, Surface::Ice}) {
        for (double t = -59.5; t < (surface == Surface::Water ? 60.0 : 0.0); t += 0.5) {
            constexpr double h = 1e-3;
            const double difference = (saturation(t + h, surface) - saturation(t - h, surface)) / (2 * h);
            const double slope = saturationSlope(celsius(t), surface).value();
            EXPECT_NEAR(slope / difference, 1.0, 1e-7) << t;
        }
    }
}

// f(p) of WMO-No. 8, Annex 4.B: 1.0016 + 3.15e-6 × 1000 − 0.074 / 1000 = 1.004676.
TEST(Saturation, EnhancementFactor) {
    EXPECT_NEAR(enhancementFactor(hectopascals(1000)), 1.004676, 1e-12);
}

// Leaving f out of the inverse would give 20.08 °C for saturated air at 20 °C (f = 1.0047, e_w' / e_w =
// 0.062).
TEST(Saturation, DewPointUndoesTheEnhancement) {
    const double f = enhancementFactor(hectopascals(1013.25));
    const auto e = wickbook::units::VapourPressure::fromHectopascals(f * saturation(20, Surface::Water));
    EXPECT_NEAR(dewPoint(e, f)->celsius(), 20.0, 1e-9);
    EXPECT_NEAR(dewPoint(e)->celsius(), 20.08, 0.005);
}

TEST(Saturation, RangeEndsAreInRange) {
    for (const double f : {1.0, enhancementFactor(hectopascals(1013.25))}) {
        for (const double t : {-60.0, 60.0}) {
            const auto e =
                wickbook::units::VapourPressure::fromHectopascals(f * saturation(t, Surface::Water));
            EXPECT_NEAR(dewPoint(e, f).value().celsius(), t, 1e-9);
        }
        for (const double t : {-60.0, kTriplePointCelsius}) {
            const auto e = wickbook::units::VapourPressure::fromHectopascals(f * saturation(t, Surface::Ice));
            EXPECT_NEAR(frostPoint(e, f).value().celsius(), t, 1e-9);
        }
    }
}
