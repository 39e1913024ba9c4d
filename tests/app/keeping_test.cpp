// SPDX-License-Identifier: GPL-3.0-or-later
// Beginning a book, changing its station, entering readings.
#include "core/store/book.h"
#include "tests/app/station.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

using namespace wickbook::apptest;
using testing::HasSubstr;
using testing::StartsWith;

TEST(New, NothingIsEverMadeOverAFile) {
    const Station station;
    EXPECT_EQ(station.exported().rows.size(), 0U);
    const auto before = contents(station.book());
    const auto again =
        run({"new", "--book", station.book(), "--name", "Other", "--elevation", "1", "--latitude", "1",
             "--longitude", "1", "--zone", "UTC", "--hours", "9", "--exposure", "screen"});
    EXPECT_EQ(again.code, 3);
    EXPECT_EQ(lines(again.err).size(), 1U);
    EXPECT_EQ(contents(station.book()), before);
}

TEST(New, WhatCannotBeIsRefusedAndNothingIsMade) {
    const Folder folder;
    const std::map<std::string, std::string> good{
        {"--name", "Hut"}, {"--elevation", "-3.5"},   {"--latitude", "-41.2"},  {"--longitude", "174.7"},
        {"--zone", "UTC"}, {"--hours", "9:00,21:00"}, {"--exposure", "whirled"}};
    const auto attempt = [&](const std::string& option, const std::string& value) {
        Arguments arguments{"new", "--book", folder.file("b")};
        auto options = good;
        options[option] = value;
        for (const auto& [name, text] : options) {
            arguments.push_back(name);
            arguments.push_back(text);
        }
        return run(arguments);
    };
    const std::vector<std::pair<std::string, std::string>> bad{{"--latitude", "91"},
                                                               {"--latitude", "north"},
                                                               {"--longitude", "-181"},
                                                               {"--elevation", "9001"},
                                                               {"--zone", "Mars/Dust"},
                                                               {"--hours", "25:00"},
                                                               {"--hours", "09:00,09:00"},
                                                               {"--hours", ""},
                                                               {"--exposure", "balcony"},
                                                               {"--exposure", "own"},
                                                               {"--unit", "k"},
                                                               {"--resolution", "0"},
                                                               {"--scale", "60,-40"},
                                                               {"--scale", "warm"},
                                                               {"--hour-rule", "sun"},
                                                               {"--name", " "}};
    for (const auto& [option, value] : bad) {
        const auto ran = attempt(option, value);
        EXPECT_EQ(ran.code, 2) << option << " " << value << " " << ran.err;
        EXPECT_EQ(lines(ran.err).size(), 1U) << ran.err;
        EXPECT_FALSE(std::filesystem::exists(folder.file("b"))) << option << " " << value;
    }
    EXPECT_EQ(attempt("--scale", "-30,50").code, 0);
}

TEST(Add, SavesAndTells) {
    const Station station;
    const auto ran =
        station.verb("add", {"--at", "2024-07-10T08:04", "--dry", "17,6", "--wet", "15.2", "--pressure",
                             "1001.3", "--weather", "dew", "--observer", "AB", "--note", "first"});
    EXPECT_EQ(ran.code, 0) << ran.err;
    // 08:04 summer time in Dublin.
    EXPECT_EQ(ran.out, "saved 2024-07-10T07:04:00Z\n");
    const auto kept = station.exported();
    ASSERT_EQ(kept.rows.size(), 1U);
    const Row& row = kept.rows[0];
    EXPECT_EQ(row.at("time_utc"), "2024-07-10T07:04:00Z");
    EXPECT_EQ(row.at("local_date"), "2024-07-10");
    EXPECT_EQ(row.at("hour"), "08:00");
    EXPECT_EQ(row.at("utc_offset"), "+01:00");
    EXPECT_EQ(row.at("dry_read"), "17.6");
    EXPECT_EQ(row.at("wet_read"), "15.2");
    EXPECT_EQ(row.at("pressure_hpa"), "1001.3");
    EXPECT_EQ(row.at("pressure_source"), "read");
    EXPECT_EQ(row.at("weather"), "dew");
    EXPECT_EQ(row.at("observer"), "AB");
    EXPECT_EQ(row.at("note"), "first");
}

TEST(Add, ATakenHourIsAConflict) {
    const Station station;
    EXPECT_EQ(station.verb("add", {"--at", "2024-07-10T08:04", "--dry", "17.6", "--wet", "15.2"}).code, 0);
    const auto again = station.verb("add", {"--at", "2024-07-10T08:10", "--dry", "17.7", "--wet", "15.2"});
    EXPECT_EQ(again.code, 2);
    EXPECT_EQ(again.out, "");
    EXPECT_EQ(lines(again.err).size(), 1U) << again.err;
    EXPECT_EQ(station.exported().rows.size(), 1U);
    // Away from the hours it is an extra reading.
    EXPECT_EQ(station.verb("add", {"--at", "2024-07-10T12:00", "--dry", "20.1", "--wet", "15.2"}).code, 0);
    const auto kept = station.exported();
    ASSERT_EQ(kept.rows.size(), 2U);
    EXPECT_EQ(kept.rows[1].at("hour"), "");
}

