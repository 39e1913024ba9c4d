// SPDX-License-Identifier: GPL-3.0-or-later
// Files of pairs.
#include "tests/app/program.h"
#include "tests/support/reference_csv.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

using namespace wickbook::apptest;
using testing::ElementsAre;
using testing::HasSubstr;
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

/// The file's older names; any other row gives its coefficient as a number (tests/reference/README.md).
std::string exposureOf(const std::string& name) {
    static const std::map<std::string, std::string> kNames{{"aspirated_666", "whirled"},
                                                           {"screen_799", "screen"},
                                                           {"wmo_assmann", "aspirated"},
                                                           {"us_sling", "sling-us"}};
    const auto found = kNames.find(name);
    return found == kNames.end() ? std::string{} : found->second;
}

/// "6.660e-04" or "6.530e-04*(1+0.000944*tw)", as plain decimals.
std::string coefficientOf(const ReferenceRow& row) {
    const std::string& text = row.text("A_per_K");
    const auto factor = text.find("*(1+");
    double value = std::stod(text.substr(0, factor));
    if (factor != std::string::npos) {
        value *= 1.0 + std::stod(text.substr(factor + 4)) * row.need("wet_c");
    }
    std::string digits = std::to_string(value * 1e6);
    digits.erase(digits.find('.'), 1); // 666000000 of 1e-12
    return "0." + std::string(12 - digits.size(), '0') + digits;
}

void expectNear(const ReferenceRow& row, const Row& got, const char* expected, const char* column,
                const char* quantity) {
    const auto value = row.number(expected);
    if (!value) {
        return;
    }
    ASSERT_NE(got.at(column), "") << row.where() << ": " << got.at("findings");
    EXPECT_LE(std::abs(std::stod(got.at(column)) - *value), toleranceOf(row, quantity) + 1e-9)
        << row.where() << " " << column << ": " << got.at(column) << ", expected " << *value;
}

} // namespace

// Sources are named in each row of the file.
TEST(DeriveFile, EveryPublishedCheckIsWithinItsTolerance) {
    const auto checks = readReference("psychrometer_checks.csv");
    ASSERT_EQ(checks.size(), 85U);
    std::string pairs = "row,wet_c,dry_c,pressure_hpa,wick,exposure,coefficient_per_k\n";
    for (std::size_t i = 0; i < checks.size(); ++i) {
        const ReferenceRow& row = checks[i];
        const std::string exposure = exposureOf(row.text("coefficient_name"));
        pairs += std::to_string(i) + "," + row.text("wet_c") + "," + row.text("dry_c") + "," +
                 row.text("pressure_hpa") + "," + row.text("bulb") + "," + exposure + "," +
                 (exposure.empty() ? coefficientOf(row) : "") + "\n";
    }
    const Folder folder;
    put(folder.file("pairs.csv"), pairs);
    const auto ran = run({"derive", "--in", folder.file("pairs.csv"), "--out", folder.file("out.csv")});
    ASSERT_EQ(ran.code, 0) << ran.err;
    EXPECT_EQ(ran.out, "");
    const auto answer = table(contents(folder.file("out.csv")));
    ASSERT_EQ(answer.rows.size(), checks.size());
    for (std::size_t i = 0; i < checks.size(); ++i) {
        EXPECT_EQ(answer.rows[i].at("row"), std::to_string(i));
        expectNear(checks[i], answer.rows[i], "expected_rh_pct", "relative_humidity_pct", "rh");
        expectNear(checks[i], answer.rows[i], "expected_dew_c", "dew_point_c", "dew");
        expectNear(checks[i], answer.rows[i], "expected_e_hpa", "vapour_pressure_hpa", "e");
        expectNear(checks[i], answer.rows[i], "expected_frost_c", "frost_point_c", "dew");
    }
}

TEST(DeriveFile, OwnColumnsStayAndTheFourAppearOnce) {
    const auto ran = run({"derive", "--in", "-", "--out", "-", "--exposure", "screen", "--elevation", "300"},
                         "station,wet_c,pressure_hpa,remark,dry_c\n"
                         "North,14.2,991.5,\"calm, clear\",19.0\n"
                         "South,−1.5,,\"she said \"\"frost\"\"\",0.3\n");
    ASSERT_EQ(ran.code, 0) << ran.err;
    const auto answer = table(ran.out);
    EXPECT_THAT(answer.header,
                ElementsAre("station", "wet_c", "pressure_hpa", "remark", "dry_c", "vapour_pressure_hpa",
                            "relative_humidity_pct", "dew_point_c", "frost_point_c", "depression_c",
                            "vapour_pressure_deficit_hpa", "absolute_humidity_g_m3", "mixing_ratio_g_kg",
                            "coefficient_per_k", "wick", "exposure", "relative_humidity_u95_pct",
                            "dew_point_u95_c", "findings"));
    ASSERT_EQ(answer.rows.size(), 2U);
    EXPECT_EQ(answer.rows[0].at("remark"), "calm, clear");
    EXPECT_EQ(answer.rows[0].at("pressure_hpa"), "991.5");
    EXPECT_EQ(answer.rows[0].at("wick"), "water");
    EXPECT_EQ(answer.rows[0].at("exposure"), "screen");
    EXPECT_NE(answer.rows[0].at("relative_humidity_pct"), "");
    // No number without the wick's state, and the row keeps its place and its text.
    EXPECT_EQ(answer.rows[1].at("wet_c"), "−1.5");
    EXPECT_EQ(answer.rows[1].at("remark"), "she said \"frost\"");
    EXPECT_EQ(answer.rows[1].at("relative_humidity_pct"), "");
    EXPECT_EQ(answer.rows[1].at("depression_c"), "1.800000");
    EXPECT_EQ(answer.rows[1].at("findings"), "wick-state-unknown");
    // ICAO Doc 7488: 977.73 hPa at 300 m.
    EXPECT_NEAR(std::stod(answer.rows[1].at("pressure_hpa")), 977.73, 0.05);
}

