// SPDX-License-Identifier: GPL-3.0-or-later
// Importing, checking, exporting, reporting, copying and verifying a book.
#include "tests/app/station.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>
#include <sys/stat.h>

#include <fstream>

using namespace wickbook::apptest;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

/// A few days with one slip each: a swapped pair, and one too dry for any air.
const std::string kRegister = "when;T dry;T wet;hPa;seen\n"
                              "2024-06-01T08:00;14,2;12,1;1004,0;x\n"
                              "2024-06-01T20:00;15,8;13,0;1003,1;x\n"
                              "2024-06-02T08:00;12,9;15,1;1002,5;x\n"
                              "2024-06-02T20:00;24,5;3,0;1002,0;x\n"
                              "2024-06-03T08:00;13,3;;1001,4;x\n"
                              "2024-06-03T20:00;a lot;12,0;1001,4;x\n"
                              "2024-06-04T08:10;13,9;12,2;1000,9;x\n";

Arguments importing(const Arguments& more = {}) {
    Arguments arguments{"--in",      "-",     "--map",     "when=time", "--map",
                        "T dry=dry", "--map", "T wet=wet", "--map",     "hPa=pressure"};
    arguments.insert(arguments.end(), more.begin(), more.end());
    return arguments;
}

std::size_t filesIn(const std::string& folder) {
    std::size_t count = 0;
    for ([[maybe_unused]] const auto& entry : std::filesystem::directory_iterator(folder)) {
        ++count;
    }
    return count;
}

} // namespace

TEST(Import, TakesWhatCanBeTakenAndExplainsTheRest) {
    const Station station;
    const auto dry = station.verb("import", importing({"--dry-run"}), kRegister);
    EXPECT_EQ(dry.code, 0) << dry.err;
    EXPECT_THAT(dry.err, HasSubstr("Imported: 6, of these incomplete: 1."));
    EXPECT_EQ(station.exported().rows.size(), 0U);

    const auto ran = station.verb("import", importing({"--rejects", station.file("rejects.csv")}), kRegister);
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_EQ(ran.out, "");
    EXPECT_THAT(ran.err, HasSubstr("Lines read: 7. Imported: 6, of these incomplete: 1."));
    EXPECT_THAT(ran.err, HasSubstr("Rejected: 1."));
    EXPECT_THAT(ran.err, HasSubstr("line 7"));
    const auto rejects = table(contents(station.file("rejects.csv")));
    EXPECT_THAT(rejects.header, ElementsAre("file", "line", "reason", "field", "value", "text"));
    ASSERT_EQ(rejects.rows.size(), 1U);
    EXPECT_EQ(rejects.rows[0].at("line"), "7");
    EXPECT_EQ(rejects.rows[0].at("text"), "2024-06-03T20:00;a lot;12,0;1001,4;x");
    const auto kept = station.exported();
    ASSERT_EQ(kept.rows.size(), 6U);
    EXPECT_EQ(kept.rows[2].at("dry_read"), "12.9");

    // The same file again says nothing new.
    const auto again = station.verb("import", importing({"--rejects", station.file("again.csv")}), kRegister);
    EXPECT_THAT(again.err, HasSubstr("Imported: 0"));
    EXPECT_THAT(again.err, HasSubstr("There already: 6."));
    EXPECT_EQ(station.exported().rows.size(), 6U);
}

TEST(Import, ConflictsAreKeptRevisedOrRejected) {
    const Station station;
    EXPECT_EQ(station.verb("import", importing(), kRegister).code, 0);
    const std::string other = "time,dry,wet\n2024-06-01T08:00,14.4,12.1\n";
    const auto rejected =
        station.verb("import", {"--in", "-", "--strict", "--rejects", station.file("r.csv")}, other);
    EXPECT_EQ(rejected.code, 1);
    EXPECT_EQ(table(contents(station.file("r.csv"))).rows.at(0).at("reason"), "hour-taken");
    EXPECT_THAT(station.verb("import", {"--in", "-", "--on-conflict", "keep"}, other).err,
                HasSubstr("Kept as in the book: 1."));
    EXPECT_EQ(station.exported().rows[0].at("dry_read"), "14.2");
    EXPECT_THAT(station.verb("import", {"--in", "-", "--on-conflict", "revise"}, other).err,
                HasSubstr("Revised: 1."));
    const auto kept = station.exported();
    EXPECT_EQ(kept.rows[0].at("dry_read"), "14.4");
    EXPECT_EQ(kept.rows[0].at("pressure_hpa"), "1004.0"); // blank in the file: stays
}

