// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/file_head.h"
#include "core/exchange/sef_join.h"
#include "core/exchange/sef_reader.h"
#include "tests/core/exchange/stations.h"

#include <gmock/gmock.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <random>

/// The Station Exchange Format, version 1.0.0 (Copernicus Climate Change Service). Files in tests/data/sef
/// are of the format's form and of invented values; the real ones are outside the project.

namespace wickbook::exchange {
namespace {

using testing::celsius;
using ::testing::ElementsAre;
using testing::fahrenheit;
using ::testing::IsEmpty;
using ::testing::SizeIs;

tl::expected<SefFile, ImportError> readFile(const std::filesystem::path& path) {
    std::ifstream input(path, std::ios::binary);
    return readSef(input, path.filename().string());
}

std::filesystem::path invented(const std::string& name) {
    return std::filesystem::path(WICKBOOK_TEST_DATA) / "data" / "sef" / name;
}

SefFile sef(const std::string& name) {
    auto file = readFile(invented(name));
    EXPECT_TRUE(file) << name;
    return file ? std::move(*file) : SefFile{};
}

ImportErrorKind errorOf(const std::string& name) {
    const auto file = readFile(invented(name));
    EXPECT_FALSE(file) << name;
    return file ? ImportErrorKind::Stopped : file.error().kind;
}

tl::expected<ImportPlan, ImportError> joined(const std::vector<std::string>& names) {
    std::vector<SefFile> files;
    for (const auto& name : names) {
        files.push_back(sef(name));
    }
    return joinSef(files, testing::station());
}

std::vector<std::string> refusals(const std::vector<RejectedLine>& lines) {
    std::vector<std::string> result;
    for (const auto& line : lines) {
        result.push_back(std::to_string(line.line) + " " + std::string(reasonName(line.reason)) +
                         (line.detail.empty() ? "" : ":" + line.detail) + " " + line.field + " " +
                         line.value);
    }
    return result;
}

TEST(Sef, HeaderIsRead) {
    const auto file = sef("mill_ta.tsv");
    EXPECT_EQ(file.header.version, "1.0.0");
    EXPECT_EQ(file.header.id, "Invented_Mill");
    EXPECT_EQ(file.header.latitude, "52.1");
    EXPECT_EQ(file.header.units, "C");
    EXPECT_EQ(file.header.meta, "Data policy=invented");
    EXPECT_EQ(file.variable, SefVariable::DryBulb);
    EXPECT_EQ(file.lines, 7);
    EXPECT_EQ(file.encoding, "UTF-8");
}

TEST(Sef, TheOriginalIsTheReadingWhereItAgrees) {
    const auto rows = sef("mill_ta.tsv").rows;
    ASSERT_THAT(rows, SizeIs(7));
    EXPECT_EQ(rows[0].temperature, fahrenheit(615));
    EXPECT_EQ(rows[1].temperature, fahrenheit(50, 0)); // 10 °C
    EXPECT_THAT(rows[0].remarks, ElementsAre("orig.time=9h"));
    EXPECT_TRUE(rows[2].flagged);
    EXPECT_FALSE(rows[3].given());
    // 64.2 °F is 17.9 °C: a digit of one of the two is wrong. Both stay.
    EXPECT_EQ(rows[5].temperature, celsius(79));
    EXPECT_THAT(rows[5].remarks, ElementsAre("Orig=64.2F", "orig.time=21h"));
    EXPECT_EQ(rows[6].temperature, celsius(88));
    EXPECT_EQ(record::instantText(rows[0].instant), "1912-03-01T09:00:00Z");
}

TEST(Sef, Units) {
    const auto kelvin = sef("kelvin_ta.tsv").rows;
    ASSERT_THAT(kelvin, SizeIs(2));
    EXPECT_EQ(kelvin[0].temperature, celsius(1640, 2)); // 289.55 − 273.15
    EXPECT_EQ(kelvin[1].temperature, celsius(-25, 2));  // 272.9 − 273.15
    EXPECT_EQ(sef("fahrenheit_tb.tsv").rows.at(0).temperature, fahrenheit(575));
    EXPECT_EQ(sef("pascal_p.tsv").rows.at(0).pressure, (units::Decimal{100840, 2}));
    EXPECT_EQ(errorOf("mmhg_p.tsv"), ImportErrorKind::SefUnits);
}

TEST(Sef, WhatCannotBeReadIsRefusedAsAWhole) {
    EXPECT_EQ(errorOf("version_2.tsv"), ImportErrorKind::SefVersion);
    EXPECT_EQ(errorOf("julian_ta.tsv"), ImportErrorKind::SefCalendar);
    EXPECT_EQ(readSef("").error().kind, ImportErrorKind::EmptyFile);
    EXPECT_EQ(readSef("SEF\t1.0.0\nID\tx\nNmae\ty\n").error(),
              (ImportError{ImportErrorKind::SefHeader, "3"}));
    EXPECT_EQ(readSef("SEF\t1.0.0\n").error(), (ImportError{ImportErrorKind::SefHeader, "2"}));
}

TEST(Sef, OneSlipCostsOneLine) {
    const auto file = sef("slips_ta.tsv");
    EXPECT_EQ(file.lines, 12);
    EXPECT_THAT(refusals(file.rejected),
                ElementsAre("14 bad-time:no-such-date Day 1912-2-30",
                            "15 bad-time:no-such-clock-time Hour 25",
                            "16 bad-time:no-such-clock-time Minute 60",
                            "17 bad-word:not-a-moment Period p1day", "18 bad-number:not-a-number Value 8,4",
                            "19 bad-number:not-a-number Value 1e3", "20 ragged-row:too-few-cells  4",
                            "21 bad-time:not-a-time Month Mar", "25 ragged-row:too-many-cells  10"));
    EXPECT_EQ(file.rejected.front().text, "1912\t2\t30\t9\t0\t0\t8.4\t");
    // 24 h of the first is 0 h of the second; the second value for it is told, not taken.
    std::vector<SefFile> files{file};
    const auto plan = joinSef(files, testing::station());
    ASSERT_TRUE(plan);
    ASSERT_THAT(plan->observations, SizeIs(1));
    EXPECT_EQ(record::instantText(plan->observations[0].values.instant), "1912-03-02T00:00:00Z");
    EXPECT_EQ(plan->observations[0].values.dry.value, celsius(-84));
    EXPECT_EQ(plan->observations[0].values.note, "note with \"quotes; =");
    EXPECT_THAT(plan->rejected, SizeIs(11));
}

TEST(Sef, FilesOfOneStationAreJoinedOnTime) {
    const auto plan = joined({"mill_ta.tsv", "mill_tb.tsv", "mill_p.tsv", "mill_rh.tsv", "mill_ta_mean.tsv"});
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->lines, 16);
    std::vector<std::string> readings;
    for (const auto& planned : plan->observations) {
        const auto& o = planned.values;
        const auto text = [](const std::optional<units::ReadTemperature>& t) {
            return t ? t->value.toText() + (t->unit == units::TemperatureUnit::Fahrenheit ? "F" : "C") : "-";
        };
        readings.push_back(record::instantText(o.instant) + " " + text(o.dry.value) + " " +
                           text(o.wet.value) + " " + (o.pressure ? o.pressure->toText() : "-") + " " +
                           std::string(record::qualityName(o.quality)));
    }
    EXPECT_THAT(readings, ElementsAre("1912-03-01T09:00:00Z 61.5F 57F 1008.4 not-judged",
                                      "1912-03-01T21:00:00Z 50F 47.5F 1005.1 not-judged",
                                      "1912-03-02T09:00:00Z 54F 50.5F - doubtful",
                                      "1912-03-02T12:00:00Z - - 1003 not-judged",
                                      "1912-03-02T21:00:00Z - 44F - not-judged",
                                      "1912-03-03T09:00:00Z 49F - - not-judged",
                                      "1912-03-03T21:00:00Z 7.9C 43F - not-judged",
                                      "1912-03-04T09:00:00Z 8.8C - - not-judged"));
    const auto& first = plan->observations.front();
    EXPECT_EQ(first.file, "mill_ta.tsv");
    EXPECT_EQ(first.line, 14);
    EXPECT_EQ(first.values.note, "orig.time=9h; p orig=29.78in; atb=58F");
    EXPECT_EQ(first.values.wick, record::WickState::NotGiven);
    EXPECT_THAT(refusals(plan->rejected), ElementsAre("18 no-time Hour NA"));
    ASSERT_THAT(plan->aside, SizeIs(2));
    EXPECT_EQ(plan->aside[0].word, "rh");
    EXPECT_EQ(plan->aside[1].why, "statistic");
}

TEST(Sef, AnIceBulbSaysThatTheWickWasIce) {
    const auto plan = joined({"ice_ibt.tsv"});
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->observations.at(0).values.wick, record::WickState::Ice);
    EXPECT_EQ(plan->observations.at(0).values.wet.value, celsius(-31));
}

