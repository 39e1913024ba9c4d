// SPDX-License-Identifier: GPL-3.0-or-later
// Members' months side by side, made by the program itself and held against each member's own summary.csv.
#include "tests/app/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>
#include <fstream>

using namespace wickbook::apptest;
using ::testing::HasSubstr;

namespace {

class Club : public ::testing::Test {
protected:
    /// A member with readings on the days from first to last of March 2025 at each hour; the folder of the
    /// month.
    std::string member(const std::string& name, const std::string& exposure, const std::string& hours,
                       const std::string& unit, int first, int last) {
        const std::string book = folder_.file(name + ".wickbook");
        auto ran = run({"new", "--book", book, "--name", name, "--elevation", "120", "--latitude", "51",
                        "--longitude", "0", "--zone", "UTC", "--hours", hours, "--exposure", exposure,
                        "--unit", unit});
        EXPECT_EQ(ran.code, 0) << ran.err;
        std::string rows = "time,dry,wet\n";
        for (int day = first; day <= last; ++day) {
            for (std::size_t at = 0; at < hours.size(); at += 6) {
                const double wobble = 0.1 * day;
                const double dry = unit == "f" ? 50 + wobble : 10 + wobble;
                rows += "2025-03-" + std::string(day < 10 ? "0" : "") + std::to_string(day) + "T" +
                        hours.substr(at, 5) + "," + std::to_string(dry).substr(0, 4) + "," +
                        std::to_string(dry - 1.5).substr(0, 4) + "\n";
            }
        }
        ran = run({"import", "--book", book, "--in", "-", "--unit", unit}, rows);
        EXPECT_EQ(ran.code, 0) << ran.err;
        const std::string out = folder_.file(name);
        ran = run({"report", "--book", book, "--month", "2025-03", "--out", out});
        EXPECT_EQ(ran.code, 0) << ran.err;
        return out;
    }
    void expectAsSummary(const Row& line, const std::string& folder) const {
        for (const Row& own : table(contents(folder + "/summary.csv")).rows) {
            if (own.at("hour") != line.at("hour")) {
                continue;
            }
            EXPECT_EQ(line.at("n"), own.at("n"));
            EXPECT_EQ(line.at("mean_withheld_because"), own.at("mean_withheld_because"));
            for (const char* column : {"mean_relative_humidity_pct", "mean_vapour_pressure_hpa",
                                       "dew_point_of_mean_vapour_pressure_c", "highest_relative_humidity_pct",
                                       "lowest_relative_humidity_pct"}) {
                ASSERT_EQ(line.at(column).empty(), own.at(column).empty()) << column;
                if (!line.at(column).empty()) {
                    // Cells have six decimals; means of them differ in the last.
                    EXPECT_NEAR(std::stod(line.at(column)), std::stod(own.at(column)), 2e-6) << column;
                }
            }
            return;
        }
        ADD_FAILURE() << line.at("hour") << " is not in " << folder;
    }

    Folder folder_;
};

TEST_F(Club, StandsSideBySideAndIsNotRanked) {
    const std::string rose = member("Rose Hill", "screen", "09:00,21:00", "c", 1, 31);
    const std::string alder = member("Alder", "screen", "08:00", "f", 1, 31);
    const std::string whirl = member("Whirl", "whirled", "09:00", "c", 1, 15); // too few for a mean
    const std::string out = folder_.file("club.csv");
    auto ran = run({"report", "--club", rose, "--club", whirl + "/month.csv", "--club", alder, "--out", out});
    ASSERT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.err, HasSubstr("Stations side by side: 3."));
    const auto rows = table(contents(out)).rows;
    ASSERT_EQ(rows.size(), 4U);
    std::vector<std::string> order;
    for (const Row& row : rows) {
        order.push_back(row.at("exposure") + " " + row.at("station") + " " + row.at("hour"));
        EXPECT_EQ(row.at("month"), "2025-03");
        EXPECT_EQ(row.at("elevation_m").substr(0, 3), "120");
    }
    EXPECT_THAT(order, ::testing::ElementsAre("screen Alder 08:00", "screen Rose Hill 09:00",
                                              "screen Rose Hill 21:00", "whirled Whirl 09:00"));
    expectAsSummary(rows[0], alder);
    expectAsSummary(rows[1], rose);
    expectAsSummary(rows[2], rose);
    expectAsSummary(rows[3], whirl);
    EXPECT_EQ(rows[3].at("mean_withheld_because"), "too-many-days-missing");
    ran = run({"report", "--club", rose, "--club", whirl, "--out", folder_.file("club.pdf")});
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_EQ(contents(folder_.file("club.pdf")).substr(0, 5), "%PDF-");
}

TEST_F(Club, WhatCannotBeUsedIsNamedAndTheRestGoesOn) {
    const std::string rose = member("Rose Hill", "screen", "09:00", "c", 1, 31);
    std::filesystem::create_directories(folder_.file("odd"));
    put(folder_.file("odd/month.csv"), "time,temperature\n2025-03-01,4\n");
    put(folder_.file("bare.csv"), contents(rose + "/month.csv"));
    const std::string out = folder_.file("club.csv");
    const std::vector<std::string> some{"report",
                                        "--club",
                                        rose,
                                        "--club",
                                        folder_.file("odd"),
                                        "--club",
                                        folder_.file("bare.csv"),
                                        "--club",
                                        folder_.file("absent"),
                                        "--out",
                                        out};
    auto ran = run(some);
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.err, HasSubstr("odd/month.csv has no usable column local_date and is left out"));
    EXPECT_THAT(ran.err, HasSubstr("bare.csv-metadata.json does not say station, exposure and hours"));
    EXPECT_THAT(ran.err, HasSubstr("absent can't be opened and is left out"));
    EXPECT_EQ(table(contents(out)).rows.size(), 1U);
    auto strict = some;
    strict.emplace_back("--strict");
    EXPECT_EQ(run(strict).code, 1);
}

TEST_F(Club, MonthsAreNotMixed) {
    const std::string rose = member("Rose Hill", "screen", "09:00", "c", 1, 31);
    auto ran = run({"report", "--book", folder_.file("Rose Hill.wickbook"), "--month", "2025-04", "--out",
                    folder_.file("april")});
    ran = run({"add", "--book", folder_.file("Rose Hill.wickbook"), "--at", "2025-04-02T09:00Z", "--dry",
               "9.0", "--wet", "8.0"});
    ASSERT_EQ(ran.code, 0) << ran.err;
    ran = run({"report", "--book", folder_.file("Rose Hill.wickbook"), "--month", "2025-04", "--out",
               folder_.file("april")});
    ASSERT_EQ(ran.code, 0) << ran.err;
    ran = run({"report", "--club", rose, "--club", folder_.file("april"), "--out", folder_.file("c.csv")});
    EXPECT_EQ(ran.code, 2);
    EXPECT_THAT(ran.err,
                HasSubstr("Rose Hill handed in 2025-03, Rose Hill 2025-04: a club's table is of one month."));
}

} // namespace
