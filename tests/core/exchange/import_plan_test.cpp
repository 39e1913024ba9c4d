// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_plan.h"
#include "tests/core/exchange/stations.h"

#include <gmock/gmock.h>

#include <filesystem>
#include <fstream>
#include <sstream>

namespace wickbook::exchange {
namespace {

using testing::celsius;
using ::testing::ElementsAre;
using testing::fahrenheit;
using ::testing::IsEmpty;
using ::testing::SizeIs;
using testing::station;

ImportPlan planText(const std::string& text, const ImportOptions& options = {},
                    const record::StationRecord& at = station()) {
    std::istringstream input(text);
    auto plan = planCsvImport(input, "register.csv", at, options);
    EXPECT_TRUE(plan) << (plan ? "" : plan.error().detail);
    return plan ? std::move(*plan) : ImportPlan{};
}

ImportPlan planFile(const std::string& name, const record::StationRecord& at = station()) {
    std::ifstream input(std::filesystem::path(WICKBOOK_TEST_DATA) / "data" / "csv" / name, std::ios::binary);
    EXPECT_TRUE(input.is_open()) << name;
    auto plan = planCsvImport(input, name, at, {});
    EXPECT_TRUE(plan) << name;
    return plan ? std::move(*plan) : ImportPlan{};
}

ImportError errorOf(const std::string& text, const ImportProgress& progress = {}) {
    std::istringstream input(text);
    const auto plan = planCsvImport(input, "register.csv", station(), {}, progress);
    EXPECT_FALSE(plan);
    return plan ? ImportError{ImportErrorKind::Stopped, "none"} : plan.error();
}

/// "2 ragged-row:decimal-comma".
std::vector<std::string> rejects(const ImportPlan& plan) {
    std::vector<std::string> result;
    for (const auto& line : plan.rejected) {
        const auto cells = rejectsRow(line);
        result.push_back(cells[1] + " " + cells[2] + (line.field.empty() ? "" : " " + line.field));
    }
    return result;
}

struct SameTwoReadings {
    std::string file;
    std::string encoding;
    char separator;
};
class Habit : public ::testing::TestWithParam<SameTwoReadings> {};

TEST_P(Habit, GivesTheSameTwoReadings) {
    const auto plan = planFile(GetParam().file);
    EXPECT_THAT(plan.rejected, IsEmpty());
    EXPECT_EQ(plan.format.encoding, GetParam().encoding);
    EXPECT_EQ(plan.format.separator, GetParam().separator);
    ASSERT_THAT(plan.observations, SizeIs(2));
    EXPECT_EQ(plan.observations[0].values.dry.value, celsius(164));
    EXPECT_EQ(plan.observations[0].values.wet.value, celsius(152));
    EXPECT_EQ(plan.observations[0].values.note, "brouillard épais");
    EXPECT_EQ(plan.observations[1].values.dry.value, celsius(-6));
    EXPECT_EQ(plan.observations[1].values.wet.value, celsius(-12));
    EXPECT_EQ(plan.observations[1].line, 3);
    EXPECT_EQ(record::instantText(plan.observations[1].values.instant), "2025-03-02T09:00:00Z");
}
INSTANTIATE_TEST_SUITE_P(Import, Habit,
                         ::testing::Values(SameTwoReadings{"utf8_bom.csv", "UTF-8", ','},
                                           SameTwoReadings{"utf16le.csv", "UTF-16LE", ','},
                                           SameTwoReadings{"utf16be.csv", "UTF-16BE", ','},
                                           SameTwoReadings{"latin1.csv", "Latin-1", ','},
                                           SameTwoReadings{"cr_only.csv", "UTF-8", ','},
                                           SameTwoReadings{"lf.csv", "UTF-8", ','},
                                           SameTwoReadings{"semicolon_comma.csv", "UTF-8", ';'},
                                           SameTwoReadings{"tab.csv", "UTF-8", '\t'}),
                         [](const auto& habit) {
                             return habit.param.file.substr(0, habit.param.file.find('.'));
                         });

TEST(Import, EverySlipCostsItsLineAndSaysWhy) {
    const auto plan = planFile("slips.csv");
    EXPECT_THAT(rejects(plan),
                ElementsAre("3 ragged-row:decimal-comma", "4 ragged-row:too-few-cells",
                            "5 bad-number:grouped-digits pressure", "6 bad-number:not-a-number dry",
                            "7 bad-word wick", "8 bad-number:not-beaufort wind",
                            "9 bad-time:two-digit-year date", "10 bad-time:no-such-date date",
                            "11 bad-time:no-such-clock-time hour", "12 nothing-read dry", "13 no-time hour",
                            "14 nothing-read dry", "15 same-hour-twice date", "16 unreadable:open-quote",
                            "17 nothing-read dry", "20 unreadable:text-after-quote",
                            "21 bad-number:grouped-digits pressure"));
    std::vector<std::int64_t> taken;
    for (const auto& observation : plan.observations) {
        taken.push_back(observation.line);
    }
    EXPECT_THAT(taken, ElementsAre(2, 18, 19, 22));
    EXPECT_EQ(plan.lines, 21);
    EXPECT_EQ(plan.rejected[0].text, "2025-01-02,09:00,4,2,3,8,,1013.2,3,comma for a point");
    EXPECT_EQ(plan.rejected[0].file, "slips.csv");
    EXPECT_EQ(plan.rejected[13].text, "2025-01-13,09:00,4.2,3.8,,,,\"never closed");
    EXPECT_FALSE(plan.observations[1].values.wet.given());
    EXPECT_TRUE(plan.observations[2].values.dry.belowScale);
    EXPECT_EQ(plan.observations[3].values.dry.value, celsius(999)); // implausible comes in as written
}

TEST(Import, ANeighboursRegisterInFahrenheit) {
    const auto plan = planFile("fahrenheit.csv", station("America/New_York", record::HourRule::Clock));
    EXPECT_THAT(plan.rejected, IsEmpty());
    ASSERT_THAT(plan.observations, SizeIs(3));
    EXPECT_EQ(plan.observations[0].values.dry.value, fahrenheit(615));
    EXPECT_EQ(plan.observations[1].values.dry.value, fahrenheit(60, 0));
    EXPECT_FALSE(plan.observations[0].values.pressure); // mmHg is left aside, not taken for hPa
    EXPECT_EQ(plan.columns[4].field, std::nullopt);
    // 1/13 shows that the month stands first; 9:00 in New York in winter is 14 UTC.
    EXPECT_EQ(record::instantText(plan.observations[0].values.instant), "2025-01-03T14:00:00Z");
    EXPECT_EQ(record::instantText(plan.observations[2].values.instant), "2025-01-13T14:00:00Z");
    EXPECT_EQ(plan.observations[1].values.note, "windy; fog and gale");
}

TEST(Import, DatesThatStayInDoubtAreRejected) {
    const std::string head = "date,clock,dry,wet\n";
    EXPECT_THAT(rejects(planText(head + "1/3/2025,9:00,4,3\n2/3/2025,9:00,4,3\n")),
                ElementsAre("2 bad-time:day-or-month date", "3 bad-time:day-or-month date"));
    EXPECT_THAT(planText(head + "1/3/2025,9:00,4,3\n13/3/2025,9:00,4,3\n").observations, SizeIs(2));
    EXPECT_THAT(rejects(planText(head + "1/3/2025,9:00,4,3\n13/3/2025,9:00,4,3\n3/14/2025,9:00,4,3\n")),
                SizeIs(3));
}

TEST(Import, OrderOfTheFileIsKeptWhereDatesWait) {
    const auto plan =
        planText("date,clock,dry,wet\n2025-03-01,9:00,1,1\n2/3/2025,9:00,2,2\n2025-03-03,9:00,3,3\n"
                 "ragged\n2025-03-01,9:00,4,4\n14/3/2025,9:00,5,5\n");
    std::vector<std::int64_t> lines;
    for (const auto& observation : plan.observations) {
        lines.push_back(observation.line);
    }
    EXPECT_THAT(lines, ElementsAre(2, 3, 4, 7));
    EXPECT_THAT(rejects(plan), ElementsAre("5 ragged-row:too-few-cells", "6 same-hour-twice date"));
}

TEST(Import, AClockChangeWeekend) {
    // 09 UTC becomes 10 by the clock: no gap and no duplicate (story 2 of the job).
    const auto plan =
        planText("time,dry,wet\n2025-03-29T09:00,8,6\n2025-03-29T21:00,7,6\n2025-03-30T01:30,5,4\n"
                 "2025-03-30T10:00,8,6\n2025-03-30T22:00,7,6\n");
    EXPECT_THAT(rejects(plan), ElementsAre("4 impossible-time time"));
    std::string hours;
    for (const auto& observation : plan.observations) {
        const auto& hour = observation.values.hour;
        hours += hour ? record::dateText(hour->date) + " " + record::hourText(hour->hour) + "; " : "extra; ";
    }
    EXPECT_EQ(hours, "2025-03-29 09:00; 2025-03-29 21:00; 2025-03-30 09:00; 2025-03-30 21:00; ");
}

TEST(Import, ExtraReadingsAndTheSameMoment) {
    const auto plan =
        planText("time,dry,wet\n2025-03-01T09:00Z,4,3\n2025-03-01T09:50Z,4,3\n2025-03-01T15:00Z,6,4\n"
                 "2025-03-01T15:01Z,6,4\n2025-03-01T15:00Z,6,4\n");
    EXPECT_THAT(rejects(plan), ElementsAre("3 same-hour-twice time", "6 same-hour-twice:same-moment time"));
    ASSERT_THAT(plan.observations, SizeIs(3));
    EXPECT_FALSE(plan.observations[1].values.hour);
}

TEST(Import, QuotedDecimalCommaIsNoRaggedRow) {
    const auto plan =
        planText("time,dry,wet\n2025-03-01T09:00Z,\"4,2\",\"3,8\"\n2025-03-02T09:00Z,4.2,3.8,,\n");
    EXPECT_THAT(plan.rejected, IsEmpty());
    EXPECT_EQ(plan.observations.at(0).values.dry.value, celsius(42));
}

TEST(Import, TextStaysText) {
    const auto plan = planText("time,dry,wet,note\n2025-03-01T09:00Z,4,3,=HYPERLINK(1)\n"
                               "2025-03-02T09:00Z,4,3,\"<b>%s'; DROP TABLE\nx\"\n");
    EXPECT_EQ(plan.observations.at(0).values.note, "=HYPERLINK(1)");
    EXPECT_EQ(plan.observations.at(1).values.note, "<b>%s'; DROP TABLE\nx");
}

TEST(Import, WhatStopsAPlan) {
    EXPECT_EQ(errorOf("").kind, ImportErrorKind::EmptyFile);
    EXPECT_EQ(errorOf("\n\r\n").kind, ImportErrorKind::EmptyFile);
    EXPECT_EQ(errorOf("dry,wet\n1,2\n").kind, ImportErrorKind::NoTimeColumn);
    EXPECT_EQ(errorOf("time,rain\n1,2\n").kind, ImportErrorKind::NoDryOrWetColumn);
    const auto binary = errorOf(std::string("SQLite format 3\0\x10\0", 18));
    EXPECT_EQ(binary.kind, ImportErrorKind::NotReadable);
    EXPECT_EQ(binary.detail, "nul-byte");
    std::ifstream folder("/");
    EXPECT_EQ(planCsvImport(folder, "/", station(), {}).error().kind, ImportErrorKind::NotReadable);
}

TEST(Import, CanBeStopped) {
    std::string text = "time,dry,wet\n";
    for (int i = 0; i < 3000; ++i) {
        text += "2025-03-01T09:00Z,4,3\n";
    }
    int asked = 0;
    const auto error = errorOf(text, [&asked](std::int64_t bytes) {
        EXPECT_GT(bytes, 0);
        return ++asked < 3;
    });
    EXPECT_EQ(error.kind, ImportErrorKind::Stopped);
    EXPECT_EQ(asked, 3);
}

TEST(Import, AHeaderAloneIsTold) {
    EXPECT_EQ(errorOf("time,dry,wet\n").kind, ImportErrorKind::NoLines);
}

TEST(Import, TheHeadOfAFileAlone) {
    ImportOptions options;
    options.mostLines = 2;
    std::istringstream input("time,dry,wet\n2025-03-01T09:00Z,4,3\n2025-03-02T09:00Z,4,3\n"
                             "2025-03-03T09:00Z,4,3\n2025-03-04T09:00Z,4,3\n");
    const auto plan = planCsvImport(input, "r.csv", testing::station(), options);
    ASSERT_TRUE(plan);
    EXPECT_TRUE(plan->cut);
    EXPECT_EQ(plan->lines, 3);
}

TEST(Import, TheLayoutGivenGoesBeforeNames) {
    ImportOptions options;
    options.layout = ColumnLayout{ImportField::Time, ImportField::Wet, ImportField::Dry, std::nullopt};
    std::istringstream input("time,dry,wet,note\n2025-03-01T09:00Z,3,4,left aside\n");
    const auto plan = planCsvImport(input, "r.csv", testing::station(), options);
    ASSERT_TRUE(plan);
    const auto& values = plan->observations.at(0).values;
    EXPECT_EQ(values.dry.value, testing::celsius(4, 0));
    EXPECT_EQ(values.wet.value, testing::celsius(3, 0));
    EXPECT_EQ(values.note, "");
}

TEST(Import, AFileWithoutNames) {
    ImportOptions options;
    options.headless = true;
    options.separator = ';';
    options.layout = ColumnLayout{ImportField::Date, ImportField::Clock, ImportField::Dry, ImportField::Wet};
    std::istringstream input("1.3.2025;9:05;4,2;3,1\n2.3.2025;9:00;5;4\n");
    const auto plan = planCsvImport(input, "r.csv", testing::station(), options);
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->lines, 2);
    ASSERT_EQ(plan->observations.size(), 2U);
    EXPECT_EQ(plan->observations[0].line, 1);
    EXPECT_EQ(plan->observations[0].values.dry.value, testing::celsius(42));
}

TEST(Import, DayOrMonthIsAskedAndThenKnown) {
    const std::string text = "date,hour,dry,wet\n3/4/2025,9,4,3\n5/4/2025,9,4,3\n";
    const auto unsure = planText(text);
    ASSERT_EQ(unsure.rejected.size(), 2U);
    EXPECT_EQ(unsure.rejected[0].detail, "day-or-month");
    for (const auto& [order, expected] :
         {std::pair{DateOrder::DayFirst, "2025-04-03"}, std::pair{DateOrder::MonthFirst, "2025-03-04"}}) {
        ImportOptions options;
        options.dateOrder = order;
        std::istringstream input(text);
        const auto plan = planCsvImport(input, "r.csv", testing::station(), options);
        ASSERT_TRUE(plan);
        ASSERT_EQ(plan->observations.size(), 2U);
        EXPECT_EQ(record::dateText(plan->observations[0].values.hour->date), expected);
    }
}

TEST(Import, RejectsFileKeepsEverything) {
    EXPECT_THAT(rejectsHeader(), ElementsAre("file", "line", "reason", "field", "value", "text"));
    const auto plan = planText("time,dry,wet,note\n2025-03-01T09:00Z,x,3,\"a,\nb\"\n");
    EXPECT_THAT(rejectsRow(plan.rejected.at(0)), ElementsAre("register.csv", "2", "bad-number:not-a-number",
                                                             "dry", "x", "2025-03-01T09:00Z,x,3,\"a,\nb\""));
}

TEST(Import, AHundredThousandLines) {
    std::string text = "time_utc,dry_c,wet_c\n";
    const record::Instant first{date::sys_days{date::year{1900} / 1 / 1} + std::chrono::hours{9}};
    for (int i = 0; i < 100'000; ++i) {
        text += record::instantText(first + i * std::chrono::hours{12}) + ",16.4,15.2\n";
    }
    const auto plan = planText(text);
    EXPECT_EQ(plan.observations.size(), 100'000U);
    EXPECT_THAT(plan.rejected, IsEmpty());
}

} // namespace
} // namespace wickbook::exchange
