// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_time.h"
#include "tests/core/exchange/stations.h"

#include <gtest/gtest.h>

/// Clock changes by the IANA time zone database as installed. The dates of the changes: European Union
/// directive 2000/84/EC (last Sundays of March and October, 01:00 UTC), U.S. Energy Policy Act of 2005
/// (second Sunday of March, first of November, 02:00), New South Wales Standard Time Act (first Sundays of
/// October and April, 02:00 standard time).

namespace wickbook::exchange {
namespace {

using record::HourRule;
using testing::station;

/// "2025-03-01T09:00:00Z @2025-03-01 09:00", "… extra", or the refusal.
std::string timeOf(const record::StationRecord& station, const FieldCells& cells,
                   const std::optional<record::Zone>& zone = {}) {
    const auto time = rowTime(cells, station, zone, DateOrder::Unknown);
    if (!time) {
        const auto& line = time.error();
        return std::string(reasonName(line.reason)) + (line.detail.empty() ? "" : ":" + line.detail) + " " +
               line.field + " '" + line.value + "'";
    }
    std::string text = record::instantText(time->instant);
    if (time->hour) {
        text += *time->hour ? " @" + record::dateText((*time->hour)->date) + " " +
                                  record::hourText((*time->hour)->hour)
                            : " extra";
    }
    return text;
}

FieldCells time(std::string text) {
    return {{ImportField::Time, std::move(text)}};
}
FieldCells dateHour(std::string date, std::string hour) {
    return {{ImportField::Date, std::move(date)}, {ImportField::Hour, std::move(hour)}};
}
FieldCells dateClock(std::string date, std::string clock) {
    return {{ImportField::Date, std::move(date)}, {ImportField::Clock, std::move(clock)}};
}

TEST(RowTime, WrittenWithAnOffset) {
    EXPECT_EQ(timeOf(station(), time("2025-07-01T10:00+01:00")), "2025-07-01T09:00:00Z");
    EXPECT_EQ(timeOf(station(), time("2025-07-01 09:00Z")), "2025-07-01T09:00:00Z");
    EXPECT_EQ(timeOf(station(), time("1.7.2025 10:00:30+01:00")), "2025-07-01T09:00:30Z");
}

TEST(RowTime, WithoutAnOffsetByTheStationOrTheZoneGiven) {
    EXPECT_EQ(timeOf(station(), time("2025-07-01T10:00")), "2025-07-01T09:00:00Z");
    EXPECT_EQ(timeOf(station(), time("2025-07-01T10:00"), record::Zone::utc()), "2025-07-01T10:00:00Z");
    EXPECT_EQ(timeOf(station(), time("1.7.2025 9:05")), "2025-07-01T08:05:00Z");
    EXPECT_EQ(timeOf(station(), {{ImportField::Date, "2025-07-01"}, {ImportField::Time, "10:05"}}),
              "2025-07-01T09:05:00Z");
}

/// What the clock showed twice may be chosen; what it never showed may not.
TEST(RowTime, DoubleTimesAreTakenAsThePersonSays) {
    struct Night {
        const char* zone;
        const char* twice;
        const char* earlier;
        const char* later;
        const char* never;
    };
    for (const Night& night : {Night{"Europe/London", "2025-10-26T01:30", "2025-10-26T00:30:00Z",
                                     "2025-10-26T01:30:00Z", "2025-03-30T01:30"},
                               Night{"America/New_York", "2025-11-02T01:30", "2025-11-02T05:30:00Z",
                                     "2025-11-02T06:30:00Z", "2025-03-09T02:30"},
                               Night{"Australia/Sydney", "2025-04-06T02:30", "2025-04-05T15:30:00Z",
                                     "2025-04-05T16:30:00Z", "2025-10-05T02:30"}}) {
        const auto place = station(night.zone, HourRule::Clock);
        const auto at = [&](const char* text, DoubleTimes choice) {
            const auto read = rowTime(time(text), place, std::nullopt, DateOrder::Unknown, choice);
            return read ? record::instantText(read->instant) : std::string(reasonName(read.error().reason));
        };
        EXPECT_EQ(at(night.twice, DoubleTimes::Reject), "double-time") << night.zone;
        EXPECT_EQ(at(night.twice, DoubleTimes::Earlier), night.earlier);
        EXPECT_EQ(at(night.twice, DoubleTimes::Later), night.later);
        EXPECT_EQ(at(night.never, DoubleTimes::Earlier), "impossible-time") << night.zone;
    }
}

/// Córdoba stood 4 h 16 min 48 s behind UTC until 1920 (IANA time zone database): a clock time there is a
/// moment to the second.
TEST(RowTime, AnOffsetToTheSecond) {
    const auto place = station("America/Argentina/Cordoba", HourRule::Clock);
    EXPECT_EQ(timeOf(place, time("1900-06-01T08:00")), "1900-06-01T12:16:48Z");
    EXPECT_EQ(timeOf(place, dateClock("1900-06-01", "21:30")), "1900-06-02T01:46:48Z");
}

TEST(RowTime, London2025) {
    const auto london = station("Europe/London");
    EXPECT_EQ(timeOf(london, time("2025-03-30T00:59")), "2025-03-30T00:59:00Z");
    EXPECT_EQ(timeOf(london, time("2025-03-30T01:30")), "impossible-time time '2025-03-30T01:30'");
    EXPECT_EQ(timeOf(london, time("2025-03-30T02:00")), "2025-03-30T01:00:00Z");
    EXPECT_EQ(timeOf(london, time("2025-10-26T00:59")), "2025-10-25T23:59:00Z");
    EXPECT_EQ(timeOf(london, time("2025-10-26T01:30")), "double-time time '2025-10-26T01:30'");
    EXPECT_EQ(timeOf(london, time("2025-10-26T01:30+01:00")), "2025-10-26T00:30:00Z");
    EXPECT_EQ(timeOf(london, time("2025-10-26T01:30Z")), "2025-10-26T01:30:00Z");
    EXPECT_EQ(timeOf(london, time("2025-10-26T02:00")), "2025-10-26T02:00:00Z");
    EXPECT_EQ(timeOf(london, dateClock("2025-10-26", "01:30")), "double-time clock '01:30'");
}

TEST(RowTime, NewYork2025) {
    const auto newYork = station("America/New_York");
    EXPECT_EQ(timeOf(newYork, time("2025-03-09T02:30")), "impossible-time time '2025-03-09T02:30'");
    EXPECT_EQ(timeOf(newYork, time("2025-03-09T03:00")), "2025-03-09T07:00:00Z");
    EXPECT_EQ(timeOf(newYork, time("2025-11-02T01:30")), "double-time time '2025-11-02T01:30'");
    EXPECT_EQ(timeOf(newYork, time("2025-11-02T02:00")), "2025-11-02T07:00:00Z");
}

TEST(RowTime, Sydney2025) {
    const auto sydney = station("Australia/Sydney");
    EXPECT_EQ(timeOf(sydney, time("2025-04-06T02:30")), "double-time time '2025-04-06T02:30'");
    EXPECT_EQ(timeOf(sydney, time("2025-04-06T03:00")), "2025-04-05T17:00:00Z");
    EXPECT_EQ(timeOf(sydney, time("2025-10-05T02:30")), "impossible-time time '2025-10-05T02:30'");
    EXPECT_EQ(timeOf(sydney, time("2025-10-05T03:00")), "2025-10-04T16:00:00Z");
}

TEST(RowTime, CordobaBeforeStandardTimeStoodAtOddSeconds) {
    // UTC−4:16:48 from October 1894 to May 1920 (IANA database, America/Argentina/Cordoba).
    const auto cordoba = station("America/Argentina/Cordoba", HourRule::Clock);
    EXPECT_EQ(timeOf(cordoba, time("1900-01-01T09:00")), "1900-01-01T13:16:48Z");
    EXPECT_EQ(timeOf(cordoba, time("1900-01-01T09:00-04:16:48")), "1900-01-01T13:16:48Z");
    EXPECT_EQ(timeOf(cordoba, dateHour("1900-01-01", "9")), "1900-01-01T13:16:48Z @1900-01-01 09:00");
}

TEST(RowTime, NominalHourByTheStationsRule) {
    // A weekend of the clock change: 09 UTC becomes 10 by the clock, and nothing is missing or double.
    EXPECT_EQ(timeOf(station("Europe/London", HourRule::Utc), dateHour("2025-03-30", "09:00")),
              "2025-03-30T09:00:00Z @2025-03-30 09:00");
    EXPECT_EQ(timeOf(station("Europe/London", HourRule::Standard), dateHour("2025-03-30", "09:00")),
              "2025-03-30T09:00:00Z @2025-03-30 09:00");
    EXPECT_EQ(timeOf(station("Europe/London", HourRule::Clock), dateHour("2025-03-30", "09:00")),
              "2025-03-30T08:00:00Z @2025-03-30 09:00");
    EXPECT_EQ(timeOf(station("Europe/Berlin", HourRule::Standard), dateHour("2025-07-01", "09:00")),
              "2025-07-01T08:00:00Z @2025-07-01 09:00");
}

TEST(RowTime, ObservingHourThatTheClockShowsTwiceOrNever) {
    const auto early = testing::stationOf(testing::newStation(
        "Europe/London", HourRule::Clock, {std::chrono::minutes{90}, std::chrono::hours{13}}));
    EXPECT_EQ(timeOf(early, dateHour("2025-10-26", "01:30")), "2025-10-26T00:30:00Z @2025-10-26 01:30");
    EXPECT_EQ(timeOf(early, dateHour("2025-03-30", "01:30")), "impossible-time hour '01:30'");
}

TEST(RowTime, AnHourNotObservedAtIsAClockTimeUnderTheRule) {
    EXPECT_EQ(timeOf(station("Europe/London", HourRule::Utc), dateHour("2025-07-01", "15:00")),
              "2025-07-01T15:00:00Z");
    EXPECT_EQ(timeOf(station("Europe/London", HourRule::Standard), dateHour("2025-07-01", "15:00")),
              "2025-07-01T15:00:00Z");
    EXPECT_EQ(timeOf(station("Europe/London", HourRule::Clock), dateHour("2025-07-01", "15:00")),
              "2025-07-01T14:00:00Z");
    EXPECT_EQ(timeOf(station("Europe/London", HourRule::Clock), dateHour("2025-10-26", "01:30")),
              "double-time hour '01:30'");
    EXPECT_EQ(timeOf(station("Europe/London", HourRule::Clock), dateHour("2025-07-01", "09:00"),
                     record::Zone::utc()),
              "2025-07-01T09:00:00Z");
}

TEST(RowTime, ClockBesideTheHourOnTheNearestDay) {
    const auto late =
        testing::stationOf(testing::newStation("Europe/London", HourRule::Clock, {std::chrono::hours{23}}));
    auto cells = dateHour("2025-07-01", "23:00");
    cells[ImportField::Clock] = "00:30";
    EXPECT_EQ(timeOf(late, cells), "2025-07-01T23:30:00Z @2025-07-01 23:00");
    cells[ImportField::Clock] = "22:50";
    EXPECT_EQ(timeOf(late, cells), "2025-07-01T21:50:00Z @2025-07-01 23:00");
}

TEST(RowTime, HourBesideAFullTimeSaysWhereItIsFiled) {
    FieldCells cells{{ImportField::Time, "2025-07-01T10:50Z"}, {ImportField::Hour, "09:00"}};
    EXPECT_EQ(timeOf(station(), cells), "2025-07-01T10:50:00Z @2025-07-01 09:00");
    cells[ImportField::Hour] = "";
    EXPECT_EQ(timeOf(station(), cells), "2025-07-01T10:50:00Z extra");
    cells[ImportField::Hour] = "15:00";
    EXPECT_EQ(timeOf(station(), cells), "2025-07-01T10:50:00Z");
    cells[ImportField::Hour] = "09:00";
    cells[ImportField::Date] = "2025-06-30";
    EXPECT_EQ(timeOf(station(), cells), "bad-time:far-from-hour hour '09:00'");
}

TEST(RowTime, HourBesideAFullTimeWithoutADateIsOfTheNearestDay) {
    const auto evening =
        testing::stationOf(testing::newStation("UTC", HourRule::Utc, {std::chrono::hours{21}}));
    FieldCells cells{{ImportField::Time, "2025-07-02T00:20Z"}, {ImportField::Hour, "21:00"}};
    EXPECT_EQ(timeOf(evening, cells), "2025-07-02T00:20:00Z @2025-07-01 21:00");
    cells[ImportField::Time] = "2025-07-02T20:40Z";
    EXPECT_EQ(timeOf(evening, cells), "2025-07-02T20:40:00Z @2025-07-02 21:00");
    const auto morning =
        testing::stationOf(testing::newStation("UTC", HourRule::Utc, {std::chrono::hours{0}}));
    cells = {{ImportField::Time, "2025-07-01T23:50Z"}, {ImportField::Hour, "00:00"}};
    EXPECT_EQ(timeOf(morning, cells), "2025-07-01T23:50:00Z @2025-07-02 00:00");
}

TEST(RowTime, AStationThatChangedItsZone) {
    auto facts = station("Europe/London", HourRule::Clock).facts();
    record::PeriodChange moved;
    moved.id = record::Uuid::fromSeed(7, 99);
    moved.from = record::Instant{date::sys_days{date::year{2025} / 7 / 1}} + std::chrono::hours{12};
    moved.zone = "Europe/Berlin";
    facts.periods.push_back(moved);
    const record::StationRecord both{facts};
    EXPECT_EQ(timeOf(both, time("2025-07-01T09:00")), "2025-07-01T08:00:00Z");
    EXPECT_EQ(timeOf(both, time("2025-07-02T09:00")), "2025-07-02T07:00:00Z");
    // 12:00 UTC was 13:00 in London and 14:00 in Berlin: between them no clock of the station showed
    // anything.
    EXPECT_EQ(timeOf(both, time("2025-07-01T13:30")).substr(0, 15), "impossible-time");
}

TEST(RowTime, Refusals) {
    EXPECT_EQ(timeOf(station(), time("")), "no-time time ''");
    EXPECT_EQ(timeOf(station(), time("-")), "no-time time '-'");
    EXPECT_EQ(timeOf(station(), dateHour("", "09:00")), "no-time date ''");
    EXPECT_EQ(timeOf(station(), dateHour("2025-07-01", "")), "no-time hour ''");
    EXPECT_EQ(timeOf(station(), dateClock("2025-07-01", "")), "no-time clock ''");
    EXPECT_EQ(timeOf(station(), time("yesterday")), "bad-time:not-a-time time 'yesterday'");
    EXPECT_EQ(timeOf(station(), time("2025-07-01")), "bad-time:not-a-time time '2025-07-01'");
    EXPECT_EQ(timeOf(station(), time("1.7.86 09:00")), "bad-time:two-digit-year time '1.7.86 09:00'");
    EXPECT_EQ(timeOf(station(), time("1/7/2025 09:00")), "bad-time:day-or-month time '1/7/2025 09:00'");
    EXPECT_EQ(timeOf(station(), time("2025-02-29T09:00")), "bad-time:no-such-date time '2025-02-29T09:00'");
    EXPECT_EQ(timeOf(station(), time("2025-07-01T09:75")),
              "bad-time:no-such-clock-time time '2025-07-01T09:75'");
    EXPECT_EQ(timeOf(station(), dateHour("2025-07-01", "noon")), "bad-time:not-a-time hour 'noon'");
    EXPECT_EQ(timeOf(station(), dateHour("01.07.25", "9")), "bad-time:two-digit-year date '01.07.25'");
}

} // namespace
} // namespace wickbook::exchange
