// SPDX-License-Identifier: GPL-3.0-or-later
// The limits of the checks from the command line: list, change with a reason, history; and that checks go by
// them.
#include "tests/app/station.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

using namespace wickbook::apptest;
using testing::HasSubstr;
using testing::Not;

namespace {

constexpr auto kVeryDry = "very-dry.lowest-humidity";

/// The row of a limit that is in force.
Row inForce(const Station& station, const std::string& limit) {
    const auto ran = station.verb("limits", {"--format", "csv"});
    EXPECT_EQ(ran.code, 0) << ran.err;
    for (const Row& row : table(ran.out).rows) {
        if (row.at("limit") == limit && row.at("in_force") == "yes") {
            return row;
        }
    }
    ADD_FAILURE() << "no row in force for " << limit;
    return {};
}

Ran set(const Station& station, const std::string& text, Arguments more = {}) {
    Arguments arguments{"--set", text, "--why", "dry plain"};
    arguments.insert(arguments.end(), more.begin(), more.end());
    return station.verb("limits", arguments);
}

} // namespace

TEST(Limits, AreListedInWordsWithTheirSource) {
    const Station station;
    const auto text = station.verb("limits");
    EXPECT_EQ(text.code, 0) << text.err;
    EXPECT_THAT(text.out, HasSubstr("Very dry air (very-dry)"));
    EXPECT_THAT(text.out, HasSubstr("very-dry.lowest-humidity: ask below a humidity of: 10\u00A0%"));
    const Row row = inForce(station, kVeryDry);
    EXPECT_EQ(row.at("built_in"), "10");
    EXPECT_EQ(row.at("value"), "10");
    EXPECT_EQ(row.at("unit"), "%");
    EXPECT_EQ(row.at("from_utc"), "");
    EXPECT_EQ(row.at("who"), "");
    EXPECT_EQ(row.at("source"), "common practice, no source");
    const auto json = nlohmann::json::parse(station.verb("limits", {"--format", "json"}).out);
    EXPECT_GE(json.size(), 60U);
    EXPECT_TRUE(json[0]["in_force"].get<bool>());
    EXPECT_TRUE(json[0]["from_utc"].is_null());
}

TEST(Limits, AreKeptWithWhoAndWhyAndTheirHistory) {
    const Station station;
    EXPECT_EQ(set(station, "very-dry.lowest-humidity=4").code, 0);
    EXPECT_EQ(set(station, "very-dry.lowest-humidity=6,5", {"--from", "2020-01-01"}).code, 0);
    const Row row = inForce(station, kVeryDry);
    EXPECT_EQ(row.at("value"), "6.5");
    EXPECT_EQ(row.at("from_utc"), "2020-01-01T00:00:00Z");
    EXPECT_EQ(row.at("why"), "dry plain");
    EXPECT_NE(row.at("recorded_at"), "");

    const auto back = station.verb("limits", {"--reset", kVeryDry, "--why", "moved to the coast"});
    EXPECT_EQ(back.code, 0) << back.err;
    EXPECT_THAT(back.err, HasSubstr("as built in"));
    EXPECT_EQ(inForce(station, kVeryDry).at("value"), "10");
    const auto history = table(station.verb("limits", {"--history", "--format", "csv"}).out);
    ASSERT_EQ(history.rows.size(), 4U); // two set, two taken back
    EXPECT_EQ(history.rows[0].at("value"), "4");
    EXPECT_EQ(history.rows[1].at("value"), "6.5");
    EXPECT_EQ(history.rows[2].at("withdrawn"), "yes");
    EXPECT_EQ(history.rows[3].at("why"), "moved to the coast");
    EXPECT_EQ(station.verb("verify").code, 0);
}

