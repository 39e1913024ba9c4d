// SPDX-License-Identifier: GPL-3.0-or-later
// Humidity from a pair against published tables and examples (sources: tests/reference/README.md).
#include "tests/core/psychrometry/reference_tools.h"

#include <array>
#include <utility>

using namespace wickbook::psychrometry;
using namespace wickbook::psychrometry::testing;
using wickbook::support::readReference;
using wickbook::support::ReferenceRow;

namespace {

/// "rh:1.0;e:0.06" → the tolerance of one quantity.
double toleranceOf(const ReferenceRow& row, const std::string& quantity) {
    const std::string text = ";" + row.text("tolerance");
    const auto at = text.find(";" + quantity + ":");
    if (at == std::string::npos) {
        throw std::runtime_error(row.where() + ": no tolerance for " + quantity);
    }
    return std::stod(text.substr(at + quantity.size() + 2));
}

/// "6.660e-04" or "6.530e-04*(1+0.000944*tw)".
double coefficientOf(const ReferenceRow& row, double wet) {
    const std::string& text = row.text("A_per_K");
    const auto factor = text.find("*(1+");
    const double first = std::stod(text.substr(0, factor));
    if (factor == std::string::npos) {
        return first;
    }
    if (!text.ends_with("*tw)")) {
        throw std::runtime_error(row.where() + ": " + text);
    }
    return first * (1.0 + std::stod(text.substr(factor + 4)) * wet);
}

/// The exposure where the row's name is one of ours, else the row's number by hand, for water and ice alike.
CoefficientRule ruleFor(const ReferenceRow& row, double wet) {
    CoefficientRule rule;
    if (const auto exposure = exposureOfReference(row.text("coefficient_name"))) {
        rule.exposure = *exposure;
        return rule;
    }
    rule.exposure = Exposure::Own;
    rule.perKelvin = coefficientOf(row, wet);
    return rule;
}

PairInput inputFrom(const ReferenceRow& row) {
    PairInput input;
    input.dry = celsius(row.need("dry_c"));
    input.wet = celsius(row.need("wet_c"));
    input.pressure = hectopascals(row.need("pressure_hpa"));
    const std::string& bulb = row.text("bulb");
    input.wick = bulb.empty() ? WickState::NotGiven : bulb == "ice" ? WickState::Ice : WickState::Water;
    return input;
}

} // namespace

// Tolerances are the file's, per quantity: table rounding, or the difference between an adiabatic wet bulb
// and an instrument's, or the old formula behind the table. A blank cell asserts nothing.
TEST(PsychrometerReference, PublishedChecks) {
    Worst humidity("psychrometer_checks.csv, RH %");
    Worst dew("psychrometer_checks.csv, dew point °C");
    Worst vapour("psychrometer_checks.csv, e hPa");
    Worst frost("psychrometer_checks.csv, frost point °C");
    int rows = 0;
    for (const auto& row : readReference("psychrometer_checks.csv")) {
        ++rows;
        PairInput input = inputFrom(row);
        input.coefficient = ruleFor(row, input.wet.celsius());
        const auto result = derive(input);
        ASSERT_FALSE(result.problem) << row.where();
        // The exposure's own digits must be those the file was made with.
        EXPECT_NEAR(result.coefficient->perKelvin, coefficientOf(row, input.wet.celsius()), 1e-12)
            << row.where();
        if (const auto expected = row.number("expected_rh_pct")) {
            humidity.see(result.relativeHumidity->percent(), *expected, toleranceOf(row, "rh"), row.where());
        }
        if (const auto expected = row.number("expected_dew_c")) {
            dew.see(result.dewPoint->celsius(), *expected, toleranceOf(row, "dew"), row.where());
        }
        if (const auto expected = row.number("expected_e_hpa")) {
            vapour.see(result.vapourPressure->hectopascals(), *expected, toleranceOf(row, "e"), row.where());
        }
        if (const auto expected = row.number("expected_frost_c")) {
            ASSERT_TRUE(result.frostPoint) << row.where();
            frost.see(result.frostPoint->celsius(), *expected, toleranceOf(row, "dew"), row.where());
        }
    }
    EXPECT_EQ(rows, 85);
}

