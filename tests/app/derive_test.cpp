// SPDX-License-Identifier: GPL-3.0-or-later
// One pair on the command line.
#include "tests/app/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

using namespace wickbook::apptest;
using nlohmann::ordered_json;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

Arguments with(Arguments arguments, const Arguments& more) {
    arguments.insert(arguments.end(), more.begin(), more.end());
    return arguments;
}

ordered_json derived(const Arguments& arguments, int code = 0) {
    const auto ran = run(with(with({"derive"}, arguments), {"--format", "json"}));
    EXPECT_EQ(ran.code, code) << ran.err;
    EXPECT_EQ(ran.err, "");
    return ordered_json::parse(ran.out);
}

std::vector<std::string> codes(const ordered_json& result) {
    std::vector<std::string> found;
    for (const auto& finding : result.at("findings")) {
        found.push_back(finding.at("code"));
    }
    return found;
}

const std::vector<std::string> kColumns{"vapour_pressure_hpa",
                                        "relative_humidity_pct",
                                        "dew_point_c",
                                        "frost_point_c",
                                        "depression_c",
                                        "vapour_pressure_deficit_hpa",
                                        "absolute_humidity_g_m3",
                                        "mixing_ratio_g_kg",
                                        "pressure_hpa",
                                        "coefficient_per_k",
                                        "wick",
                                        "exposure",
                                        "relative_humidity_u95_pct",
                                        "dew_point_u95_c",
                                        "findings"};

/// What must be missing where nothing could be derived.
void expectNothingDerived(const ordered_json& result) {
    for (const char* key : {"vapour_pressure_hpa", "relative_humidity_pct", "dew_point_c", "frost_point_c",
                            "vapour_pressure_deficit_hpa", "absolute_humidity_g_m3", "mixing_ratio_g_kg",
                            "relative_humidity_u95_pct", "dew_point_u95_c"}) {
        EXPECT_TRUE(result.at(key).is_null()) << key << result.dump();
    }
}

} // namespace

// 23 °C / 16 °C whirled at 1013.25 hPa: 47.90 % (printed tables 48 %; common practice, no source), dew point
// 11.38 °C; in a louvred screen 44.54 %. The same numbers by hand from Sonntag 1990.
TEST(Derive, TheCheckPairInWords) {
    const auto ran = run({"derive", "--dry", "23", "--wet", "16", "--exposure", "whirled"});
    EXPECT_EQ(ran.code, 0);
    EXPECT_THAT(ran.out, HasSubstr("48 % (47.90) ± "));
    EXPECT_THAT(ran.out, HasSubstr("11.4 °C (11.38) ± "));
    EXPECT_EQ(ran.err, "");
    const auto screen = derived({"--dry", "23", "--wet", "16", "--exposure", "screen"});
    EXPECT_NEAR(screen.at("relative_humidity_pct").get<double>(), 44.54, 0.005);
}

TEST(Derive, JsonHasTheKeysInOrder) {
    const auto result = derived({"--dry", "23", "--wet", "16", "--exposure", "whirled"});
    std::vector<std::string> keys;
    for (const auto& item : result.items()) {
        keys.push_back(item.key());
    }
    EXPECT_EQ(keys, kColumns);
    EXPECT_NEAR(result.at("relative_humidity_pct").get<double>(), 47.90, 0.005);
    EXPECT_NEAR(result.at("dew_point_c").get<double>(), 11.38, 0.005);
    EXPECT_TRUE(result.at("frost_point_c").is_null());
    EXPECT_EQ(result.at("pressure_hpa"), 1013.25);
    EXPECT_EQ(result.at("coefficient_per_k"), 6.66e-4);
    EXPECT_EQ(result.at("wick"), "water");
    EXPECT_EQ(result.at("exposure"), "whirled");
    // "± 1.5 % whirled … or what your budget gives": with a coefficient of 4 % and half a tenth each.
    EXPECT_NEAR(result.at("relative_humidity_u95_pct").get<double>(), 1.5, 0.3);
    EXPECT_GT(result.at("dew_point_u95_c").get<double>(), 0.1);
    EXPECT_THAT(codes(result), ElementsAre("pressure-assumed"));
    EXPECT_EQ(result.at("findings")[0].at("severity"), "note");
    EXPECT_FALSE(result.at("findings")[0].at("message").get<std::string>().empty());
}