TEST(Limits, ChecksGoByTheLimitsOfEachReadingsOwnDate) {
    const Station station;
    // About 4 % at 120 m in a screen.
    for (const char* day : {"2024-06-30", "2024-07-01"}) {
        const auto added = station.verb("add", {"--at", std::string{day} + "T08:00", "--dry", "30.0", "--wet",
                                                day[6] == '6' ? "13.4" : "13.5", "--weather", "none"});
        ASSERT_EQ(added.code, 0) << added.err;
    }
    const auto marked = [&] {
        std::vector<std::string> dates;
        for (const Row& row : table(station.verb("check", {"--format", "csv"}).out).rows) {
            if (row.at("code") == "very-dry") {
                dates.push_back(row.at("local_date"));
            }
        }
        return dates;
    };
    EXPECT_EQ(marked(), (std::vector<std::string>{"2024-06-30", "2024-07-01"}));
    const auto before = contents(station.book());
    const auto dry =
        station.verb("limits", {"--set", "very-dry.lowest-humidity=2", "--from", "2024-07-01", "--dry-run"});
    EXPECT_EQ(dry.code, 0) << dry.err;
    EXPECT_THAT(dry.err, HasSubstr("Of 2 readings in the book 1 would be judged otherwise"));
    EXPECT_THAT(dry.err, HasSubstr("Nothing was stored."));
    EXPECT_EQ(contents(station.book()), before);
    ASSERT_EQ(set(station, "very-dry.lowest-humidity=2", {"--from", "2024-07-01"}).code, 0);
    EXPECT_EQ(marked(), (std::vector<std::string>{"2024-06-30"}));
}

TEST(Limits, WhatCannotBeIsRefusedWithASentenceAndNothingIsStored) {
    const Station station;
    const auto before = contents(station.book());
    struct Case {
        Arguments arguments;
        const char* says;
    };
    const std::vector<Case> cases{
        {{"--set", "very-dry.humidity=4", "--why", "x"}, "That rule has very-dry.lowest-humidity."},
        {{"--set", "damp.humidity=4", "--why", "x"}, "The rules with limits are gross-temperature"},
        {{"--set", "very-dry.lowest-humidity=400", "--why", "x"}, "it may be 0 to 100"},
        {{"--set", "very-dry.lowest-humidity=dry", "--why", "x"}, "--set very-dry.lowest-humidity"},
        {{"--set", "very-dry.lowest-humidity", "--why", "x"}, "RULE.LIMIT=VALUE"},
        {{"--set", "persistence.tenths=3.5", "--why", "x"}, "whole number"},
        {{"--set", "wet-above-dry.tolerance=1", "--why", "x"}, "stays at 0.2"},
        {{"--set", "gross-temperature.high-summer-doubtful-high=60", "--why", "x"}, "give 50"},
        {{"--set", "very-dry.lowest-humidity=4"}, "--why"},
        {{"--set", "very-dry.lowest-humidity=4", "--why", "x", "--from", "yesterday"}, "--from"},
        {{"--set", "very-dry.lowest-humidity=4", "--reset", kVeryDry, "--why", "x"}, "named twice"},
        {{"--set", "very-dry.lowest-humidity=4", "--history", "--why", "x"}, "not both"},
        {{"--reset", "damp.humidity", "--why", "x"}, "There is no limit damp.humidity."},
        {{"--from", "2020-01-01"}, "say what shall change"},
        {{"--format", "yaml"}, "yaml"},
    };
    for (const Case& c : cases) {
        const auto ran = station.verb("limits", c.arguments);
        EXPECT_EQ(ran.code, 2) << ran.err;
        EXPECT_EQ(lines(ran.err).size(), 1U) << ran.err;
        EXPECT_THAT(ran.err, HasSubstr(c.says));
        EXPECT_EQ(ran.out, "");
    }
    EXPECT_EQ(contents(station.book()), before);
    EXPECT_EQ(run({"limits", "--book", station.file("none.wickbook")}).code, 3);
}

TEST(Limits, SettingWhatIsSoAlreadyStoresNothing) {
    const Station station;
    ASSERT_EQ(set(station, "late.minutes=20").code, 0);
    const auto before = contents(station.book());
    const auto again = set(station, "late.minutes=20");
    EXPECT_EQ(again.code, 0);
    EXPECT_THAT(again.err, HasSubstr("so already"));
    EXPECT_EQ(contents(station.book()), before);
}
