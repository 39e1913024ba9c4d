// SPDX-License-Identifier: GPL-3.0-or-later
// Putting right from the command line: revise, withdraw, move, judge, readback and putback, each appending a
// revision with its reason, and each tried first without a trace.
#include "tests/app/station.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

using namespace wickbook::apptest;
using testing::HasSubstr;

namespace {

using Json = nlohmann::json;

/// A week of May 2024, mornings and evenings, but for the morning of the 4th.
class PuttingRight : public testing::Test {
protected:
    void SetUp() override {
        std::string rows = "time,dry,wet,note,observer\n";
        for (int day = 1; day <= 7; ++day) {
            for (const char* hour : {"08:00", "20:00"}) {
                if (day == 4 && std::string{hour} == "08:00") {
                    continue;
                }
                rows += "2024-05-0" + std::to_string(day) + "T" + hour + "," + std::to_string(10 + day) +
                        ".5," + std::to_string(8 + day) + ".5,,EW\n";
            }
        }
        const auto ran = station_.verb("add", {"--in", "-"}, rows);
        ASSERT_EQ(ran.code, 0) << ran.err;
    }

    Ran verb(const std::string& name, const Arguments& more) const { return station_.verb(name, more); }
    [[nodiscard]] Json history(const std::string& at) const {
        const auto ran = station_.verb("history", {"--at", at, "--format", "json"});
        EXPECT_EQ(ran.code, 0) << ran.err;
        return Json::parse(ran.out);
    }
    [[nodiscard]] Row exported(const std::string& date, const std::string& hour) const {
        for (const Row& row : station_.exported().rows) {
            if (row.at("local_date") == date && row.at("hour") == hour) {
                return row;
            }
        }
        return {};
    }

    Station station_;
};

} // namespace

TEST_F(PuttingRight, ARevisionIsAppendedWithItsReasonAndTheFirstValueStays) {
    const Arguments change{"--at",  "2024-05-02T08:00", "--dry", "12,7", "--note",   "louvre open",
                           "--why", "misread by one",   "--by",  "AB",   "--format", "json"};
    Arguments tried = change;
    tried.push_back("--dry-run");
    const auto dry = verb("revise", tried);
    EXPECT_EQ(dry.code, 0) << dry.err;
    EXPECT_THAT(dry.err, HasSubstr("Nothing was stored."));
    EXPECT_TRUE(Json::parse(dry.out)[0]["revision"].is_null());
    EXPECT_EQ(history("2024-05-02T08:00").size(), 1U) << "a dry run has stored something";

    const auto ran = verb("revise", change);
    EXPECT_EQ(ran.code, 0) << ran.err;
    const Json told = Json::parse(ran.out)[0];
    EXPECT_EQ(told["changes"]["dry_read"]["was"], "12.5");
    EXPECT_EQ(told["changes"]["dry_read"]["is"], "12.7");
    EXPECT_EQ(told["changes"]["origin"]["is"], "corrected");
    EXPECT_EQ(told["local_date"], "2024-05-02");
    const Json lines = history("2024-05-02T08:00");
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0]["dry_read"], "12.5");
    EXPECT_EQ(lines[1]["dry_read"], "12.7");
    EXPECT_EQ(lines[1]["why"], "misread by one");
    EXPECT_EQ(lines[1]["who"], "AB");
    EXPECT_EQ(lines[1]["observer"], "EW") << "who corrects is not who read";
    EXPECT_EQ(lines[1]["revision"], told["revision"]);
    EXPECT_EQ(verb("verify", {}).code, 0);
}

TEST_F(PuttingRight, ANoteIsNoCorrectionAndAnEstimateIsMarkedAndSetAside) {
    EXPECT_EQ(verb("revise", {"--at", "2024-05-02T08:00", "--note", "hazy", "--why", "from the diary"}).code,
              0);
    EXPECT_EQ(exported("2024-05-02", "08:00").at("origin"), "observed");
    EXPECT_EQ(verb("revise", {"--at", "2024-05-02T08:00", "--estimated", "--why", "page torn"}).code, 0);
    Row row = exported("2024-05-02", "08:00");
    EXPECT_EQ(row.at("origin"), "estimated");
    EXPECT_EQ(row.at("set_aside"), "yes");
    EXPECT_EQ(verb("revise", {"--at", "2024-05-02T08:00", "--note", "-", "--why", "no diary"}).code, 0);
    row = exported("2024-05-02", "08:00");
    EXPECT_EQ(row.at("origin"), "estimated") << "a note less makes no estimate a reading";
    EXPECT_EQ(row.at("note"), "");
    EXPECT_EQ(verb("revise", {"--at", "2024-05-02T08:00", "--observed", "--why", "page found"}).code, 0);
    EXPECT_EQ(exported("2024-05-02", "08:00").at("origin"), "observed");
}

