// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/observing_hours.h"

#include <gtest/gtest.h>

namespace {

using namespace wickbook;
using namespace wickbook::record;
using namespace std::chrono_literals;
using namespace date::literals;

StationFacts station(const char* zone, std::vector<HourOfDay> hours, HourRule rule) {
    NewStation fresh;
    fresh.name = "Hilltop (invented)";
    fresh.zone = zone;
    fresh.hours = std::move(hours);
    fresh.hourRule = rule;
    std::uint64_t counter = 0;
    return factsOf(fresh, [&] { return Uuid::fromSeed(7, counter++); });
}

StationDate day(date::year_month_day ymd) {
    return StationDate{date::local_days{ymd}};
}
Instant utc(date::year_month_day ymd, std::chrono::seconds time) {
    return Instant{date::sys_days{ymd}} + time;
}

std::vector<Instant> moments(const StationRecord& record, date::year_month_day from,
                             date::year_month_day to) {
    std::vector<Instant> result;
    for (const ExpectedHour& hour : expectedHours(record, day(from), day(to))) {
        result.push_back(hour.instant);
    }
    return result;
}

TEST(ObservingHours, theClockRuleKeepsTheClockHourOverTheChange) {
    const StationRecord record{station("Europe/London", {9h}, HourRule::Clock)};
    EXPECT_EQ(moments(record, 2025_y / 3 / 29, 2025_y / 3 / 30),
              (std::vector{utc(2025_y / 3 / 29, 9h), utc(2025_y / 3 / 30, 8h)}));
}

TEST(ObservingHours, theUtcRuleDoesNotMove) {
    const StationRecord record{station("Europe/London", {9h}, HourRule::Utc)};
    EXPECT_EQ(moments(record, 2025_y / 3 / 29, 2025_y / 3 / 30),
              (std::vector{utc(2025_y / 3 / 29, 9h), utc(2025_y / 3 / 30, 9h)}));
}

TEST(ObservingHours, standardTimeIgnoresSummerTime) {
    const StationRecord record{station("America/New_York", {7h}, HourRule::Standard)};
    EXPECT_EQ(moments(record, 2025_y / 7 / 1, 2025_y / 7 / 1), (std::vector{utc(2025_y / 7 / 1, 12h)}));
    EXPECT_EQ(moments(record, 2025_y / 1 / 1, 2025_y / 1 / 1), (std::vector{utc(2025_y / 1 / 1, 12h)}));
}

TEST(ObservingHours, anHourTheClockSkipsIsNotExpected) {
    const StationRecord record{station("Europe/London", {1h + 30min, 9h}, HourRule::Clock)};
    EXPECT_EQ(expectedHours(record, day(2025_y / 3 / 30), day(2025_y / 3 / 30)).size(), 1U);
    EXPECT_FALSE(momentOf(record, {day(2025_y / 3 / 30), 1h + 30min}));
}

TEST(ObservingHours, anHourTheClockShowsTwiceIsExpectedOnce) {
    const StationRecord record{station("Europe/London", {1h + 30min}, HourRule::Clock)};
    EXPECT_EQ(moments(record, 2025_y / 10 / 26, 2025_y / 10 / 26),
              (std::vector{utc(2025_y / 10 / 26, 30min)}));
}

// Clock-change weekends: no gap, no duplicate: as many hours as days, each a day apart but for the change.
TEST(ObservingHours, clockChangeWeekendsHaveNoFalseGap) {
    struct Weekend {
        const char* zone;
        date::year_month_day from;
        date::year_month_day to;
    };
    for (const Weekend& weekend : {Weekend{"Europe/London", 2025_y / 3 / 28, 2025_y / 4 / 1},
                                   Weekend{"Europe/London", 2025_y / 10 / 24, 2025_y / 10 / 28},
                                   Weekend{"America/New_York", 2025_y / 3 / 7, 2025_y / 3 / 11},
                                   Weekend{"America/New_York", 2025_y / 10 / 31, 2025_y / 11 / 4},
                                   Weekend{"Australia/Sydney", 2025_y / 4 / 4, 2025_y / 4 / 8},
                                   Weekend{"Australia/Sydney", 2025_y / 10 / 3, 2025_y / 10 / 7},
                                   Weekend{"America/Argentina/Cordoba", 1894_y / 10 / 29, 1894_y / 11 / 2}}) {
        for (const HourRule rule : {HourRule::Utc, HourRule::Standard, HourRule::Clock}) {
            const StationRecord record{station(weekend.zone, {9h, 21h}, rule)};
            const auto hours = expectedHours(record, day(weekend.from), day(weekend.to));
            ASSERT_EQ(hours.size(), 10U) << weekend.zone << ' ' << hourRuleName(rule);
            for (const ExpectedHour& hour : hours) {
                const auto taken = hourFor(record, hour.instant + 4min);
                ASSERT_TRUE(taken) << weekend.zone;
                EXPECT_EQ(*taken, hour.hour) << weekend.zone << ' ' << hourRuleName(rule);
            }
        }
    }
}

TEST(ObservingHours, withinAnHourAndTiesToTheEarlier) {
    const StationRecord record{station("UTC", {8h, 10h}, HourRule::Utc)};
    const auto at = [&](std::chrono::seconds time) { return hourFor(record, utc(2025_y / 3 / 1, time)); };
    EXPECT_EQ(at(9h)->hour, 8h); // an hour from both: the earlier
    EXPECT_EQ(at(9h + 1s)->hour, 10h);
    EXPECT_EQ(at(7h)->hour, 8h); // sixty minutes is within
    EXPECT_FALSE(at(7h - 1s));
    EXPECT_FALSE(at(11h + 1s));
}

TEST(ObservingHours, aReadingAfterMidnightBelongsToTheDayBefore) {
    const StationRecord record{station("UTC", {23h}, HourRule::Clock)};
    const auto hour =
        hourFor(record, utc(2025_y / 3 / 2, 0s)); // 00:00 of the 2nd is an hour after 23 h of the 1st
    ASSERT_TRUE(hour);
    EXPECT_EQ(hour->date, day(2025_y / 3 / 1));
    EXPECT_EQ(hour->hour, 23h);
}

TEST(ObservingHours, differByPeriod) {
    StationFacts facts = station("America/Argentina/Cordoba", {8h, 18h}, HourRule::Clock);
    const Zone zone = *Zone::named("America/Argentina/Cordoba");
    PeriodChange three;
    three.from = startOfDate(day(1886_y / 11 / 1), zone);
    three.hours = {7h, 14h, 21h};
    PeriodChange two;
    two.from = startOfDate(day(1894_y / 1 / 1), zone);
    two.hours = {8h, 18h};
    facts.periods.push_back(two); // entered in any order
    facts.periods.push_back(three);
    const StationRecord record{facts};
    ASSERT_EQ(record.periods().size(), 3U);
    EXPECT_EQ(expectedHours(record, day(1886_y / 10 / 31), day(1886_y / 11 / 1)).size(), 5U);
    EXPECT_EQ(expectedHours(record, day(1893_y / 12 / 31), day(1894_y / 1 / 1)).size(), 5U);
    // 12:17 UTC is 08:00:12 by the local mean time of the place.
    EXPECT_EQ(hourFor(record, utc(1886_y / 3 / 18, 12h + 17min))->hour, 8h);
}

TEST(StationRecord, aForgottenChangeCarriesOnIntoLaterPeriods) {
    StationFacts facts = station("Europe/London", {9h}, HourRule::Clock);
    PeriodChange later;
    later.from = utc(2020_y / 1 / 1, 0s);
    later.hours = {7h};
    facts.periods.push_back(later);
    PeriodChange forgotten;
    forgotten.from = utc(2010_y / 1 / 1, 0s);
    forgotten.elevation = units::Elevation::fromMetres(210);
    facts.periods.push_back(forgotten);
    const StationRecord record{facts};
    ASSERT_EQ(record.periods().size(), 3U);
    EXPECT_EQ(record.latestPeriod().elevation.metres(), 210);
    EXPECT_EQ(record.latestPeriod().hours, std::vector<HourOfDay>{7h});
    EXPECT_EQ(record.periodAt(utc(2005_y / 1 / 1, 0s)).elevation.metres(), 0);
    // Half-open: the moment itself belongs to the new period.
    EXPECT_EQ(record.periodAt(utc(2010_y / 1 / 1, 0s)).elevation.metres(), 210);
    EXPECT_EQ(record.periodAt(utc(2010_y / 1 / 1, 0s) - 1s).elevation.metres(), 0);
}

} // namespace
