// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/month_facts.h"
#include "core/report/month_report.h"
#include "core/report/summary_table.h"
#include "tests/core/climate/month_builder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace wickbook::report {
namespace {

using namespace climate::testing;
using ::testing::ElementsAre;

constexpr auto kSeptember = 2025_y / 9;

/// A series for buildMonthReport, with history counts as a book would give them.
class ReportTest : public ::testing::Test {
protected:
    record::Observation pair(date::year_month_day day, record::HourOfDay hour, double dry, double wet) const {
        record::Observation values;
        values.hour = record::ObservingHour{record::StationDate{day}, hour};
        values.instant = record::momentOf(station_, *values.hour).value();
        values.zone = "Europe/London";
        values.offset = station_.latestPeriod().zone.offsetAt(values.instant);
        values.dry = bulb(dry);
        values.wet = bulb(wet);
        values.wick = record::WickState::Water;
        return values;
    }

    void add(const record::Observation& values, int revisions = 1) {
        record::StoredObservation stored;
        stored.stamp.sequence = ++sequence_;
        stored.stamp.subject = record::Uuid::fromSeed(3, static_cast<std::uint64_t>(sequence_));
        stored.revisionCount = revisions;
        stored.values = values;
        series_.push_back(record::deriveReading(std::move(stored), station_));
    }

    /// Every hour of the month, a quiet one: no two pairs alike in a row, nothing for a rule to say.
    void fill(date::year_month month, unsigned from, unsigned to) {
        for (unsigned day = from; day <= to; ++day) {
            const double wobble = 0.1 * day; // no two days alike: a copied day would be marked
            add(pair(month / date::day{day}, 9h, 15.0 + wobble, 12.5 + wobble));
            add(pair(month / date::day{day}, 21h, 12.0 + wobble, 10.5 + wobble));
        }
    }

    MonthReport build(date::year_month month, std::optional<record::Instant> now = {}) {
        std::sort(series_.begin(), series_.end(),
                  [](const record::DerivedReading& a, const record::DerivedReading& b) {
                      return a.values().instant < b.values().instant;
                  });
        return buildMonthReport(station_, month, series_, checks::Limits{}, now);
    }