TEST(Derive, CsvIsHeaderAndRow) {
    const auto ran = run({"derive", "--dry", "31.4", "--wet", "24.9", "--exposure", "screen", "--pressure",
                          "998.6", "--format", "csv"});
    EXPECT_EQ(ran.code, 0);
    const auto answer = table(ran.out);
    EXPECT_EQ(answer.header, kColumns);
    ASSERT_EQ(answer.rows.size(), 1U);
    EXPECT_EQ(answer.rows[0].at("pressure_hpa"), "998.6");
    EXPECT_EQ(answer.rows[0].at("coefficient_per_k"), "0.000799");
    EXPECT_EQ(answer.rows[0].at("findings"), "");
    EXPECT_EQ(answer.rows[0].at("depression_c"), "6.500000");
}

TEST(Derive, WetAboveDryMakesNoNumberUp) {
    const Arguments pair{"--dry", "15", "--wet", "16", "--exposure", "whirled", "--pressure", "1000"};
    const auto result = derived(pair);
    EXPECT_THAT(codes(result), ElementsAre("wet-above-dry"));
    expectNothingDerived(result);
    EXPECT_EQ(result.at("depression_c"), -1.0); // subtraction, not derived
    EXPECT_EQ(result.at("pressure_hpa"), 1000.0);
    derived(with(pair, {"--strict"}), 1);
}

TEST(Derive, FrostWithoutTheWicksStateMakesNoNumberUp) {
    const Arguments pair{"--dry", "-2.5", "--wet", "-4", "--exposure", "screen", "--pressure", "1000"};
    const auto result = derived(pair);
    EXPECT_THAT(codes(result), ElementsAre("wick-state-unknown"));
    expectNothingDerived(result);
    EXPECT_EQ(result.at("depression_c"), 1.5);
    EXPECT_TRUE(result.at("wick").is_null());
    // With the state given the two answers differ, and each is one.
    const auto ice = derived(with(pair, {"--wick", "ice"}));
    const auto water = derived(with(pair, {"--wick", "water"}));
    EXPECT_GT(water.at("relative_humidity_pct").get<double>(), ice.at("relative_humidity_pct").get<double>());
    EXPECT_LT(ice.at("frost_point_c").get<double>(), 0.0);
    EXPECT_EQ(ice.at("wick"), "ice");
}

TEST(Derive, NumbersAsPeopleTypeThem) {
    const Arguments rest{"--exposure", "screen", "--wick", "ice", "--pressure", "1000"};
    const auto plain = derived(with({"--dry", "-3.5", "--wet", "-5.5"}, rest));
    EXPECT_EQ(plain, derived(with({"--dry=-3.5", "--wet=-5.5"}, rest)));
    EXPECT_EQ(plain, derived(with({"--dry", "−3,5", "--wet", "−5,5"}, rest)));
    EXPECT_EQ(plain.at("depression_c"), 2.0);
}

TEST(Derive, PressureFromElevation) {
    // ICAO Doc 7488: 794.95 hPa at 2000 m.
    const auto high = derived({"--dry", "18", "--wet", "12", "--exposure", "screen", "--elevation", "2000"});
    EXPECT_NEAR(high.at("pressure_hpa").get<double>(), 794.95, 0.05);
    EXPECT_TRUE(high.at("findings").empty());
}

TEST(Derive, ACoefficientByHandIsTheStationsOwn) {
    const auto own =
        derived({"--dry", "18", "--wet", "12", "--coefficient", "0.00071", "--pressure", "1000"});
    EXPECT_EQ(own.at("coefficient_per_k"), 0.00071);
    EXPECT_EQ(own.at("exposure"), "own");
    // f is 1 with a number given by hand, also under the name of an exposure that has one.
    const auto named = derived({"--dry", "18", "--wet", "12", "--coefficient", "0.00071", "--pressure",
                                "1000", "--exposure", "aspirated"});
    EXPECT_EQ(named.at("relative_humidity_pct"), own.at("relative_humidity_pct"));
    EXPECT_EQ(named.at("exposure"), "aspirated");
}