TEST(Sef, StationsAreNotMixed) {
    EXPECT_EQ(joined({"mill_ta.tsv", "elsewhere_tb.tsv"}).error().kind, ImportErrorKind::SefStationsDiffer);
    EXPECT_EQ(joined({"mill_rh.tsv"}).error().kind, ImportErrorKind::SefNothing);
}

TEST(Sef, IsKnownByItsFirstLine) {
    EXPECT_EQ(fileKindOf("SEF\t1.0.0\n"), FileKind::Sef);
    EXPECT_EQ(fileKindOf("\xEF\xBB\xBFSEF\t1.0.0\n"), FileKind::Sef);
    EXPECT_EQ(fileKindOf("time,dry,wet\n"), FileKind::Csv);
    EXPECT_EQ(fileKindOf("SEFTON,dry\n"), FileKind::Csv);
    EXPECT_EQ(fileKindOf(""), FileKind::Empty);
    EXPECT_EQ(fileKindOf(std::string_view{"PK\x03\x04", 4}), FileKind::Binary);
    EXPECT_EQ(fileKindOf("\xFF\xFEt"), FileKind::Csv);
}

TEST(Sef, EndlessLinesAreLetGoPieceByPiece) {
    std::ifstream input(invented("mill_ta.tsv"), std::ios::binary);
    std::string text{std::istreambuf_iterator<char>(input), {}};
    text += std::string(3U << 20U, '7') + "\n1912\t3\t5\t9\t0\t0\t8.8\t\n";
    const auto file = readSef(text);
    ASSERT_TRUE(file);
    EXPECT_THAT(refusals(file->rejected), ElementsAre("21 unreadable:line-too-long  "));
    EXPECT_LE(file->rejected[0].text.size(), kLongestErrorText);
    EXPECT_THAT(file->rows, SizeIs(8));
}

