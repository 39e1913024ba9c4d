// SPDX-License-Identifier: GPL-3.0-or-later
// What a pair tells by itself, held against the published and computed tables under tests/reference (sources
// in the README there).
#include "tests/core/checks/checks_support.h"
#include "tests/support/reference_csv.h"

#include <cmath>

namespace wickbook::checks::test {

namespace {

using support::ReferenceRow;

Exposure exposureOf(const std::string& name) {
    if (name == "aspirated_666") {
        return Exposure::Whirled;
    }
    if (name == "screen_799") {
        return Exposure::Screen;
    }
    if (name == "us_sling") {
        return Exposure::SlingUs;
    }
    EXPECT_EQ(name, "wmo_assmann");
    return Exposure::Aspirated;
}

std::vector<Finding> checkOf(double dry, double wet, WickState wick, const std::string& coefficient,
                             double step = 0.1) {
    psychrometry::PairInput input;
    input.dry = units::Temperature::fromCelsius(dry);
    input.wet = units::Temperature::fromCelsius(wet);
    input.wick = wick;
    input.coefficient.exposure = exposureOf(coefficient);
    input.resolution = units::TemperatureDifference::fromKelvins(step);
    return checkPair(input, psychrometry::derive(input));
}

} // namespace

TEST(PairReference, AwkwardPairsGetTheFindingTheyDeserve) {
    // The file says in words what must be made of each pair; here is the code for those words.
    const std::vector<std::pair<std::string, std::string>> expectedCodes{
        {"RH 100.0 dew 20.0", ""},
        {"reject or flag wet>dry", "wet-above-dry"},
        {"flag (ice bulb may exceed dry by a few tenths in fog; see same_air file)", "ice-over-dry"},
        {"accept (RH over water <=100)", ""},
        {"reject e<0", "no-vapour"},
        {"reject e<0 (dry above 10.2 C cannot hold ice bulb)", "no-vapour"},
        {"flag plateau when dry below 0 or frost in the last readings",
         ""}, // a pair alone at dry 3 can't tell
        {"ask: water or ice", "wick-state-unknown"}};
    std::size_t matched = 0;
    for (const ReferenceRow& row : support::readReference("edge_cases.csv")) {
        const WickState wick = record::wickFromName(row.text("bulb")).value_or(WickState::NotGiven);
        const auto findings =
            checkOf(row.need("dry_c"), row.need("wet_c"), wick, row.text("coefficient_name"));
        const auto expected =
            std::find_if(expectedCodes.begin(), expectedCodes.end(),
                         [&](const auto& entry) { return entry.first == row.text("expected"); });
        ASSERT_NE(expected, expectedCodes.end()) << row.where();
        ++matched;
        if (row.text("reason") == "freezing plateau suspicion") {
            // As the file asks: with frost in the last readings it is flagged.
            Page page{{50, 0, exposureOf(row.text("coefficient_name")), {1, 1}}};
            page.write("2025-01-10T07:00Z", "-4.0", "-4.9", {.wick = WickState::Ice});
            page.write("2025-01-10T14:00Z", units::fixedText(row.need("dry_c"), 1),
                       units::fixedText(row.need("wet_c"), 1), {.wick = wick});
            EXPECT_TRUE(has(page.last(), "freezing-halt")) << row.where() << ": " << codes(page.last());
        }
        if (expected->second.empty()) {
            EXPECT_TRUE(findings.empty()) << row.where() << ": " << codes(findings);
        } else {
            ASSERT_TRUE(has(findings, expected->second)) << row.where() << ": " << codes(findings);
            EXPECT_TRUE(setsAside(find(findings, expected->second)->severity)) << row.where();
        }
    }
    EXPECT_EQ(matched, 8U);
}

TEST(PairReference, ABulbHeldAtZeroIsSuspectedWhereThePairCanTell) {
    int told = 0;
    for (const ReferenceRow& row : support::readReference("freezing_plateau.csv")) {
        const double dry = row.need("dry_c");
        const auto findings = checkOf(dry, 0.0, WickState::Ice, row.text("coefficient"));
        // Below 0 the pair gives more than 100 %; at and above 0 it needs the readings before it.
        EXPECT_EQ(has(findings, "freezing-halt"), dry < 0) << row.where() << ": " << codes(findings);
        EXPECT_EQ(row.need("rh_if_read_at_0.0_plateau") > 100.0, dry < 0) << row.where();
        told += dry < 0 ? 1 : 0;
        // With frost in the last readings the same bulb is suspected at every dry bulb of the table.
        Page page{{50, 0, exposureOf(row.text("coefficient")), {1, 1}}};
        page.write("2025-01-10T07:00Z", "-4.0", "-4.9", {.wick = WickState::Ice});
        page.write("2025-01-10T14:00Z", units::fixedText(dry, 1), "0.0", {.wick = WickState::Ice});
        EXPECT_TRUE(has(page.last(), "freezing-halt")) << row.where() << ": " << codes(page.last());
    }
    EXPECT_GE(told, 50);
}

TEST(PairReference, IceReadAsWaterSpeaksWhereItCostsMoreThanFivePercent) {
    std::size_t spoken = 0;
    for (const ReferenceRow& row : support::readReference("ice_vs_water.csv")) {
        const double wet = row.need("wet_reading_c");
        const double excess = row.need("rh_excess_if_ice_treated_as_water");
        if (std::abs(std::abs(excess) - 5.0) < 0.11) {
            continue; // the table is rounded to a tenth: on the edge it can't decide
        }
        const auto findings = checkOf(row.need("dry_c"), wet, WickState::Water, row.text("coefficient"));
        const Finding* finding = find(findings, "frozen-read-as-water");
        EXPECT_EQ(finding != nullptr, std::abs(excess) > 5.0 && wet < -2.0)
            << row.where() << ": " << codes(findings);
        if (finding != nullptr) {
            ++spoken;
            EXPECT_EQ(finding->severity, Severity::Soft);
            EXPECT_NEAR(*finding->number("difference"), excess, 0.15) << row.where();
            EXPECT_NEAR(*finding->number("humidity-ice"), row.need("rh_if_ice_pct"), 0.1) << row.where();
        }
    }
    EXPECT_GE(spoken, 20U);
}

TEST(PairReference, AnIceBulbInFogMayStandAboveTheDryBulb) {
    int above = 0;
    for (const ReferenceRow& row : support::readReference("same_air_ice_and_water_bulb.csv")) {
        const double dry = row.need("dry_c");
        const auto ice = checkOf(dry, row.need("ice_bulb_c"), WickState::Ice, row.text("coefficient"));
        const auto water =
            checkOf(dry, row.need("wet_bulb_supercooled_c"), WickState::Water, row.text("coefficient"));
        for (const auto& findings : {ice, water}) {
            EXPECT_TRUE(std::none_of(findings.begin(), findings.end(),
                                     [](const Finding& f) { return setsAside(f.severity); }))
                << row.where() << ": " << codes(findings);
        }
        above += row.need("ice_minus_dry_k") > 0 ? 1 : 0;
        // Half a degree above what 100 % allows is no fog.
        if (row.need("rh_water_pct") == 100.0) {
            const auto tooHigh =
                checkOf(dry, row.need("ice_bulb_c") + 0.5, WickState::Ice, row.text("coefficient"));
            EXPECT_TRUE(has(tooHigh, "ice-over-dry") || has(tooHigh, "freezing-halt")) << row.where();
        }
    }
    EXPECT_GE(above, 12);
}

TEST(PairReference, PastTheLargestDepressionThereIsNoVapour) {
    // Design figures, computed: A 6.62e-4, 1013 hPa: 5.9 / 9.5 / 14.0 / 19.2 / 25.1 K at 0 / 10 / 20 / 30 /
    // 40 °C.
    const std::vector<std::pair<double, double>> limits{
        {0, 5.9}, {10, 9.5}, {20, 14.0}, {30, 19.2}, {40, 25.1}};
    for (const auto& [dry, depression] : limits) {
        for (const double off : {-0.2, 0.2}) {
            psychrometry::PairInput input;
            input.dry = units::Temperature::fromCelsius(dry);
            input.wet = units::Temperature::fromCelsius(dry - depression - off);
            input.wick = WickState::Water;
            input.pressure = units::Pressure::fromHectopascals(1013);
            input.coefficient.perKelvin = 6.62e-4;
            const auto findings = checkPair(input, psychrometry::derive(input));
            EXPECT_EQ(has(findings, "no-vapour"), off > 0) << dry << ' ' << off << codes(findings);
            if (off > 0) {
                EXPECT_EQ(severityOf(findings, "no-vapour"), Severity::Impossible);
                EXPECT_NEAR(find(findings, "no-vapour")->number("limit").value_or(0), depression, 0.1);
            } else {
                EXPECT_EQ(severityOf(findings, "very-dry"), Severity::Soft) << dry;
            }
        }
    }
}

TEST(PairReference, WhatTheDerivationReports) {
    // Ranges: the program's own promise (psychrometry/saturation.h).
    EXPECT_EQ(severityOf(checkOf(61, 20, WickState::Water, "aspirated_666"), "out-of-range"),
              Severity::Doubtful);
    EXPECT_EQ(severityOf(checkOf(3, 1.5, WickState::Ice, "aspirated_666"), "ice-above-zero"),
              Severity::Doubtful);
    EXPECT_EQ(severityOf(checkOf(-24, -24.2, WickState::Water, "aspirated_666"), "extrapolated"),
              Severity::Note);
    EXPECT_EQ(severityOf(checkOf(-30, -30.58, WickState::Ice, "aspirated_666"), "dew-point-below-range"),
              Severity::Note);

    psychrometry::PairInput own;
    own.dry = units::Temperature::fromCelsius(20);
    own.wet = units::Temperature::fromCelsius(15);
    own.coefficient.exposure = Exposure::Own;
    EXPECT_TRUE(has(checkPair(own, psychrometry::derive(own)), "coefficient-missing"));

    own.coefficient.exposure = Exposure::Whirled;
    own.pressure = units::Pressure::fromHectopascals(250);
    const auto pressure = checkPair(own, psychrometry::derive(own));
    ASSERT_TRUE(has(pressure, "out-of-range"));
    EXPECT_EQ(find(pressure, "out-of-range")->word("what"), "pressure");
}

TEST(PairReference, WetAboveDryIsJudgedByTheScaleStep) {
    // Up to max(0.2 K, one step) reading error, noted; above doubtful: common practice, no source.
    EXPECT_EQ(severityOf(checkOf(20, 20.2, WickState::NotGiven, "screen_799"), "wet-above-dry"),
              Severity::Note);
    EXPECT_EQ(severityOf(checkOf(20, 20.3, WickState::NotGiven, "screen_799"), "wet-above-dry"),
              Severity::Doubtful);
    EXPECT_EQ(severityOf(checkOf(20, 21, WickState::NotGiven, "screen_799", 1.0), "wet-above-dry"),
              Severity::Note);
    EXPECT_EQ(severityOf(checkOf(20, 20.5, WickState::NotGiven, "screen_799", 0.5), "wet-above-dry"),
              Severity::Note);
    EXPECT_EQ(severityOf(checkOf(20, 22, WickState::NotGiven, "screen_799", 1.0), "wet-above-dry"),
              Severity::Doubtful);
    // Below zero without the wick's state: an ice bulb may stand above, so only the question is asked;
    // what not even ice explains is said too.
    EXPECT_EQ(codes(checkOf(-10, -9.7, WickState::NotGiven, "wmo_assmann")), "wick-state-unknown ");
    EXPECT_TRUE(has(checkOf(-10, -8, WickState::NotGiven, "wmo_assmann"), "wet-above-dry"));
}

} // namespace wickbook::checks::test