TEST(DeriveFile, BadCellsBecomeFindings) {
    const auto ran =
        run({"derive", "--in", "-", "--strict", "--pressure", "1000"}, "dry_c;wet_c;exposure;wick\n"
                                                                       "20,5;15,1;screen;\n"
                                                                       "warm;15;screen;\n"
                                                                       "20;;screen;\n"
                                                                       "20;15;balcony;\n"
                                                                       "20;15;;\n"
                                                                       "20;15;screen;damp\n"
                                                                       "20;15\n"
                                                                       "20;15;\"screen;\n"
                                                                       "21;15;whirled;\n");
    EXPECT_EQ(ran.code, 1) << ran.err;
    const auto answer = table(ran.out);
    ASSERT_EQ(answer.rows.size(), 9U) << ran.out;
    const std::vector<std::string> expected{"",           "bad-number",    "missing-value",
                                            "bad-word",   "missing-value", "bad-word",
                                            "ragged-row", "unreadable",    ""};
    for (std::size_t i = 0; i < expected.size(); ++i) {
        EXPECT_EQ(answer.rows[i].at("findings"), expected[i]) << i;
        EXPECT_EQ(answer.rows[i].at("relative_humidity_pct").empty(), !expected[i].empty()) << i;
    }
    EXPECT_EQ(answer.rows[1].at("dry_c"), "warm");
    EXPECT_THAT(ran.err, HasSubstr("line 8"));
}

TEST(DeriveFile, NoPressureIsAssumedAndSaid) {
    const auto ran = run({"derive", "--in", "-"}, "dry_c,wet_c,exposure\n20,15,screen\n");
    EXPECT_EQ(ran.code, 0);
    const auto answer = table(ran.out);
    ASSERT_EQ(answer.rows.size(), 1U);
    EXPECT_EQ(answer.rows[0].at("pressure_hpa"), "1013.25");
    EXPECT_EQ(answer.rows[0].at("findings"), "pressure-assumed");
}

TEST(DeriveFile, FilesThatCannotBeUnderstoodAreRefused) {
    const Folder folder;
    for (const char* text : {"", "20,15\n", "dry_c,dry_c,wet_c\n", "dry_c,wet_c\n20,15\n",
                             "dry_c,wet_c,exposure,relative_humidity_pct\n20,15,screen,50\n"}) {
        const auto ran = run({"derive", "--in", "-", "--out", folder.file("out.csv")}, text);
        EXPECT_EQ(ran.code, 2) << text;
        EXPECT_EQ(lines(ran.err).size(), 1U) << ran.err;
        EXPECT_FALSE(std::filesystem::exists(folder.file("out.csv")));
    }
    EXPECT_EQ(run({"derive", "--in", folder.file("absent.csv")}).code, 2);
    EXPECT_EQ(run({"derive", "--in", "-", "--out", folder.file("no/such/out.csv"), "--exposure", "screen"},
                  "dry_c,wet_c\n")
                  .code,
              3);
}

TEST(DeriveFile, AFileInTheWayIsReplacedWholeOrNotAtAll) {
    const Folder folder;
    put(folder.file("out.csv"), "what stood there\n");
    // A folder in place of the file it would rename over can't be written.
    EXPECT_EQ(run({"derive", "--in", "-", "--out", folder.file("out.csv")}, "nothing\n").code, 2);
    EXPECT_EQ(contents(folder.file("out.csv")), "what stood there\n");
    EXPECT_EQ(run({"derive", "--in", "-", "--out", folder.file("out.csv"), "--exposure", "still"},
                  "dry_c,wet_c\n20,15\n")
                  .code,
              0);
    EXPECT_EQ(table(contents(folder.file("out.csv"))).rows.size(), 1U);
    std::size_t files = 0;
    for ([[maybe_unused]] const auto& entry : std::filesystem::directory_iterator(folder.path())) {
        ++files;
    }
    EXPECT_EQ(files, 1U); // nothing left beside it
}
