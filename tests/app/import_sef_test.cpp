// SPDX-License-Identifier: GPL-3.0-or-later
// SEF files and clock-change weekends through the real program. Values are invented.
#include "tests/app/station.h"

#include <gmock/gmock.h>

#include <filesystem>
#include <fstream>
#include <map>
#include <set>

using namespace wickbook::apptest;
using testing::HasSubstr;

namespace {

std::string sef(const std::string& name) {
    return std::string{WICKBOOK_TEST_DATA} + "/data/sef/" + name;
}

Arguments newBook(const std::string& book, const std::string& zone, const std::string& hours,
                  const std::string& rule) {
    return {"new",        "--book",     book,          "--name",      "Invented", "--elevation", "100",
            "--latitude", "52",         "--longitude", "-1.5",        "--zone",   zone,          "--hours",
            hours,        "--exposure", "screen",      "--hour-rule", rule};
}

} // namespace

TEST(ImportSef, OneVariableAFileJoinedOnTime) {
    const Folder folder;
    const std::string book = folder.file("mill.wickbook");
    ASSERT_EQ(run(newBook(book, "Europe/London", "09:00,21:00", "utc")).code, 0);
    const auto ran =
        run({"import", "--book", book, "--in", sef("mill_ta.tsv"), "--in", sef("mill_tb.tsv"), "--in",
             sef("mill_p.tsv"), "--in", sef("mill_rh.tsv"), "--rejects", folder.file("rejects.csv")});
    ASSERT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.err, HasSubstr("mill_rh.tsv: left aside"));
    EXPECT_THAT(ran.err, HasSubstr("Lines read: 16. Imported: 8"));
    const auto kept = table(run({"export", "--book", book, "--out", "-"}).out);
    ASSERT_EQ(kept.rows.size(), 8U);
    EXPECT_EQ(kept.rows[0].at("time_utc"), "1912-03-01T09:00:00Z");
    EXPECT_EQ(kept.rows[0].at("dry_read"), "61.5"); // as read, not 16.4 °C
    EXPECT_EQ(kept.rows[0].at("wet_read"), "57");
    EXPECT_EQ(kept.rows[0].at("unit"), "f");
    EXPECT_EQ(kept.rows[0].at("pressure_hpa"), "1008.4");
    EXPECT_EQ(kept.rows[2].at("quality"), "doubtful");
    const auto rejects = table(contents(folder.file("rejects.csv")));
    ASSERT_EQ(rejects.rows.size(), 1U);
    EXPECT_EQ(rejects.rows[0].at("reason"), "no-time");
    // The same files again say nothing new.
    const auto again = run({"import", "--book", book, "--in", sef("mill_ta.tsv"), "--in", sef("mill_tb.tsv"),
                            "--in", sef("mill_p.tsv")});
    EXPECT_THAT(again.err, HasSubstr("Imported: 0"));
    EXPECT_THAT(again.err, HasSubstr("There already: 8"));
    EXPECT_EQ(run({"verify", "--book", book}).code, 0);
}

TEST(ImportSef, WhatCannotBeReadIsOneSentence) {
    const Station station;
    for (const char* name : {"version_2.tsv", "julian_ta.tsv", "mmhg_p.tsv", "mill_rh.tsv"}) {
        const auto ran = station.verb("import", {"--in", sef(name)});
        EXPECT_EQ(ran.code, 2) << name;
        EXPECT_EQ(lines(ran.err).size(), 1U) << ran.err;
    }
    const auto mixed = station.verb("import", {"--in", sef("mill_ta.tsv"), "--in", sef("elsewhere_tb.tsv")});
    EXPECT_EQ(mixed.code, 2);
    EXPECT_THAT(mixed.err, HasSubstr("different stations"));
    EXPECT_EQ(station.exported().rows.size(), 0U);
    EXPECT_EQ(station.verb("import", {"--in", "-"}, std::string("PK\x03\x04", 4)).code, 2);
}