TEST(Import, SeveralFilesAreOneTransaction) {
    const Station station;
    put(station.file("a.csv"), "time,dry,wet\n2024-06-01T08:00,14.2,12.1\n");
    put(station.file("b.csv"), "time,dry,wet\n2024-06-02T08:00,14.2,12.1\n");
    const auto stopped =
        station.verb("import", {"--in", station.file("a.csv"), "--in", station.file("absent.csv")});
    EXPECT_EQ(stopped.code, 2);
    EXPECT_EQ(station.exported().rows.size(), 0U);
    EXPECT_EQ(station.verb("import", {"--in", station.file("a.csv"), "--in", station.file("b.csv")}).code, 0);
    EXPECT_EQ(station.exported().rows.size(), 2U);
}

TEST(Import, WhatCannotBeUnderstoodIsRefused) {
    const Station station;
    put(station.file("r.tsv"), "SEF\t0.2.0\n");
    for (const Arguments& arguments : std::vector<Arguments>{{"--in", station.file("r.tsv")},
                                                             {"--in", "-", "--map", "dry"},
                                                             {"--in", "-", "--map", "a=socks"},
                                                             {"--in", "-", "--map", "nowhere=dry"},
                                                             {"--in", "-", "--unit", "k"},
                                                             {"--in", "-", "--decimal", "dot"},
                                                             {"--in", "-", "--zone", "Nowhere"},
                                                             {"--in", "-", "--on-conflict", "ask"},
                                                             {"--in", "-", "--in", "-"},
                                                             {"--in", "-"}}) {
        const auto ran = station.verb("import", arguments, "colour,shape\nred,round\n");
        EXPECT_EQ(ran.code, 2) << ran.err;
        EXPECT_EQ(lines(ran.err).size(), 1U) << ran.err;
    }
}

TEST(Check, MarksWhatCannotBeRight) {
    const Station station;
    ASSERT_EQ(station.verb("import", importing(), kRegister).code, 0);
    const auto ran = station.verb("check", {"--format", "json"});
    ASSERT_EQ(ran.code, 0) << ran.err;
    const auto list = nlohmann::ordered_json::parse(ran.out);
    std::map<std::string, std::string> codeAt;
    for (const auto& finding : list) {
        std::vector<std::string> keys;
        for (const auto& item : finding.items()) {
            keys.push_back(item.key());
        }
        EXPECT_THAT(keys, ElementsAre("time_utc", "local_date", "hour", "code", "severity", "message",
                                      "remedy", "causes"));
        EXPECT_FALSE(finding.at("message").get<std::string>().empty());
        codeAt[finding.at("code")] = finding.at("time_utc");
    }
    EXPECT_EQ(codeAt["wet-above-dry"], "2024-06-02T07:00:00Z");
    EXPECT_EQ(codeAt["no-vapour"], "2024-06-02T19:00:00Z");
    EXPECT_EQ(codeAt["incomplete"], "2024-06-03T07:00:00Z");
    EXPECT_EQ(station.verb("check", {"--strict"}).code, 1);
    // One sound day by itself.
    const auto day =
        station.verb("check", {"--from", "2024-06-01", "--to", "2024-06-01", "--strict", "--format", "csv"});
    EXPECT_EQ(day.code, 0) << day.out;
    EXPECT_EQ(table(day.out).rows.size(), 0U);
    EXPECT_THAT(station.verb("check").out, HasSubstr("wet-above-dry (doubtful): "));
    EXPECT_EQ(station.verb("check", {"--from", "2024-06-02", "--to", "2024-06-01"}).code, 2);
}