TEST(Derive, OutOfRangeIsAFinding) {
    const auto result = derived({"--dry", "75", "--wet", "20", "--exposure", "screen", "--pressure", "1000"});
    EXPECT_THAT(codes(result), ElementsAre("out-of-range"));
    expectNothingDerived(result);
}

TEST(Derive, CoarseScalesAreLessSure) {
    const Arguments pair{"--dry", "20", "--wet", "14", "--exposure", "whirled", "--pressure", "1013"};
    const auto coarse = derived(with(pair, {"--resolution", "1"}));
    const auto fine = derived(pair);
    // Half a whole degree on each bulb alone makes ± 5 % at 20/14 (computed); the coefficient adds a little.
    EXPECT_GT(coarse.at("relative_humidity_u95_pct").get<double>(), 5.0);
    EXPECT_LT(coarse.at("relative_humidity_u95_pct").get<double>(), 6.0);
    EXPECT_LT(fine.at("relative_humidity_u95_pct").get<double>(), 2.0);
}

TEST(Derive, WhatCannotBeUnderstoodIsRefused) {
    for (const Arguments& arguments : std::vector<Arguments>{
             {"--dry", "20", "--wet", "15"},
             {"--dry", "warm", "--wet", "15", "--exposure", "screen"},
             {"--dry", "1.234,5", "--wet", "15", "--exposure", "screen"},
             {"--dry", "20", "--exposure", "screen"},
             {"--dry", "20", "--wet", "15", "--exposure", "balcony"},
             {"--dry", "20", "--wet", "15", "--exposure", "own"},
             {"--dry", "20", "--wet", "15", "--exposure", "screen", "--wick", "damp"},
             {"--dry", "20", "--wet", "15", "--exposure", "screen", "--pressure", "1000", "--elevation", "5"},
             {"--dry", "20", "--wet", "15", "--exposure", "screen", "--elevation", "99999"},
             {"--dry", "20", "--wet", "15", "--exposure", "screen", "--coefficient", "0"},
             {"--dry", "20", "--wet", "15", "--exposure", "screen", "--resolution", "-1"},
             {"--dry", "20", "--wet", "15", "--exposure", "screen", "--format", "xml"},
             {"--dry", "20", "--wet", "15", "--exposure", "screen", "--in", "x.csv"},
         }) {
        const auto ran = run(with({"derive"}, arguments));
        EXPECT_EQ(ran.code, 2) << ran.err << ran.out;
        EXPECT_EQ(ran.out, "");
        EXPECT_EQ(lines(ran.err).size(), 1U) << ran.err;
    }
}

TEST(Derive, WorkingShowsTheNumbersAndTheBudget) {
    const auto ran = run({"derive", "--dry", "26.3", "--wet", "19.8", "--exposure", "whirled", "--pressure",
                          "1004.2", "--working"});
    EXPECT_EQ(ran.code, 0);
    // 0.000666 × 1004.2 × 6.50 = 4.347, taken from the saturation pressure at 19.8 °C.
    EXPECT_THAT(ran.out, HasSubstr("0.000666 × 1004.20 × 6.50"));
    EXPECT_THAT(ran.out, HasSubstr("e = f e_w(t_w) − A p (t − t_w)"));
    for (const char* line : {"dry ", "wet ", "coefficient ", "pressure "}) {
        EXPECT_THAT(ran.out, HasSubstr(std::string{"\n   "} + line));
    }
    EXPECT_THAT(ran.out, HasSubstr("k = 2"));
    // Where nothing can be derived the work says so and stops.
    const auto stopped = run({"derive", "--dry", "15", "--wet", "18", "--exposure", "whirled", "--working"});
    EXPECT_EQ(stopped.code, 0);
    EXPECT_THAT(stopped.out, HasSubstr("The work ends here"));
}
