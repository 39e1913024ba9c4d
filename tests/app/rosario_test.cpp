// SPDX-License-Identifier: GPL-3.0-or-later
// A real manual register of the nineteenth century, slips left in, carried through the whole program: Rosario
// de Santa Fe 1886-1900, from the Copernicus C3S data-rescue collection. The file is not part of the project;
// without it this test is skipped.
#include "tests/app/program.h"
#include "tests/support/reference_csv.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <cmath>
#include <iostream>
#include <set>

using namespace wickbook::apptest;
using testing::HasSubstr;

namespace {

const std::string kRegister = std::string{WICKBOOK_DATASETS} + "/rosario_1886_1900_dry_wet_pressure.csv";

/// Magnus form of WMO-No. 8, Annex 4.B, hPa: not the formula the program computes with.
double saturation(double celsius) {
    return 6.112 * std::exp(17.62 * celsius / (243.12 + celsius));
}

/// What must be marked, worked out from the file alone. Times as the program prints them.
struct Expected {
    std::size_t lines = 0;
    std::set<std::string> incomplete;
    std::set<std::string> wetAboveDry;
    std::set<std::string> noVapour;
};

Expected expectedOf(const Table& source) {
    constexpr double kScreenCoefficient = 7.99e-4; // Sargent 1980
    Expected expected;
    for (const Row& row : source.rows) {
        ++expected.lines;
        std::string time = row.at("time_utc");
        time.insert(time.size() - 1, ":00");
        if (row.at("dry_bulb_C").empty() || row.at("wet_bulb_C").empty()) {
            expected.incomplete.insert(time);
            continue;
        }
        const double dry = std::stod(row.at("dry_bulb_C"));
        const double wet = std::stod(row.at("wet_bulb_C"));
        const double pressure =
            row.at("station_pressure_hPa").empty() ? 1009.0 : std::stod(row.at("station_pressure_hPa"));
        if (wet > dry + 1e-9) {
            expected.wetAboveDry.insert(time);
        } else if (saturation(wet) - kScreenCoefficient * pressure * (dry - wet) < -0.05) {
            expected.noVapour.insert(time);
        }
    }
    return expected;
}

class Rosario : public testing::Test {
protected:
    void SetUp() override {
        if (!std::filesystem::exists(kRegister)) {
            GTEST_SKIP() << "The Rosario register is not at " << kRegister << ": nothing was tried.";
        }
        expect({"new", "--book", book_, "--name", "Rosario", "--elevation", "35.7", "--latitude", "-32.95",
                "--longitude", "-60.65", "--zone", "America/Argentina/Cordoba", "--hours", "08:00,18:00",
                "--exposure", "screen"});
        expect({"period", "--book", book_, "--from", "1886-11-01", "--hours", "07:00,14:00,21:00"});
        expect({"period", "--book", book_, "--from", "1894-01-01", "--hours", "08:00,18:00"});
    }
    static Ran expect(const Arguments& arguments) {
        auto ran = run(arguments);
        EXPECT_EQ(ran.code, 0) << ran.err;
        return ran;
    }
    Folder folder_;
    std::string book_ = folder_.file("rosario.wickbook");
};

} // namespace

TEST_F(Rosario, GoesThroughTheWholeJob) {
    const auto imported =
        expect({"import", "--book", book_, "--in", kRegister, "--rejects", folder_.file("rejects.csv")});
    std::cout << imported.err;
    const Expected expected = expectedOf(table(contents(kRegister)));
    EXPECT_EQ(expected.lines, 7746U);
    EXPECT_EQ(expected.incomplete.size(), 18U); // as the collection's own account has it
    EXPECT_EQ(expected.wetAboveDry.size(), 46U);
    EXPECT_GE(expected.noVapour.size(), 8U);

    // Every line is in the book or explained.
    const auto rejects = table(contents(folder_.file("rejects.csv")));
    const auto kept = table(expect({"export", "--book", book_, "--out", "-"}).out);
    EXPECT_EQ(kept.rows.size() + rejects.rows.size(), expected.lines);
    EXPECT_EQ(rejects.rows.size(), 0U);
    EXPECT_THAT(imported.err, HasSubstr("Lines read: 7746. Imported: 7746, of these incomplete: 18."));
    std::map<std::string, int> hours;
    for (const Row& row : kept.rows) {
        ++hours[row.at("hour")];
        if (expected.incomplete.contains(row.at("time_utc"))) {
            EXPECT_EQ(row.at("relative_humidity_pct"), "");
        }
    }
    EXPECT_EQ(hours[""], 0) << "a reading outside the observing hours";
    EXPECT_EQ(hours.size(), 6U); // the five, and the empty one just asked for

    const auto checked = expect({"check", "--book", book_, "--format", "json"});
    std::cout << checked.err;
    std::map<std::string, std::set<std::string>> codesAt;
    for (const auto& finding : nlohmann::json::parse(checked.out)) {
        codesAt[finding.at("time_utc")].insert(finding.at("code"));
    }
    const auto marked = [&](const std::string& time, const char* code) {
        return codesAt[time].contains(code) || codesAt[time].contains("off-scale");
    };
    for (const std::string& time : expected.wetAboveDry) {
        EXPECT_TRUE(marked(time, "wet-above-dry")) << time;
    }
    for (const std::string& time : expected.noVapour) {
        EXPECT_TRUE(marked(time, "no-vapour")) << time;
    }
    for (const std::string& time : expected.incomplete) {
        EXPECT_TRUE(codesAt[time].contains("incomplete")) << time;
    }

    const auto reported =
        expect({"report", "--book", book_, "--month", "1887-07", "--out", folder_.file("july")});
    EXPECT_EQ(lines(reported.out).size(), 7U);
    const auto summary = table(contents(folder_.file("july/summary.csv")));
    ASSERT_EQ(summary.rows.size(), 4U); // three hours and all
    EXPECT_EQ(summary.rows[0].at("hour"), "07:00");
    EXPECT_EQ(summary.rows[0].at("expected"), "31");
    EXPECT_EQ(run({"verify", "--book", book_}).code, 0);
}