TEST(Add, OffTheScaleIsRefusedLiveAndKeptFromAnOldPage) {
    const Station station({"--scale", "-30,50"});
    const auto live = station.verb("add", {"--dry", "61.2", "--wet", "15.2"});
    EXPECT_EQ(live.code, 2);
    EXPECT_EQ(live.out, "");
    EXPECT_EQ(lines(live.err).size(), 1U) << live.err;
    EXPECT_EQ(station.exported().rows.size(), 0U);
    const auto old =
        station.verb("add", {"--at", "1931-07-10T08:00", "--dry", "220.9", "--wet", "15.2", "--strict"});
    EXPECT_EQ(old.code, 1);
    EXPECT_THAT(old.out, StartsWith("saved 1931-07-10T"));
    EXPECT_THAT(old.err, HasSubstr("off-scale"));
    const auto kept = station.exported();
    ASSERT_EQ(kept.rows.size(), 1U);
    EXPECT_EQ(kept.rows[0].at("dry_read"), "220.9");
    EXPECT_EQ(kept.rows[0].at("relative_humidity_pct"), "");
}

TEST(Add, WithoutATimeItIsNow) {
    const Station station;
    const auto ran = station.verb("add", {"--dry", "17.6", "--wet", "15.2"});
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.out, StartsWith("saved 20"));
}

TEST(Add, TimesTheClockDidNotShowAreAsked) {
    const Station station;
    // Dublin, 2024-03-31: the clock went from 01:00 to 02:00.
    const auto skipped = station.verb("add", {"--at", "2024-03-31T01:30", "--dry", "7.6", "--wet", "6.2"});
    EXPECT_EQ(skipped.code, 2) << skipped.out;
    // 2024-10-27: 01:30 came twice; with the offset it is one moment.
    EXPECT_EQ(station.verb("add", {"--at", "2024-10-27T01:30", "--dry", "7.6", "--wet", "6.2"}).code, 2);
    EXPECT_EQ(station.verb("add", {"--at", "2024-10-27T01:30+01:00", "--dry", "7.6", "--wet", "6.2"}).out,
              "saved 2024-10-27T00:30:00Z\n");
}

TEST(Add, RowsGoOnAfterOneThatCannotBeEntered) {
    const Station station;
    const auto ran = station.verb("add", {"--in", "-"},
                                  "time,dry,wet,max,wind,shoe size\n"
                                  "2024-01-05T08:00,4.2,3.1,,3,42\n"
                                  "2024-01-05T20:00,cold,3.1,,3,42\n"
                                  "2024-01-05T08:05,4.2,3.1,,3,42\n"
                                  "soon,4.2,3.1,,3,42\n"
                                  "2024-01-06T08:00,5.1\n"
                                  "2024-01-06T20:00,5.6,4.9,7.2,2,42\n");
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_EQ(ran.out, "saved 2024-01-05T08:00:00Z\nsaved 2024-01-06T20:00:00Z\n");
    for (const char* told : {"line 3", "line 4", "line 5", "line 6", "shoe size", "2 saved, 4 rejected"}) {
        EXPECT_THAT(ran.err, HasSubstr(told));
    }
    EXPECT_EQ(station.exported().rows.size(), 2U);
    EXPECT_EQ(station.verb("add", {"--in", "-", "--strict"}, "time,dry,wet\nsoon,1,1\n").code, 1);
}

// A reading that the program has said is saved is in the book, whatever happens next; and it says so row by
// row, before the next row is there to be read.
TEST(Add, WhatWasSaidToBeSavedSurvivesAKill) {
    for (int round = 0; round < 3; ++round) {
        const Station station;
        std::vector<std::string> acknowledged;
        {
            Running stream({"add", "--book", station.book(), "--in", "-"});
            stream.write("time,dry,wet\r\n");
            for (int day = 1; day <= 4 + round; ++day) {
                stream.write("2024-02-0" + std::to_string(day) + "T08:00Z,5.5,4.5\r\n");
                const std::string line = stream.readLine();
                ASSERT_THAT(line, StartsWith("saved ")) << "no answer to row " << day;
                acknowledged.push_back(line.substr(6));
            }
            stream.write("2024-02-20T08:00Z,5.5,4.5\n");
            stream.kill();
        }
        const auto kept = station.exported();
        EXPECT_GE(kept.rows.size(), acknowledged.size());
        for (std::size_t i = 0; i < acknowledged.size(); ++i) {
            EXPECT_EQ(kept.rows[i].at("time_utc"), acknowledged[i]);
        }
        EXPECT_EQ(station.verb("verify").code, 0);
    }
}