// What the rules make of the awkward pairs. The plateau row is a matter for the checks; here it only has to
// be a reading for which the wick must be known.
TEST(PsychrometerReference, EdgeCases) {
    int seen = 0;
    for (const auto& row : readReference("edge_cases.csv")) {
        PairInput input = inputFrom(row);
        input.coefficient = ruleOfReference(row.text("coefficient_name"));
        const auto result = derive(input);
        const std::string& expected = row.text("expected");
        SCOPED_TRACE(row.where() + ": " + expected);
        ++seen;
        if (expected.starts_with("RH 100.0 dew 20.0")) {
            ASSERT_TRUE(result.relativeHumidity && result.dewPoint);
            EXPECT_NEAR(result.relativeHumidity->percent(), 100.0, 1e-9);
            EXPECT_NEAR(result.dewPoint->celsius(), 20.0, 1e-9);
        } else if (expected.starts_with("reject or flag wet>dry")) {
            EXPECT_EQ(result.problem, PsychrometryError::WetAboveDry);
        } else if (expected.starts_with("flag (ice bulb")) {
            EXPECT_EQ(result.problem, PsychrometryError::IceOverDry);
        } else if (expected.starts_with("accept (RH over water <=100)")) {
            ASSERT_TRUE(result.relativeHumidity);
            EXPECT_LE(result.relativeHumidity->percent(), 100.0);
            EXPECT_FALSE(result.takenAsSaturation);
        } else if (expected.starts_with("reject e<0")) {
            EXPECT_EQ(result.problem, PsychrometryError::NoVapour);
        } else if (expected.starts_with("flag plateau")) {
            EXPECT_TRUE(wickStateNeeded(input.wet, input.resolution, input.wetCorrection));
            EXPECT_TRUE(result.relativeHumidity);
        } else if (expected.starts_with("ask: water or ice")) {
            EXPECT_EQ(result.problem, PsychrometryError::WickStateUnknown);
            EXPECT_FALSE(result.vapourPressure || result.relativeHumidity || result.dewPoint ||
                         result.uncertainty);
            EXPECT_NEAR(result.depression.kelvins(), 2.5, 1e-12);
        } else {
            ADD_FAILURE() << "nothing tests this row";
        }
    }
    EXPECT_EQ(seen, 8);
}

// The bulb at 0, 5 and 10 %: half a unit of the printed 0.01 K, and the formula error carried to the bulb.
// Where the file has no ice bulb there must be none at or below 0 °C.
TEST(PsychrometerReference, LargestDepressions) {
    constexpr double kPrinted = 0.005;
    Worst water("max_depression.csv, water bulb °C");
    Worst ice("max_depression.csv, ice bulb °C");
    Worst depression("max_depression.csv, depression at 0 %");
    for (const auto& row : readReference("max_depression.csv")) {
        const auto rule = ruleOfReference(row.text("coefficient"));
        const double dry = row.need("dry_c");
        const double p = row.need("pressure_hpa");
        const double rh = row.need("rh_pct");
        for (const Surface bulb : {Surface::Water, Surface::Ice}) {
            const auto expected = row.number(bulb == Surface::Water ? "wet_c_water" : "ice_bulb_c");
            const auto got = wetBulbFor(celsius(dry), percent(rh), bulb, hectopascals(p), rule);
            if (!expected) {
                EXPECT_TRUE(!got || got->celsius() > -kPrinted) << row.where();
                continue;
            }
            ASSERT_TRUE(got) << row.where();
            const double ap = rule.at(bulb, *got, hectopascals(p))->perKelvin * p;
            const double allowed = kPrinted + carriedError(dry, got->celsius(), bulb, ap, rh).wetBulb;
            (bulb == Surface::Water ? water : ice).see(got->celsius(), *expected, allowed, row.where());
            if (rh == 0) {
                const auto most = largestDepression(celsius(dry), bulb, hectopascals(p), rule);
                depression.see(most->kelvins(),
                               row.need(bulb == Surface::Water ? "depression_water_k" : "depression_ice_k"),
                               allowed, row.where());
            }
        }
    }
    EXPECT_EQ(water.count(), 360);
    EXPECT_GT(ice.count(), 100);
}

// Depressions past which there is no vapour, A 6.62e-4 at 1013 hPa: 5.9 / 9.5 / 14.0 / 19.2 / 25.1 °C at
// 0 / 10 / 20 / 30 / 40 °C (computed; a limit is printed cut to the tenth below, so one printed unit).
TEST(Psychrometer, NoVapourLimits) {
    CoefficientRule rule;
    rule.exposure = Exposure::Own;
    rule.perKelvin = 6.62e-4;
    const std::array<std::pair<double, double>, 5> limits{
        {{0, 5.9}, {10, 9.5}, {20, 14.0}, {30, 19.2}, {40, 25.1}}};
    for (const auto& [dry, expected] : limits) {
        EXPECT_NEAR(largestDepression(celsius(dry), Surface::Water, hectopascals(1013), rule)->kelvins(),
                    expected, 0.1);
    }
}

// A wick can be ice up to e_i(0) / (A_i p): 10.2 (whirled), 8.4 (screen) at sea level, 12.9 and 10.6 at 800
// hPa (computed; half a printed unit).
TEST(Psychrometer, WarmestDryBulbForIce) {
    CoefficientRule whirled;
    CoefficientRule screen;
    screen.exposure = Exposure::Screen;
    EXPECT_NEAR(warmestDryBulbForIce(hectopascals(1013.25), whirled)->celsius(), 10.2, 0.051);
    EXPECT_NEAR(warmestDryBulbForIce(hectopascals(1013.25), screen)->celsius(), 8.4, 0.051);
    EXPECT_NEAR(warmestDryBulbForIce(hectopascals(800), whirled)->celsius(), 12.9, 0.051);
    EXPECT_NEAR(warmestDryBulbForIce(hectopascals(800), screen)->celsius(), 10.6, 0.051);
}