TEST(Export, WritesObservationsAndTheirMetadata) {
    const Station station;
    ASSERT_EQ(station.verb("import", importing(), kRegister).code, 0);
    const auto ran = station.verb("export", {"--out", station.file("given.csv")});
    EXPECT_EQ(ran.code, 0) << ran.err;
    const auto written = table(contents(station.file("given.csv")));
    EXPECT_THAT(written.header,
                ElementsAre("time_utc", "local_date", "hour", "utc_offset", "dry_read", "wet_read", "unit",
                            "dry_used_c", "wet_used_c", "wick", "pressure_hpa", "pressure_source",
                            "relative_humidity_pct", "relative_humidity_u95_pct", "dew_point_c",
                            "vapour_pressure_hpa", "weather", "wind_beaufort", "origin", "quality",
                            "quality_code", "set_aside", "findings", "observer", "note", "revision",
                            "max_read", "min_read", "max_min_unit", "wick_care", "whirls", "missing_reason",
                            "from_paper", "paper_book", "paper_page", "read_back", "zone"));
    EXPECT_EQ(written.rows.size(), 6U);
    EXPECT_EQ(written.rows[2].at("set_aside"), "yes");
    EXPECT_EQ(written.rows[2].at("findings"), "wet-above-dry");
    const auto metadata = nlohmann::json::parse(contents(station.file("given.csv-metadata.json")));
    EXPECT_THAT(metadata.dump(), HasSubstr("given.csv"));
    EXPECT_THAT(metadata.dump(), HasSubstr("air_temperature"));
    EXPECT_THAT(metadata.dump(), testing::Not(HasSubstr(station.file("")))); // no path of this machine

    EXPECT_EQ(station.verb("export", {"--month", "2024-06", "--out", station.file("folder/")}).code, 0);
    EXPECT_TRUE(std::filesystem::exists(station.file("folder/test-hill_2024-06-01_2024-06-04.csv")));
    EXPECT_TRUE(
        std::filesystem::exists(station.file("folder/test-hill_2024-06-01_2024-06-04.csv-metadata.json")));
    EXPECT_EQ(filesIn(station.file("folder")), 2U);
    EXPECT_EQ(table(station.verb("export", {"--from", "2024-06-02", "--to", "2024-06-02", "--out", "-"}).out)
                  .rows.size(),
              2U);
    EXPECT_EQ(station.verb("export", {"--month", "June", "--out", "-"}).code, 2);
    EXPECT_EQ(station.verb("export", {"--format", "sef", "--out", "-"}).code, 2);
}

// What export has written comes back into another book as the same readings.
TEST(Export, ComesBackThroughTheImport) {
    const Station station;
    ASSERT_EQ(station.verb("import", importing(), kRegister).code, 0);
    ASSERT_EQ(station.verb("export", {"--out", station.file("all.csv")}).code, 0);
    const Station other;
    const auto ran = other.verb("import", {"--in", station.file("all.csv")});
    ASSERT_EQ(ran.code, 0) << ran.err;
    const auto first = station.exported();
    const auto second = other.exported();
    ASSERT_EQ(first.rows.size(), second.rows.size()) << ran.err;
    for (std::size_t i = 0; i < first.rows.size(); ++i) {
        for (const char* column : {"time_utc", "hour", "dry_read", "wet_read", "pressure_hpa", "wick"}) {
            EXPECT_EQ(first.rows[i].at(column), second.rows[i].at(column)) << column << i;
        }
    }
}

TEST(Report, WritesAllItsFiles) {
    const Station station;
    ASSERT_EQ(station.verb("import", importing(), kRegister).code, 0);
    const auto ran = station.verb("report", {"--month", "2024-06", "--out", station.file("june")});
    ASSERT_EQ(ran.code, 0) << ran.err;
    EXPECT_EQ(lines(ran.out).size(), 7U) << ran.out;
    for (const char* name : {"month.csv", "month.csv-metadata.json", "summary.csv", "report.pdf", "chart.png",
                             "chart.svg", "paragraph.txt"}) {
        const std::string path = station.file(std::string{"june/"} + name);
        ASSERT_TRUE(std::filesystem::exists(path)) << name;
        EXPECT_GT(std::filesystem::file_size(path), 100U) << name;
    }
    EXPECT_EQ(contents(station.file("june/report.pdf")).substr(0, 5), "%PDF-");
    EXPECT_EQ(contents(station.file("june/chart.png")).substr(1, 3), "PNG");
    const auto summary = table(contents(station.file("june/summary.csv")));
    ASSERT_EQ(summary.rows.size(), 3U);
    EXPECT_EQ(summary.rows[0].at("hour"), "08:00");
    EXPECT_EQ(summary.rows[0].at("expected"), "30");
    EXPECT_EQ(summary.rows[2].at("hour"), "all");

    const auto empty = station.verb("report", {"--month", "2023-06", "--out", station.file("empty"),
                                               "--paper", "letter", "--language", "de"});
    EXPECT_EQ(empty.code, 0) << empty.err;
    EXPECT_EQ(filesIn(station.file("empty")), 7U);
    EXPECT_EQ(
        station.verb("report", {"--month", "2024-06", "--out", station.file("x"), "--paper", "slate"}).code,
        2);
    EXPECT_EQ(
        station.verb("report", {"--month", "2024-06", "--out", station.file("x"), "--language", "zz"}).code,
        2);
}