TEST(Sef, MayBeStopped) {
    std::ifstream input(invented("mill_ta.tsv"), std::ios::binary);
    std::string text{std::istreambuf_iterator<char>(input), {}};
    for (int i = 0; i < 1000; ++i) {
        text += "1912\t4\t1\t9\t0\t0\t8.8\t\n";
    }
    std::istringstream stream(text);
    EXPECT_EQ(readSef(stream, "x", [](std::int64_t) { return false; }).error().kind,
              ImportErrorKind::Stopped);
}

/// Bytes changed at random (seeded): whatever comes of it, each line is a row or a refusal.
TEST(Sef, BrokenBytesNeverGetLost) {
    std::ifstream input(invented("mill_ta.tsv"), std::ios::binary);
    const std::string sound{std::istreambuf_iterator<char>(input), {}};
    std::mt19937 random(20);
    const std::string marks = "\t\n\r|=-.0\x00\xFF"
                              "9N";
    for (int round = 0; round < 3000; ++round) {
        std::string text = sound;
        for (int change = 0; change < 4; ++change) {
            text[random() % text.size()] = marks[random() % marks.size()];
        }
        const auto file = readSef(text);
        if (file && file->variable) {
            EXPECT_EQ(static_cast<std::int64_t>(file->rows.size() + file->rejected.size()), file->lines);
            std::vector<SefFile> files{*file};
            EXPECT_TRUE(joinSef(files, testing::station()));
        }
    }
}

/// The register that the merged Rosario file was made of, as the data rescue service gives it.
TEST(Sef, RosarioAsPublished) {
    const char* folder = std::getenv("WICKBOOK_DATASETS");
    const std::filesystem::path datasets(folder == nullptr ? WICKBOOK_DATASETS : folder);
    std::vector<SefFile> files;
    std::error_code ignored;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(datasets, ignored)) {
        const auto name = entry.path().filename().string();
        if (name.find("Rosario") != std::string::npos && entry.path().extension() == ".tsv") {
            auto file = readFile(entry.path());
            ASSERT_TRUE(file) << name;
            files.push_back(std::move(*file));
        }
    }
    if (files.empty()) {
        GTEST_SKIP()
            << "No SEF files of Rosario (*Rosario*_ta.tsv, _tb.tsv, _p.tsv) under WICKBOOK_DATASETS.";
    }
    const auto plan = joinSef(files, testing::station("America/Argentina/Cordoba"));
    ASSERT_TRUE(plan);
    RecordProperty("planned", static_cast<int>(plan->observations.size()));
    EXPECT_EQ(plan->observations.front().values.dry.value, celsius(243));
    EXPECT_EQ(record::instantText(plan->observations.front().values.instant), "1886-03-18T12:17:00Z");
}

} // namespace
} // namespace wickbook::exchange
