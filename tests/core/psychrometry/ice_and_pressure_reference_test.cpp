// SPDX-License-Identifier: GPL-3.0-or-later
// Ice and water bulbs, the freezing halt and the cost of a wrong pressure, against values computed from IAPWS
// saturation pressures with the named coefficients (sources: tests/reference/README.md).
#include "core/psychrometry/standard_atmosphere.h"
#include "tests/core/psychrometry/reference_tools.h"

using namespace wickbook::psychrometry;
using namespace wickbook::psychrometry::testing;
using wickbook::support::readReference;

namespace {

constexpr double kSeaLevel = 1013.25;

double perKelvinTimesPressure(const CoefficientRule& rule, Surface bulb, double wet, double p) {
    return rule.at(bulb, celsius(wet), hectopascals(p))->perKelvin * p;
}

} // namespace

// Printed to 0.1 % and 0.01 °C; formula error carried through.
TEST(IceReference, IceBulbTakenForWater) {
    Worst humidity("ice_vs_water.csv, RH %");
    Worst dew("ice_vs_water.csv, dew point °C");
    Worst excess("ice_vs_water.csv, RH excess %");
    for (const auto& row : readReference("ice_vs_water.csv")) {
        PairInput input;
        input.coefficient = ruleOfReference(row.text("coefficient"));
        const double wet = row.need("wet_reading_c");
        const double dry = row.need("dry_c");
        input.dry = celsius(dry);
        input.wet = celsius(wet);
        double rh[2] = {0, 0};
        double allowedExcess = 0.051; // half a printed unit, and the sum's last binary digit
        for (const Surface bulb : {Surface::Ice, Surface::Water}) {
            const bool isIce = bulb == Surface::Ice;
            input.wick = isIce ? WickState::Ice : WickState::Water;
            const auto result = derive(input);
            ASSERT_TRUE(result.relativeHumidity && result.dewPoint) << row.where();
            const double u = result.relativeHumidity->percent();
            rh[isIce ? 0 : 1] = u;
            const auto carried = carriedError(
                dry, wet, bulb, perKelvinTimesPressure(input.coefficient, bulb, wet, kSeaLevel), u);
            humidity.see(u, row.need(isIce ? "rh_if_ice_pct" : "rh_if_supercooled_water_pct"),
                         0.051 + carried.humidity, row.where());
            dew.see(result.dewPoint->celsius(), row.need(isIce ? "dew_if_ice_c" : "dew_if_water_c"),
                    0.0051 + carried.dewPoint, row.where());
            allowedExcess += carried.humidity;
        }
        excess.see(rh[1] - rh[0], row.need("rh_excess_if_ice_treated_as_water"), allowedExcess, row.where());
    }
    EXPECT_EQ(humidity.count(), 2 * 116);
}

// Printed to 0.001 K.
TEST(IceReference, BothBulbsInTheSameAir) {
    Worst worst("same_air_ice_and_water_bulb.csv, °C");
    for (const auto& row : readReference("same_air_ice_and_water_bulb.csv")) {
        const auto rule = ruleOfReference(row.text("coefficient"));
        const double dry = row.need("dry_c");
        const double rh = row.need("rh_water_pct");
        for (const Surface bulb : {Surface::Water, Surface::Ice}) {
            const auto wet = wetBulbFor(celsius(dry), percent(rh), bulb, hectopascals(kSeaLevel), rule);
            ASSERT_TRUE(wet) << row.where();
            const double ap = perKelvinTimesPressure(rule, bulb, wet->celsius(), kSeaLevel);
            worst.see(wet->celsius(),
                      row.need(bulb == Surface::Water ? "wet_bulb_supercooled_c" : "ice_bulb_c"),
                      0.00051 + carriedError(dry, wet->celsius(), bulb, ap, rh).wetBulb, row.where());
        }
    }
    EXPECT_EQ(worst.count(), 2 * 72);
}