    record::StationRecord station_{stationFacts({9h, 21h}, "Europe/London")};
    std::vector<record::DerivedReading> series_;
    int sequence_ = 0;
};

TEST_F(ReportTest, AWholeMonthHasALineForEveryHour) {
    fill(2025_y / 8, 29, 31);
    fill(kSeptember, 1, 30);
    fill(2025_y / 10, 1, 3);
    const MonthReport report = build(kSeptember);
    EXPECT_EQ(report.readings.size(), 60U);
    ASSERT_EQ(report.lines.size(), 60U);
    EXPECT_TRUE(std::all_of(report.lines.begin(), report.lines.end(),
                            [](const MonthLine& line) { return line.reading && !line.extra; }));
    EXPECT_EQ(report.summary.all.n, 60);
    EXPECT_EQ(report.corrected, 0);
    EXPECT_EQ(report.openQueries, 0);
    EXPECT_TRUE(report.typicalHumidityU95);
}

TEST_F(ReportTest, TypicalUncertaintyIsTheMedianOfTheBudgets) {
    // 23 / 16 °C at sea level has the same budget each time; a single odd reading does not move the median.
    for (unsigned day = 1; day <= 9; day += 2) {
        add(pair(kSeptember / date::day{day}, 9h, 23.0, 16.0));
    }
    add(pair(kSeptember / 11, 9h, 5.0, 3.0));
    const MonthReport report = build(kSeptember);
    ASSERT_TRUE(report.typicalHumidityU95);
    EXPECT_DOUBLE_EQ(*report.typicalHumidityU95,
                     report.readings.front().reading.derivation->uncertainty->relativeHumidityU95);
    // Whirled, tenths, pressure from the elevation: about ± 1.5 % (our budget, psychrometry's own tests).
    EXPECT_NEAR(*report.typicalHumidityU95, 1.5, 0.3);
    EXPECT_TRUE(report.typicalDewPointU95);
}

TEST_F(ReportTest, LinesHoldMissedHoursExtrasAndReadingsOutsideThePlan) {
    add(pair(kSeptember / 1, 9h, 15.0, 13.0));
    record::Observation extra = pair(kSeptember / 1, 9h, 18.0, 14.0);
    extra.hour.reset();
    extra.instant += 6h + 7min;
    add(extra);
    record::Observation odd = pair(kSeptember / 1, 9h, 16.0, 13.5);
    odd.hour->hour = 18h;
    odd.instant += 9h;
    add(odd);
    const MonthReport report = build(kSeptember);
    ASSERT_EQ(report.lines.size(), 62U);
    EXPECT_FALSE(report.lines[0].extra);
    EXPECT_TRUE(report.lines[1].extra);
    EXPECT_EQ(report.lines[1].hour, (record::ObservingHour{record::StationDate{kSeptember / 1}, 15h + 7min}));
    EXPECT_TRUE(report.lines[2].extra);
    EXPECT_EQ(report.lines[2].hour.hour, record::HourOfDay{18h});
    EXPECT_EQ(report.lines[3].reading, nullptr);
    EXPECT_EQ(record::instantText(report.lines[3].instant), "2025-09-01T20:00:00Z"); // 21 h summer time
    EXPECT_EQ(monthFacts(report).extraReadings, 2);
    EXPECT_EQ(report.summary.all.n, 1);
}

TEST_F(ReportTest, AnHourBelongsToItsDateThoughReadAfterMidnight) {
    record::StationFacts facts = stationFacts({9h, 23h}, "Europe/London");
    station_ = record::StationRecord(facts);
    record::Observation late = pair(2025_y / 8 / 31, 23h, 15.0, 13.0);
    late.instant += 90min; // 1 September, half past midnight
    add(late);
    EXPECT_EQ(build(2025_y / 8).summary.all.n, 1);
    EXPECT_EQ(build(kSeptember).summary.all.n, 0);
    EXPECT_TRUE(build(kSeptember).readings.empty());
}

TEST_F(ReportTest, MarkedReadingsAreSetAsideUntilJudged) {
    fill(kSeptember, 1, 10);
    add(pair(kSeptember / 11, 9h, 12.0, 17.0));
    record::Observation judged = pair(kSeptember / 12, 9h, 12.0, 17.5);
    judged.quality = record::Quality::Erroneous;
    add(judged, 2);
    record::Observation doubted = pair(kSeptember / 13, 9h, 15.0, 13.0);
    doubted.quality = record::Quality::Doubtful;
    add(doubted, 2);
    record::Observation sound = pair(kSeptember / 14, 9h, 15.0, 13.2);
    sound.origin = record::Origin::Corrected;
    add(sound, 3);
    record::Observation estimate = pair(kSeptember / 15, 9h, 15.0, 13.1);
    estimate.origin = record::Origin::Estimated;
    add(estimate);
    const MonthReport report = build(kSeptember);
    EXPECT_EQ(report.summary.hours.at(0).setAside, 4);
    EXPECT_EQ(report.summary.hours.at(0).n, 11);
    EXPECT_EQ(report.openQueries, 1);
    EXPECT_EQ(report.corrected, 3);
    const MonthFacts facts = monthFacts(report);
    EXPECT_EQ(facts.setAside, 4);
    EXPECT_EQ(facts.openQueries, 1);
    EXPECT_EQ(facts.corrected, 3);
    EXPECT_EQ(facts.n + facts.setAside + facts.missing, facts.expected);
}

TEST_F(ReportTest, WithdrawnReadingsAreGone) {
    record::Observation values = pair(kSeptember / 1, 9h, 15.0, 13.0);
    values.withdrawn = true;
    add(values, 2);
    const MonthReport report = build(kSeptember);
    EXPECT_TRUE(report.readings.empty());
    EXPECT_EQ(report.summary.all.missing, 60);
    EXPECT_EQ(report.corrected, 0);
}

TEST_F(ReportTest, HoursAheadAreToCome) {
    fill(kSeptember, 1, 5);
    const MonthReport report = build(kSeptember, record::Instant{date::sys_days{2025_y / 9 / 6}} + 12h);
    EXPECT_EQ(report.summary.all.expected, 11);
    EXPECT_EQ(report.summary.all.missing, 1);
    EXPECT_EQ(report.summary.hoursToCome, 49);
    EXPECT_EQ(report.lines.size(), 60U);
    EXPECT_FALSE(report.lines[10].toCome);
    EXPECT_TRUE(report.lines[11].toCome);
    const MonthFacts facts = monthFacts(report);
    EXPECT_FALSE(facts.monthOver);
    EXPECT_EQ(facts.withheld.size(), 2U);
    EXPECT_FALSE(facts.meanHumidity);
}

TEST_F(ReportTest, ACopyPointsIntoItsOwnReadings) {
    fill(kSeptember, 1, 3);
    MonthReport original = build(kSeptember);
    MonthReport copy = original;
    MonthReport assigned;
    assigned = original;
    original = MonthReport{};
    for (const MonthReport* report : {&copy, &assigned}) {
        ASSERT_NE(report->lines.front().reading, nullptr);
        EXPECT_EQ(report->lines.front().reading, report->readings.data());
        EXPECT_EQ(report->lines.at(5).reading, report->readings.data() + 5);
        EXPECT_EQ(report->lines.at(6).reading, nullptr);
    }
}

TEST_F(ReportTest, EmptyMonth) {
    const MonthReport report = build(2024_y / 2);
    EXPECT_EQ(report.lines.size(), 58U);
    EXPECT_FALSE(report.typicalHumidityU95);
    EXPECT_FALSE(report.typicalDewPointU95);
    const auto rows = summaryRows(report.summary);
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows.back().back(), "nothing-read");
}