// Story 7 of the trade: the wick was ice, found out later; derived again, and logged.
TEST_F(PuttingRight, AWickThatWasIceIsDerivedAgain) {
    ASSERT_EQ(
        station_
            .verb("add", {"--at", "2024-01-10T08:00", "--dry", "-4.0", "--wet", "-5.0", "--wick", "water"})
            .code,
        0);
    const double asWater = std::stod(exported("2024-01-10", "08:00").at("relative_humidity_pct"));
    EXPECT_EQ(
        verb("revise", {"--at", "2024-01-10T08:00", "--wick", "ice", "--why", "ice on the muslin at noon"})
            .code,
        0);
    const Row row = exported("2024-01-10", "08:00");
    EXPECT_EQ(row.at("wick"), "ice");
    // The same depression over ice is drier: the saturation over ice at −5.0 °C is 4.015 hPa, over
    // water 4.215 (Sonntag 1990, from memory), of about 4.55 hPa at −4 °C.
    const double asIce = std::stod(row.at("relative_humidity_pct"));
    EXPECT_LT(asIce, asWater - 2);
    EXPECT_GT(asIce, asWater - 7);
    EXPECT_EQ(history("2024-01-10T08:00").size(), 2U);
    EXPECT_EQ(history("2024-01-10T08:00")[1]["why"], "ice on the muslin at noon");
}

TEST_F(PuttingRight, WithdrawnReadingsComeBackByPutback) {
    EXPECT_EQ(
        verb("withdraw", {"--at", "2024-05-03T08:00", "--at", "2024-05-03T20:00", "--why", "dry wick"}).code,
        0);
    EXPECT_TRUE(exported("2024-05-03", "08:00").empty());
    EXPECT_TRUE(exported("2024-05-03", "20:00").empty());
    const auto refused = verb("judge", {"--at", "2024-05-03T08:00", "--as", "sound"});
    EXPECT_EQ(refused.code, 2);
    EXPECT_THAT(refused.err, HasSubstr("putback brings it back"));
    const Json lines = history("2024-05-03T08:00");
    const std::string first = std::to_string(lines[0]["revision"].get<int>());
    const auto ran = verb("putback", {"--at", "2024-05-03T08:00", "--revision", first});
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_EQ(exported("2024-05-03", "08:00").at("dry_read"), "13.5");
    EXPECT_EQ(history("2024-05-03T08:00").size(), 3U) << "putting back appends";
    EXPECT_EQ(history("2024-05-03T08:00")[2]["why"], "put back as revision " + first);
    const auto again = verb("putback", {"--at", "2024-05-03T08:00", "--revision", first});
    EXPECT_EQ(again.code, 0);
    EXPECT_THAT(again.err, HasSubstr("Nothing to change"));
    EXPECT_EQ(history("2024-05-03T08:00").size(), 3U);
}

TEST_F(PuttingRight, PutbackOntoATakenHourIsRefusedWhole) {
    const std::string first = std::to_string(history("2024-05-03T08:00")[0]["revision"].get<int>());
    EXPECT_EQ(
        verb("move", {"--at", "2024-05-03T08:00", "--to-date", "2024-05-04", "--why", "wrong day"}).code, 0);
    ASSERT_EQ(station_.verb("add", {"--at", "2024-05-03T08:00", "--dry", "9", "--wet", "8"}).code, 0);
    const auto ran = verb("putback", {"--at", "2024-05-04T08:00", "--revision", first});
    EXPECT_EQ(ran.code, 2);
    EXPECT_EQ(exported("2024-05-03", "08:00").at("dry_read"), "9");
    EXPECT_EQ(exported("2024-05-04", "08:00").at("dry_read"), "13.5");
}