TEST(Period, HoursDifferFromADateOn) {
    const Station station;
    EXPECT_EQ(station.verb("add", {"--at", "2024-05-01T08:00", "--dry", "11.0", "--wet", "9.5"}).code, 0);
    EXPECT_EQ(station.verb("add", {"--at", "2024-05-03T08:00", "--dry", "11.4", "--wet", "9.9"}).code, 0);
    const auto ran =
        station.verb("period", {"--from", "2024-05-02", "--hours", "07:00,14:00", "--exposure", "whirled"});
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.err, HasSubstr("2024-05-01T23:00:00Z")); // midnight in Dublin's summer
    EXPECT_THAT(ran.err, HasSubstr("observing hours 07:00, 14:00; exposure whirled."));
    EXPECT_THAT(ran.err, HasSubstr("1 reading from then on"));
    EXPECT_EQ(station.verb("add", {"--at", "2024-05-02T14:05", "--dry", "16.4", "--wet", "12.9"}).code, 0);
    const auto kept = station.exported();
    ASSERT_EQ(kept.rows.size(), 3U);
    EXPECT_EQ(kept.rows[0].at("hour"), "08:00");
    EXPECT_EQ(kept.rows[1].at("hour"), "14:00");
    EXPECT_EQ(kept.rows[2].at("hour"), "08:00"); // entered before the change: kept
    EXPECT_EQ(station.verb("period", {"--from", "2024-05-02"}).code, 2);
    EXPECT_EQ(station.verb("period", {"--from", "someday", "--hours", "9"}).code, 2);
}

TEST(History, ShowsWhoWroteWhat) {
    const Station station;
    EXPECT_EQ(
        station.verb("add", {"--at", "2024-05-01T08:04", "--dry", "11.0", "--wet", "9.5", "--observer", "CD"})
            .code,
        0);
    const auto revised = station.verb("import", {"--in", "-", "--on-conflict", "revise"},
                                      "time,dry,wet\n2024-05-01T08:04,12.0,9.5\n");
    EXPECT_EQ(revised.code, 0) << revised.err;
    // By the nominal hour, by the moment with an offset, by the clock.
    for (const char* at :
         {"2024-05-01T08:00", "2024-05-01T07:00Z", "2024-05-01T07:04:00Z", "2024-05-01T08:04"}) {
        const auto ran = station.verb("history", {"--at", at, "--format", "json"});
        ASSERT_EQ(ran.code, 0) << at << ran.err;
        const auto list = nlohmann::json::parse(ran.out);
        ASSERT_EQ(list.size(), 2U);
        EXPECT_EQ(list[0].at("dry_read"), "11.0");
        EXPECT_EQ(list[0].at("who"), "CD");
        EXPECT_EQ(list[0].at("unit"), "c"); // as the export has it
        EXPECT_EQ(list[1].at("dry_read"), "12.0");
        EXPECT_LT(list[0].at("revision").get<int>(), list[1].at("revision").get<int>());
    }
    EXPECT_THAT(station.verb("history", {"--at", "2024-05-01T08:00"}).out, HasSubstr("11.0"));
    EXPECT_EQ(table(station.verb("history", {"--at", "2024-05-01T08:00", "--format", "csv"}).out).rows.size(),
              2U);
    EXPECT_EQ(station.verb("history", {"--at", "2024-05-02T08:00"}).code, 2);
    EXPECT_EQ(station.verb("history", {"--at", "noon"}).code, 2);
}

TEST(History, IsThereForAWithdrawnReadingToo) {
    const Station station;
    EXPECT_EQ(station.verb("add", {"--at", "2024-05-01T08:04", "--dry", "11.0", "--wet", "9.5"}).code, 0);
    {
        namespace store = wickbook::store;
        auto book = store::Book::open(station.book());
        ASSERT_TRUE(book);
        const auto all =
            book->observationsOn(wickbook::record::StationDate{}, *wickbook::record::parseDate("2100-01-01"));
        ASSERT_EQ(all->size(), 1U);
        store::ObservationChange change;
        change.subject = all->front().id();
        change.values = all->front().values;
        change.values.withdrawn = true;
        change.author = {"CD", "taken back"};
        ASSERT_TRUE(book->append(change));
    }
    EXPECT_EQ(station.exported().rows.size(), 0U);
    for (const char* at : {"2024-05-01T08:04", "2024-05-01T08:00", "2024-05-01T07:00Z"}) {
        const auto ran = station.verb("history", {"--at", at, "--format", "json"});
        ASSERT_EQ(ran.code, 0) << at << ran.err;
        const auto list = nlohmann::json::parse(ran.out);
        ASSERT_EQ(list.size(), 2U);
        EXPECT_EQ(list[0].at("withdrawn"), false);
        EXPECT_EQ(list[1].at("withdrawn"), true);
        EXPECT_EQ(list[1].at("why"), "taken back");
    }
    // What stands at the hour comes before what was taken back.
    EXPECT_EQ(station.verb("add", {"--at", "2024-05-01T08:00", "--dry", "12.0", "--wet", "9.5"}).code, 0);
    const auto ran = station.verb("history", {"--at", "2024-05-01T08:00", "--format", "csv"});
    ASSERT_EQ(table(ran.out).rows.size(), 1U);
    EXPECT_EQ(table(ran.out).rows[0].at("dry_read"), "12.0");
}