// The columns others rely on, in their order.
TEST(SummaryTable, HeaderIsThePromisedOne) {
    EXPECT_THAT(summaryHeader(),
                ElementsAre("hour", "expected", "n", "missing", "set_aside", "mean_dry_c", "mean_wet_c",
                            "mean_vapour_pressure_hpa", "dew_point_of_mean_vapour_pressure_c",
                            "mean_dew_point_c", "mean_relative_humidity_pct", "highest_relative_humidity_pct",
                            "highest_relative_humidity_at", "lowest_relative_humidity_pct",
                            "lowest_relative_humidity_at", "highest_dew_point_c", "highest_dew_point_at",
                            "lowest_dew_point_c", "lowest_dew_point_at", "days_at_or_above_95",
                            "days_at_or_below_40", "mean_withheld_because"));
}

TEST_F(ReportTest, SummaryRowsOfASaturatedMonth) {
    // Saturated air: dew point = dry bulb, 100 % (common practice, no source), so the cells are those typed.
    for (unsigned day = 1; day <= 30; ++day) {
        add(pair(kSeptember / date::day{day}, 9h, day == 4 ? 12.0 : 10.0, day == 4 ? 12.0 : 10.0));
        series_.back().stored.values.quality =
            record::Quality::Sound; // the same pair running would be a note
    }
    const auto rows = summaryRows(build(kSeptember).summary);
    ASSERT_EQ(rows.size(), 3U);
    for (const auto& row : rows) {
        EXPECT_EQ(row.size(), summaryHeader().size());
    }
    const auto cell = [&](std::size_t row, std::string_view name) {
        const auto header = summaryHeader();
        return rows[row].at(
            static_cast<std::size_t>(std::find(header.begin(), header.end(), name) - header.begin()));
    };
    EXPECT_EQ(cell(0, "hour"), "09:00");
    EXPECT_EQ(cell(1, "hour"), "21:00");
    EXPECT_EQ(cell(2, "hour"), "all");
    EXPECT_EQ(cell(0, "n"), "30");
    EXPECT_NEAR(std::stod(cell(0, "mean_dry_c")), (29 * 10.0 + 12.0) / 30, 1e-6);
    EXPECT_EQ(cell(0, "mean_relative_humidity_pct"), "100.000000");
    EXPECT_EQ(cell(0, "highest_dew_point_c"), "12.000000");
    EXPECT_EQ(cell(0, "highest_dew_point_at"), "2025-09-04T09:00");
    EXPECT_EQ(cell(0, "lowest_dew_point_at"), "2025-09-01T09:00"); // of equal ones the earliest
    EXPECT_EQ(cell(0, "days_at_or_above_95"), "30");
    EXPECT_EQ(cell(0, "mean_withheld_because"), "");
    EXPECT_EQ(cell(1, "n"), "0");
    EXPECT_EQ(cell(1, "missing"), "30");
    EXPECT_EQ(cell(1, "mean_dry_c"), "");
    EXPECT_EQ(cell(1, "highest_dew_point_at"), "");
    EXPECT_EQ(cell(1, "mean_withheld_because"), "nothing-read");
    EXPECT_EQ(cell(2, "mean_withheld_because"), "nothing-read");
    EXPECT_EQ(cell(2, "expected"), "60");
    EXPECT_EQ(cell(2, "highest_dew_point_at"), "2025-09-04T09:00");
}

TEST_F(ReportTest, FactsForTheNewsletter) {
    fill(kSeptember, 1, 30);
    record::WeatherSet fog;
    fog.add(record::Weather::Fog);
    series_.at(6).stored.values.weather = fog;
    const MonthReport report = build(kSeptember);
    const MonthFacts facts = monthFacts(report);
    EXPECT_EQ(facts.stationName, "Testfield");
    EXPECT_FALSE(facts.invented);
    EXPECT_TRUE(facts.monthOver);
    EXPECT_TRUE(facts.withheld.empty());
    EXPECT_EQ(facts.meanHumidity, report.summary.all.meanHumidity);
    EXPECT_TRUE(facts.meanHumidity);
    EXPECT_EQ(facts.humidityU95, report.typicalHumidityU95);
    EXPECT_EQ(facts.lowestHumidity->at.hour, record::HourOfDay{9h});
    EXPECT_EQ(facts.highestHumidity->at.hour, record::HourOfDay{21h});
    EXPECT_EQ(facts.daysWithFog, 1);
    EXPECT_EQ(facts.highThreshold, 95);
}

} // namespace
} // namespace wickbook::report