// Story 8: a week typed into the wrong month, moved as one act; and moved back.
TEST_F(PuttingRight, AWeekGoesToAnotherMonthInOneTransaction) {
    const Arguments week{"--from", "2024-05-01", "--to", "2024-05-07", "--why", "page of April"};
    Arguments april = week;
    april.insert(april.end(), {"--to-month", "2024-04", "--format", "csv"});
    const auto ran = verb("move", april);
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_EQ(station_.exported().rows.size(), 13U);
    EXPECT_EQ(exported("2024-04-07", "20:00").at("dry_read"), "17.5");
    EXPECT_TRUE(exported("2024-05-07", "20:00").empty());
    const auto back = verb("move", {"--from", "2024-04-01", "--to", "2024-04-07", "--to-date", "2024-05-01",
                                    "--why", "of May after all"});
    EXPECT_EQ(back.code, 0) << back.err;
    EXPECT_EQ(exported("2024-05-07", "20:00").at("dry_read"), "17.5");
    EXPECT_EQ(history("2024-05-07T20:00").size(), 3U);
    EXPECT_EQ(verb("verify", {}).code, 0);
}

TEST_F(PuttingRight, WhatCanNotGoIsToldAndNothingMovesUnlessAsked) {
    // A day on: the morning of the 3rd finds the 4th free, the evening of the 3rd does not.
    const Arguments move{"--from",    "2024-05-03", "--to",  "2024-05-03",
                         "--to-date", "2024-05-04", "--why", "a day"};
    const auto refused = verb("move", move);
    EXPECT_EQ(refused.code, 2);
    EXPECT_THAT(refused.err, HasSubstr("2024-05-03T19:00:00Z stays: a reading stands there."));
    EXPECT_THAT(refused.err, HasSubstr("Nothing was moved: 1 of 2 can't go there."));
    EXPECT_FALSE(exported("2024-05-03", "08:00").empty());
    Arguments some = move;
    some.push_back("--some");
    EXPECT_EQ(verb("move", some).code, 0);
    EXPECT_TRUE(exported("2024-05-03", "08:00").empty());
    EXPECT_EQ(exported("2024-05-04", "08:00").at("dry_read"), "13.5");
    EXPECT_EQ(verb("move", {"--at", "2024-05-05T08:00", "--to-hour", "20:00", "--why", "x"}).code, 2);
}

TEST_F(PuttingRight, AWeekIsReadBackAgainstItsPage) {
    const Arguments week{"--from", "2024-05-01", "--to", "2024-05-07"};
    Arguments ticked = week;
    ticked.insert(ticked.end(), {"--paper-book", "Pocket-book 3", "--paper-page", "17"});
    EXPECT_EQ(verb("readback", ticked).code, 0);
    Json line = history("2024-05-06T20:00");
    EXPECT_EQ(line[1]["paper_book"], "Pocket-book 3");
    EXPECT_EQ(line[1]["paper_page"], "17");
    EXPECT_EQ(line[1]["read_back"], true);
    EXPECT_EQ(line[1]["why"], "read back against the paper");
    // Judging leaves the tick, another value takes it off.
    EXPECT_EQ(verb("judge", {"--at", "2024-05-06T20:00", "--as", "doubtful"}).code, 0);
    EXPECT_EQ(history("2024-05-06T20:00")[2]["read_back"], true);
    EXPECT_EQ(exported("2024-05-06", "20:00").at("quality"), "doubtful");
    EXPECT_EQ(exported("2024-05-06", "20:00").at("origin"), "observed");
    EXPECT_EQ(verb("revise", {"--at", "2024-05-06T20:00", "--wet", "14.4", "--why", "smudged"}).code, 0);
    line = history("2024-05-06T20:00");
    EXPECT_EQ(line[3]["read_back"], false);
    EXPECT_EQ(line[3]["quality"], "not-judged") << "what was judged was another reading";
    EXPECT_EQ(verb("readback", {"--at", "2024-05-05T08:00", "--off"}).code, 0);
    EXPECT_EQ(history("2024-05-05T08:00")[2]["read_back"], false);
}