TEST(Form, FilledInItComesBackThroughTheImport) {
    const Station station;
    const auto blank = station.verb("form", {"--month", "2024-06", "--out", "-"});
    ASSERT_EQ(blank.code, 0) << blank.err;
    const auto form = table(blank.out);
    ASSERT_EQ(form.rows.size(), 60U); // two hours on thirty days
    // Somebody fills in three lines, one with ice, and leaves the rest.
    std::string filled = "date,hour,clock,dry,wet,wick,weather,wind,observer,note\n";
    filled += form.rows[0].at("date") + "," + form.rows[0].at("hour") + ",,14.2,12.1,,rain,3,MK,\n";
    filled += form.rows[1].at("date") + "," + form.rows[1].at("hour") + ",,11.0,10.4,,,,MK,\"late, bus\"\n";
    filled += form.rows[59].at("date") + "," + form.rows[59].at("hour") + ",,-1.2,-2.0,ice,,,MK,\n";
    const auto imported = station.verb("import", {"--in", "-"}, filled);
    EXPECT_EQ(imported.code, 0) << imported.err;
    const auto kept = station.exported();
    ASSERT_EQ(kept.rows.size(), 3U);
    EXPECT_EQ(kept.rows[0].at("dry_read"), "14.2");
    EXPECT_EQ(kept.rows[1].at("note"), "late, bus");
    EXPECT_EQ(kept.rows[2].at("wick"), "ice");
    EXPECT_EQ(kept.rows[2].at("local_date"), "2024-06-30");
    const auto pdf = station.verb("form", {"--month", "2024-06", "--out", station.file("form.pdf")});
    EXPECT_EQ(pdf.code, 0) << pdf.err;
    EXPECT_EQ(contents(station.file("form.pdf")).substr(0, 5), "%PDF-");
}

TEST(OnPaper, TableCardAndYearBookAreWritten) {
    const Station station;
    ASSERT_EQ(station.verb("import", importing(), kRegister).code, 0);
    const auto table = station.verb("table", {"--out", station.file("table.pdf"), "--paper", "letter"});
    EXPECT_EQ(table.code, 0) << table.err;
    const auto card = station.verb("card", {"--out", station.file("card.pdf"), "--language", "de"});
    EXPECT_EQ(card.code, 0) << card.err;
    const auto year = station.verb("yearbook", {"--year", "2024", "--out", station.file("year.pdf")});
    EXPECT_EQ(year.code, 0) << year.err;
    const auto empty = station.verb("yearbook", {"--year", "1999", "--out", station.file("empty.pdf")});
    EXPECT_EQ(empty.code, 0) << empty.err;
    EXPECT_THAT(empty.err, HasSubstr("There is no reading in 1999"));
    for (const char* name : {"table.pdf", "card.pdf", "year.pdf", "empty.pdf"}) {
        EXPECT_EQ(contents(station.file(name)).substr(0, 5), "%PDF-") << name;
    }
}

TEST(Sign, WhatWasSignedIsHeldAgainstWhatStands) {
    const Station station;
    ASSERT_EQ(station.verb("import", importing(), kRegister).code, 0);
    const auto done = station.verb("sign", {"--month", "2024-06", "--by", "MK", "--note", "seen"});
    EXPECT_EQ(done.code, 0) << done.err;
    EXPECT_THAT(done.err, HasSubstr("2024-06 is signed off by MK"));
    EXPECT_EQ(station.verb("verify", {}).code, 0);
    EXPECT_EQ(station.verb("sign", {"--month", "2024-06", "--take-back", "--why", "too early"}).code, 0);
    EXPECT_EQ(station.verb("sign", {"--month", "2024-06", "--take-back", "--why", "again"}).code, 2);
    EXPECT_EQ(station.verb("verify", {}).code, 0);
}

TEST(Copies, BackupAndRestoreAreVerifiedAndNeverOverwrite) {
    const Station station;
    ASSERT_EQ(station.verb("import", importing(), kRegister).code, 0);
    ASSERT_EQ(station.verb("backup", {"--out", station.file("copy.wickbook")}).code, 0);
    EXPECT_EQ(station.verb("backup", {"--out", station.file("copy.wickbook")}).code, 3);
    const auto restored =
        run({"restore", "--from", station.file("copy.wickbook"), "--book", station.file("new.wickbook")});
    EXPECT_EQ(restored.code, 0) << restored.err;
    EXPECT_THAT(restored.err, HasSubstr("6 observations"));
    EXPECT_EQ(run({"restore", "--from", station.file("copy.wickbook"), "--book", station.book()}).code, 3);
    const auto first = station.verb("export", {"--out", "-"}).out;
    EXPECT_EQ(run({"export", "--book", station.file("new.wickbook"), "--out", "-"}).out, first);
}