// The bulb is stuck at 0.0 while the air is as the row says: what the equation would then give. Printed to
// 0.01 °C and 0.1 %.
TEST(IceReference, FreezingHalt) {
    Worst bulb("freezing_plateau.csv, ice bulb °C");
    Worst humidity("freezing_plateau.csv, RH read at the halt %");
    for (const auto& row : readReference("freezing_plateau.csv")) {
        const auto rule = ruleOfReference(row.text("coefficient"));
        const double dry = row.need("dry_c");
        const double rh = row.need("true_rh_pct");
        const auto wet = wetBulbFor(celsius(dry), percent(rh), Surface::Ice, hectopascals(kSeaLevel), rule);
        ASSERT_TRUE(wet) << row.where();
        const double ap = perKelvinTimesPressure(rule, Surface::Ice, wet->celsius(), kSeaLevel);
        bulb.see(wet->celsius(), row.need("equilibrium_ice_bulb_c"),
                 0.0051 + carriedError(dry, wet->celsius(), Surface::Ice, ap, rh).wetBulb, row.where());
        const double atHalt = bareHumidity(dry, 0.0, Surface::Ice, kSeaLevel, rule);
        const double expected = row.need("rh_if_read_at_0.0_plateau");
        humidity.see(atHalt, expected, 0.051 + carriedError(dry, 0.0, Surface::Ice, ap, atHalt).humidity,
                     row.where());
        EXPECT_NEAR(expected - rh, row.need("rh_error"), 0.051) << row.where();
    }
    EXPECT_EQ(humidity.count(), 126);
}

// The cost of taking sea-level pressure at an elevated place. Printed to 0.001 °C, 0.01 % and 0.01 K; heights
// give the pressure of the ICAO standard atmosphere, printed to 0.01 hPa.
TEST(PressureReference, SeaLevelPressureAtHeight) {
    Worst pressure("pressure_effect.csv, hPa");
    Worst bulb("pressure_effect.csv, wet bulb °C");
    Worst humidity("pressure_effect.csv, RH error %");
    Worst dew("pressure_effect.csv, dew point error K");
    for (const auto& row : readReference("pressure_effect.csv")) {
        const auto rule = ruleOfReference(row.text("coefficient"));
        const auto p = standardPressure(wickbook::units::Elevation::fromMetres(row.need("height_m")));
        ASSERT_TRUE(p) << row.where();
        const double printed = row.need("icao_pressure_hpa");
        // The formula's own digits: half a unit of the last one of 5.25588 and of 2.25577e-5.
        const double h = row.need("height_m");
        const double digits =
            printed * (5e-6 * std::log(kSeaLevel / printed) + 5.25588 * 5e-11 * h / (1.0 - 2.25577e-5 * h));
        pressure.see(p->hectopascals(), printed, 0.005 + digits, row.where());
        const double dry = row.need("dry_c");
        const double rh = row.need("true_rh_pct");
        const auto wet = wetBulbFor(celsius(dry), percent(rh), Surface::Water, *p, rule);
        ASSERT_TRUE(wet) << row.where();
        const double ap = perKelvinTimesPressure(rule, Surface::Water, wet->celsius(), p->hectopascals());
        const auto carried = carriedError(dry, wet->celsius(), Surface::Water, ap, rh);
        bulb.see(wet->celsius(), row.need("wet_c"), 0.00051 + carried.wetBulb, row.where());

        const double assumed = bareHumidity(dry, wet->celsius(), Surface::Water, kSeaLevel, rule);
        // ΔU = −100 A Δp d / e_w(t): only the bulb's and e_w's errors enter.
        const double share =
            100.0 * ap * (kSeaLevel / p->hectopascals() - 1.0) / saturation(dry, Surface::Water);
        const double expected = row.need("rh_error_if_1013.25_assumed");
        const double humidityAllowed =
            0.0051 + share * carried.wetBulb + std::abs(expected) * formulaError(dry, Surface::Water);
        humidity.see(assumed - rh, expected, humidityAllowed, row.where());

        const auto expectedDew = row.number("dew_error_k");
        const auto vapourAt = [&](double u) { return vapourPressureOf(percent(u), celsius(dry)).value(); };
        const auto trueDew = dewPoint(vapourAt(rh));
        const auto assumedDew =
            assumed > 0 ? dewPoint(vapourAt(assumed)) : tl::unexpected(PsychrometryError::NoVapour);
        ASSERT_EQ(expectedDew.has_value(), assumedDew.has_value()) << row.where();
        if (expectedDew) {
            // Each dew point with its own formula error, the assumed one also with that of its humidity.
            const double slope = saturationSlope(*assumedDew, Surface::Water).value();
            const auto own = [](wickbook::units::Temperature t) {
                return formulaError(t.celsius(), Surface::Water) * saturation(t.celsius(), Surface::Water) /
                       saturationSlope(t, Surface::Water).value();
            };
            const double fromHumidity =
                (humidityAllowed - 0.0051) / 100.0 * saturation(dry, Surface::Water) / slope;
            dew.see((*assumedDew - *trueDew).kelvins(), *expectedDew,
                    0.0051 + own(*assumedDew) + own(*trueDew) + fromHumidity, row.where());
        }
    }
    EXPECT_EQ(humidity.count(), 182);
}