/// A week of twice daily readings by the clock over each change: no gap, no duplicate, and the moments that
/// the rules of these zones make of them (IANA time zone database).
TEST(ImportClock, WeekendsOfClockChanges) {
    struct Weekend {
        const char* zone;
        const char* month;
        int firstDay;
        const char* changeDay;
        const char* nineBefore; ///< 09:00 on the first day, UTC
        const char* nineAfter;  ///< 09:00 on the day of the change, UTC
    };
    for (const Weekend& weekend : {Weekend{"Europe/London", "2025-03", 28, "2025-03-30",
                                           "2025-03-28T09:00:00Z", "2025-03-30T08:00:00Z"},
                                   Weekend{"Europe/London", "2025-10", 24, "2025-10-26",
                                           "2025-10-24T08:00:00Z", "2025-10-26T09:00:00Z"},
                                   Weekend{"America/New_York", "2025-03", 7, "2025-03-09",
                                           "2025-03-07T14:00:00Z", "2025-03-09T13:00:00Z"},
                                   Weekend{"America/New_York", "2025-11", 1, "2025-11-02",
                                           "2025-11-01T13:00:00Z", "2025-11-02T14:00:00Z"},
                                   Weekend{"Australia/Sydney", "2025-04", 4, "2025-04-06",
                                           "2025-04-03T22:00:00Z", "2025-04-05T23:00:00Z"},
                                   Weekend{"Australia/Sydney", "2025-10", 3, "2025-10-05",
                                           "2025-10-02T23:00:00Z", "2025-10-04T22:00:00Z"}}) {
        const Folder folder;
        const std::string book = folder.file("b.wickbook");
        ASSERT_EQ(run(newBook(book, weekend.zone, "09:00,21:00", "clock")).code, 0);
        std::string text = "time,dry,wet\n";
        for (int i = 0; i < 4; ++i) {
            const int day = weekend.firstDay + i;
            const std::string date =
                std::string(weekend.month) + (day < 10 ? "-0" : "-") + std::to_string(day);
            if (day > 31 || (std::string(weekend.month) == "2025-11" && day > 30)) {
                continue;
            }
            text += date + "T09:00,8,7\n" + date + "T21:00,6,5\n";
        }
        const auto ran = run({"import", "--book", book, "--in", "-"}, text);
        ASSERT_EQ(ran.code, 0) << ran.err;
        const auto kept = table(run({"export", "--book", book, "--out", "-"}).out);
        EXPECT_EQ(kept.rows.size(), lines(text).size() - 1) << weekend.zone << ran.err;
        EXPECT_EQ(kept.rows.front().at("time_utc"), weekend.nineBefore);
        bool met = false;
        std::set<std::string> hours;
        for (const Row& row : kept.rows) {
            EXPECT_NE(row.at("hour"), "") << "an extra reading in " << weekend.zone;
            EXPECT_TRUE(hours.insert(row.at("local_date") + row.at("hour")).second);
            if (row.at("local_date") == weekend.changeDay && row.at("hour") == "09:00") {
                met = true;
                EXPECT_EQ(row.at("time_utc"), weekend.nineAfter) << weekend.zone;
            }
        }
        EXPECT_TRUE(met) << weekend.zone;
    }
}

TEST(ImportClock, DoubleTimesAsThePersonSays) {
    const std::string text = "time,dry,wet\n2025-10-26T01:30,8,7\n2025-03-30T01:30,8,7\n";
    for (const auto& [choice, instant] :
         {std::pair{"earlier", "2025-10-26T00:30:00Z"}, std::pair{"later", "2025-10-26T01:30:00Z"}}) {
        const Folder folder;
        const std::string book = folder.file("b.wickbook");
        ASSERT_EQ(run(newBook(book, "Europe/London", "09:00", "clock")).code, 0);
        const auto ran = run({"import", "--book", book, "--in", "-", "--double-times", choice}, text);
        EXPECT_EQ(ran.code, 0) << ran.err;
        EXPECT_THAT(ran.err, HasSubstr("impossible-time 1"));
        const auto kept = table(run({"export", "--book", book, "--out", "-"}).out);
        ASSERT_EQ(kept.rows.size(), 1U);
        EXPECT_EQ(kept.rows[0].at("time_utc"), instant);
    }
}

TEST(ImportClock, AnOffsetToTheSecondComesBack) {
    const Folder folder;
    const std::string book = folder.file("b.wickbook");
    ASSERT_EQ(run(newBook(book, "America/Argentina/Cordoba", "08:00,18:00", "clock")).code, 0);
    ASSERT_EQ(run({"import", "--book", book, "--in", "-"}, "time,dry,wet\n1890-06-01T08:00,8,7\n").code, 0);
    const auto kept = table(run({"export", "--book", book, "--out", "-"}).out);
    ASSERT_EQ(kept.rows.size(), 1U);
    EXPECT_EQ(kept.rows[0].at("time_utc"), "1890-06-01T12:16:48Z");
    EXPECT_EQ(kept.rows[0].at("utc_offset"), "-04:16:48");
    EXPECT_EQ(kept.rows[0].at("hour"), "08:00");
}

// A register goes out as SEF, comes in to a new book, and goes out again: the same bytes.
TEST(ExportSef, ThereAndBackThroughTwoBooks) {
    const Station station;
    for (const char* day : {"2025-01-01", "2025-01-02", "2025-01-03"}) {
        ASSERT_EQ(
            station.verb("add", {"--at", std::string{day} + "T08:00", "--dry", "3.4", "--wet", "2.1"}).code,
            0);
        ASSERT_EQ(station
                      .verb("add", {"--at", std::string{day} + "T20:02", "--dry", "-1.0", "--wet", "-1.6",
                                    "--wick", "ice"})
                      .code,
                  0);
    }
    const auto written = station.verb("export", {"--format", "sef", "--out", station.file("first")});
    ASSERT_EQ(written.code, 0) << written.err;
    const Station other;
    Arguments in;
    std::map<std::string, std::string> first;
    for (const auto& entry : std::filesystem::directory_iterator(station.file("first"))) {
        std::ifstream file(entry.path(), std::ios::binary);
        first[entry.path().filename().string()] = {std::istreambuf_iterator<char>(file), {}};
        in.insert(in.end(), {"--in", entry.path().string()});
    }
    ASSERT_EQ(first.size(), 3U); // ta, tb, ibt
    const auto came = other.verb("import", in);
    ASSERT_EQ(came.code, 0) << came.err;
    ASSERT_EQ(other.verb("export", {"--format", "sef", "--out", other.file("second")}).code, 0);
    for (const auto& [name, bytes] : first) {
        std::ifstream file(std::filesystem::path(other.file("second")) / name, std::ios::binary);
        EXPECT_EQ(std::string(std::istreambuf_iterator<char>(file), {}), bytes) << name;
    }
}