TEST(Verify, FindsAFlippedByteAndForeignFiles) {
    const Station station;
    ASSERT_EQ(station.verb("import", importing(), kRegister).code, 0);
    const auto sound = station.verb("verify");
    EXPECT_EQ(sound.code, 0);
    EXPECT_THAT(sound.out, HasSubstr("sound"));

    // A digit of a stored reading: SQLite's own check passes it.
    std::string bytes = contents(station.book());
    const auto at = bytes.find("142");
    ASSERT_NE(at, std::string::npos);
    bytes[at + 1] = '5';
    put(station.file("flipped.wickbook"), bytes);
    const auto flipped = run({"verify", "--book", station.file("flipped.wickbook")});
    EXPECT_EQ(flipped.code, 1) << flipped.out << flipped.err;
    EXPECT_FALSE(flipped.out.empty());
    EXPECT_THAT(flipped.err, HasSubstr("restore"));
    EXPECT_EQ(contents(station.file("flipped.wickbook")), bytes);
    EXPECT_EQ(run({"backup", "--book", station.file("flipped.wickbook"), "--out", station.file("c")}).code,
              3);

    put(station.file("letter.txt"), "Dear reader\n");
    put(station.file("empty"), "");
    for (const char* name : {"letter.txt", "empty"}) {
        const auto foreign = run({"verify", "--book", station.file(name)});
        EXPECT_EQ(foreign.code, 3) << name << foreign.err;
        EXPECT_EQ(lines(foreign.err).size(), 1U);
    }
    EXPECT_EQ(contents(station.file("empty")), "");
}

TEST(Import, SaysOfAFileThatIsNoTextWhatIsTheMatter) {
    const Station station;
    const auto empty = station.verb("import", {"--in", "-"}, "");
    EXPECT_EQ(empty.code, 2);
    EXPECT_THAT(empty.err, HasSubstr("standard input: the file is empty"));
    const auto binary = station.verb("import", {"--in", "-"}, std::string("time,dry\0,wet\n", 14));
    EXPECT_EQ(binary.code, 2);
    EXPECT_THAT(binary.err, HasSubstr("standard input: the file is no text"));
}

TEST(Table, GivesHumidityForAnInstrument) {
    const auto ran =
        run({"table", "--exposure", "whirled", "--pressure", "1013.25", "--step", "1", "--out", "-"});
    ASSERT_EQ(ran.code, 0) << ran.err;
    bool seen = false;
    bool ice = false;
    for (const Row& row : table(ran.out).rows) {
        ice = ice || row.at("wick") == "ice";
        if (row.at("wick") == "water" && row.at("dry_c") == "23.00" && row.at("depression_c") == "7.00") {
            seen = true;
            // The check pair 23/16: 47.90 % and 11.38 °C (printed tables 48 %; common practice, no source).
            EXPECT_NEAR(std::stod(row.at("relative_humidity_pct")), 47.90, 0.005);
            EXPECT_NEAR(std::stod(row.at("dew_point_c")), 11.38, 0.005);
        }
    }
    EXPECT_TRUE(seen);
    EXPECT_TRUE(ice);
    const Station station;
    EXPECT_EQ(station.verb("table", {"--out", station.file("t.csv")}).code, 0);
    EXPECT_EQ(table(contents(station.file("t.csv"))).rows.at(0).at("exposure"), "screen");
    const auto assumed = run({"table", "--exposure", "whirled", "--out", "-"});
    EXPECT_EQ(assumed.code, 0);
    EXPECT_EQ(table(assumed.out).rows.at(0).at("pressure_hpa"), "1013.250000");
    EXPECT_THAT(assumed.err, HasSubstr("1013.25 hPa, was taken"));
    EXPECT_EQ(
        run({"table", "--exposure", "whirled", "--pressure", "1000", "--elevation", "9", "--out", "-"}).code,
        2);
    EXPECT_EQ(run({"table", "--pressure", "1000", "--out", "-"}).code, 2);
    EXPECT_EQ(
        run({"table", "--exposure", "whirled", "--pressure", "1000", "--out", station.file("t.pdf")}).code,
        0);
    EXPECT_EQ(contents(station.file("t.pdf")).substr(0, 5), "%PDF-");
}
