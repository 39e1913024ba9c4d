// SPDX-License-Identifier: GPL-3.0-or-later
// Weekends on which the clocks change, in a real book: each hour that was promised is read once, so there
// must be no gap and no duplicate, and the export must give the time and the offset that were in force.
// Source of every moment and offset below: the IANA time zone database (files europe, northamerica,
// australasia, southamerica): London +0 → +1 on 30 March 2025 01:00 UTC, back on 26 October 01:00 UTC; New
// York −5 → −4 on 9 March 2025 07:00 UTC, back on 2 November 06:00 UTC; Sydney +11 → +10 on 5 April 2025
// 16:00 UTC, forward again on 4 October 16:00 UTC; Córdoba stood at −4:16:48 from October 1894 until 1 May
// 1920, when it went to −4:00. The readings are invented.
#include "core/desk/hour_marks.h"
#include "core/exchange/observation_columns.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <map>
#include <set>

namespace {

using namespace wickbook;
using namespace std::chrono_literals;
using namespace date::literals;
using record::HourRule;
namespace fs = std::filesystem;

struct Change {
    const char* zone;
    date::year_month_day sunday; ///< the date on which the clock changes there
    std::chrono::seconds standard;
    std::chrono::seconds before; ///< offset in force the day before
    std::chrono::seconds after;  ///< the day after
    std::chrono::minutes odd;    ///< a clock time skipped (after > before) or shown twice
};

const Change kChanges[] = {
    {"Europe/London", 2025_y / 3 / 30, 0h, 0h, 1h, 90min},
    {"Europe/London", 2025_y / 10 / 26, 0h, 1h, 0h, 90min},
    {"America/New_York", 2025_y / 3 / 9, -5h, -5h, -4h, 150min},
    {"America/New_York", 2025_y / 11 / 2, -5h, -4h, -5h, 90min},
    {"Australia/Sydney", 2025_y / 4 / 6, 10h, 11h, 10h, 150min},
    {"Australia/Sydney", 2025_y / 10 / 5, 10h, 10h, 11h, 150min},
};

record::StationDate day(date::year_month_day date) {
    return record::StationDate{date::local_days{date}};
}

class StandingClock final : public record::Clock {
public:
    [[nodiscard]] record::Instant now() const override { return date::sys_days{2026_y / 11 / 22} + 8h; }
};

/// A book of one station with the hours 09, 21 and the odd one, in a folder of its own.
class Weekend {
public:
    Weekend(const char* zone, HourRule rule, std::vector<record::HourOfDay> hours)
        : folder_(fs::temp_directory_path() / ("wickbook-clock-" + record::Uuid::random().toText())) {
        fs::create_directories(folder_);
        record::NewStation fresh;
        fresh.name = "Two Clocks (invented)";
        fresh.zone = zone;
        fresh.hours = std::move(hours);
        fresh.hourRule = rule;
        fresh.invented = true;
        auto made = store::Book::create(folder_ / "book.wickbook",
                                        record::factsOf(fresh, [] { return record::Uuid::random(); }), {},
                                        std::make_shared<StandingClock>());
        if (!made) {
            throw std::runtime_error("no book: " + made.error().detail);
        }
        book = std::make_unique<store::Book>(std::move(*made));
        station = *book->station();
    }
    ~Weekend() {
        book.reset();
        fs::remove_all(folder_);
    }
    Weekend(const Weekend&) = delete;
    Weekend& operator=(const Weekend&) = delete;

    /// Read at this moment and filed by the station's own rule.
    void read(record::Instant instant) {
        store::ObservationChange change;
        record::placeInTime(change.values, station, instant);
        change.values.dry.value = units::ReadTemperature{{121, 1}, units::TemperatureUnit::Celsius};
        change.values.wet.value = units::ReadTemperature{{104, 1}, units::TemperatureUnit::Celsius};
        ASSERT_TRUE(book->append(change).has_value()) << record::instantText(instant);
    }

    std::unique_ptr<store::Book> book;
    record::StationRecord station;

private:
    fs::path folder_;
};

const record::Instant kNow = date::sys_days{2026_y / 11 / 22} + 8h;

/// When the hour is due by the rule, worked out from the offsets in the table alone; none: skipped.
std::optional<record::Instant> due(const Change& change, HourRule rule, record::StationDate date,
                                   record::HourOfDay hour) {
    const record::Instant nominal{(date + hour).time_since_epoch()};
    switch (rule) {
    case HourRule::Utc:
        return nominal;
    case HourRule::Standard:
        return nominal - change.standard;
    case HourRule::Clock:
        break;
    }
    const record::StationDate sunday = day(change.sunday);
    if (date != sunday) {
        return nominal - (date < sunday ? change.before : change.after);
    }
    if (hour == change.odd) { // skipped in spring; in autumn the first of the two, by the old offset
        return change.after > change.before ? std::nullopt : std::optional{nominal - change.before};
    }
    return nominal - (hour < change.odd ? change.before : change.after);
}

std::map<std::string, std::string> exported(const checks::CheckedReading& reading,
                                            const record::StationRecord& station) {
    std::map<std::string, std::string> cells;
    const auto header = exchange::observationHeader();
    const auto row = exchange::observationRow(reading, station);
    for (std::size_t i = 0; i < header.size(); ++i) {
        cells[header[i]] = row[i];
    }
    return cells;
}

TEST(ClockChange, NoFalseGapAndNoDuplicateUnderAnyRule) {
    for (const Change& change : kChanges) {
        for (const HourRule rule : {HourRule::Utc, HourRule::Standard, HourRule::Clock}) {
            SCOPED_TRACE(std::string{change.zone} + " " + record::dateText(day(change.sunday)) + " " +
                         std::string{record::hourRuleName(rule)});
            Weekend weekend(change.zone, rule, {change.odd, 9h, 21h});
            const auto from = day(change.sunday) - date::days{2};
            const auto to = day(change.sunday) + date::days{2};
            std::map<record::ObservingHour, record::Instant> moments;
            for (auto date = from; date <= to; date += date::days{1}) {
                for (const record::HourOfDay hour :
                     {record::HourOfDay{change.odd}, record::HourOfDay{9h}, record::HourOfDay{21h}}) {
                    if (const auto moment = due(change, rule, date, hour)) {
                        moments.emplace(record::ObservingHour{date, hour}, *moment);
                        weekend.read(*moment + 3min); // a little late, as people are
                    }
                }
            }
            const bool skips = rule == HourRule::Clock && change.after > change.before;
            ASSERT_EQ(moments.size(), skips ? 14U : 15U);
            const auto marks = desk::hourMarks(*weekend.book, weekend.station, from, to, kNow);
            ASSERT_TRUE(marks);
            EXPECT_EQ(marks->size(), moments.size()) << "an hour too many is a false gap";
            std::set<record::Uuid> used;
            for (const desk::HourMark& mark : *marks) {
                const auto wanted = moments.find(mark.expected.hour);
                ASSERT_NE(wanted, moments.end()) << record::dateText(mark.expected.hour.date);
                EXPECT_EQ(record::instantText(mark.expected.instant), record::instantText(wanted->second));
                ASSERT_TRUE(mark.observation) << "gap at " << record::instantText(mark.expected.instant);
                EXPECT_NE(mark.state, desk::HourState::Missed);
                EXPECT_TRUE(used.insert(*mark.observation).second) << "one reading at two hours";
            }
            const auto checked = desk::checkedOn(*weekend.book, weekend.station, from, to, kNow);
            ASSERT_TRUE(checked);
            EXPECT_EQ(checked->size(), moments.size());
            for (const auto& reading : *checked) {
                for (const auto& finding : reading.findings) {
                    EXPECT_NE(finding.code, "duplicate");
                    EXPECT_NE(finding.code, "early");
                    EXPECT_NE(finding.code, "late");
                }
            }
        }
    }
}

TEST(ClockChange, TheExportGivesTheMomentAndTheOffsetInForce) {
    for (const Change& change : kChanges) {
        for (const HourRule rule : {HourRule::Utc, HourRule::Standard, HourRule::Clock}) {
            SCOPED_TRACE(std::string{change.zone} + " " + std::string{record::hourRuleName(rule)});
            Weekend weekend(change.zone, rule, {9h, 21h});
            const auto sunday = day(change.sunday);
            for (const auto date : {sunday - date::days{1}, sunday + date::days{1}}) {
                weekend.read(*due(change, rule, date, 9h));
            }
            const auto checked = desk::checkedOn(*weekend.book, weekend.station, sunday - date::days{2},
                                                 sunday + date::days{2}, kNow);
            ASSERT_TRUE(checked);
            ASSERT_EQ(checked->size(), 2U);
            for (const bool later : {false, true}) {
                const auto date = sunday + date::days{later ? 1 : -1};
                const auto offset = later ? change.after : change.before;
                auto cells = exported((*checked)[later ? 1 : 0], weekend.station);
                const record::Instant moment = *due(change, rule, date, 9h);
                EXPECT_EQ(cells["time_utc"], record::instantText(moment));
                EXPECT_EQ(cells["utc_offset"], record::offsetText(offset));
                EXPECT_EQ(cells["hour"], "09:00");
            }
        }
    }
}

TEST(ClockChange, NineUtcBecomesTenByTheClockOfLondon) {
    Weekend weekend("Europe/London", HourRule::Utc, {9h});
    weekend.read(date::sys_days{2025_y / 3 / 29} + 9h);
    weekend.read(date::sys_days{2025_y / 3 / 30} + 9h);
    const auto checked =
        desk::checkedOn(*weekend.book, weekend.station, day(2025_y / 3 / 29), day(2025_y / 3 / 30), kNow);
    ASSERT_TRUE(checked && checked->size() == 2U);
    auto before = exported((*checked)[0], weekend.station);
    auto after = exported((*checked)[1], weekend.station);
    EXPECT_EQ(before["time_utc"], "2025-03-29T09:00:00Z");
    EXPECT_EQ(after["time_utc"], "2025-03-30T09:00:00Z");
    EXPECT_EQ(before["utc_offset"], "+00:00");
    EXPECT_EQ(after["utc_offset"], "+01:00"); // by the clock 10:00
    EXPECT_EQ(after["hour"], "09:00");
}

TEST(ClockChange, CordobaKeepsItsSeconds) {
    for (const HourRule rule : {HourRule::Standard, HourRule::Clock}) {
        SCOPED_TRACE(std::string{record::hourRuleName(rule)});
        Weekend weekend("America/Argentina/Cordoba", rule, {10min, 9h, 21h});
        // 00:10 of 1 May 1920 was skipped by the clock: it went from 00:00:00 to 00:16:48.
        const std::string moments[] = {
            "1920-04-30T04:26:48Z", "1920-04-30T13:16:48Z", "1920-05-01T01:16:48Z", // −4:16:48
            "1920-05-01T13:00:00Z", "1920-05-02T01:00:00Z",                         // −4:00
        };
        for (const std::string& moment : moments) {
            weekend.read(record::Instant{record::parseTime(moment)->local.time_since_epoch()});
        }
        const auto checked =
            desk::checkedOn(*weekend.book, weekend.station, day(1920_y / 4 / 30), day(1920_y / 5 / 1), kNow);
        ASSERT_TRUE(checked);
        ASSERT_EQ(checked->size(), 5U);
        for (std::size_t i = 0; i < 5; ++i) {
            auto cells = exported((*checked)[i], weekend.station);
            EXPECT_EQ(cells["time_utc"], moments[i]);
            EXPECT_EQ(cells["utc_offset"], i < 3 ? "-04:16:48" : "-04:00");
            EXPECT_EQ(cells["hour"], i == 0 ? "00:10" : i % 2 == 1 ? "09:00" : "21:00");
        }
        const auto marks =
            desk::hourMarks(*weekend.book, weekend.station, day(1920_y / 4 / 30), day(1920_y / 5 / 1), kNow);
        ASSERT_TRUE(marks);
        for (const auto& mark : *marks) {
            // By standard time the hour 00:10 of 1 May comes sixteen minutes and some later, but it comes.
            const bool standardTen = rule == HourRule::Standard && !mark.observation;
            EXPECT_TRUE(mark.observation.has_value() || standardTen)
                << record::instantText(mark.expected.instant);
        }
        if (rule == HourRule::Clock) {
            EXPECT_EQ(marks->size(), 5U);
        }
    }
}

TEST(ClockChange, ADoubleTimeIsTwoMomentsAndASkippedOneNone) {
    for (const Change& change : kChanges) {
        SCOPED_TRACE(std::string{change.zone} + " " + record::dateText(day(change.sunday)));
        const auto zone = *record::Zone::named(change.zone);
        const auto resolved = record::resolveLocal(zone, record::LocalTime{day(change.sunday) + change.odd});
        const record::Instant nominal{(day(change.sunday) + change.odd).time_since_epoch()};
        if (change.after > change.before) {
            EXPECT_TRUE(std::holds_alternative<record::ImpossibleTime>(resolved));
        } else {
            ASSERT_TRUE(std::holds_alternative<record::DoubleTime>(resolved));
            EXPECT_EQ(std::get<record::DoubleTime>(resolved).first, nominal - change.before);
            EXPECT_EQ(std::get<record::DoubleTime>(resolved).second, nominal - change.after);
        }
    }
}

TEST(AbsenceInTheMargin, IsTheReasonOfItsGapsUnlessADeputyReads) {
    Weekend weekend("Europe/London", HourRule::Utc, {9h, 21h});
    record::StationFacts facts = weekend.station.facts();
    facts.absences = {
        {record::Uuid::random(), day(2026_y / 8 / 2), day(2026_y / 8 / 4), "away", "", "", false},
        {record::Uuid::random(), day(2026_y / 8 / 6), day(2026_y / 8 / 6), "ill", "EW", "", false}};
    ASSERT_TRUE(weekend.book->reviseFacts(facts, {}));
    weekend.station = *weekend.book->station();
    weekend.read(date::sys_days{2026_y / 8 / 3} + 9h); // read all the same
    const auto marks =
        desk::hourMarks(*weekend.book, weekend.station, day(2026_y / 8 / 1), day(2026_y / 8 / 6), kNow);
    ASSERT_TRUE(marks);
    ASSERT_EQ(marks->size(), 12U);
    int excused = 0;
    for (const desk::HourMark& mark : *marks) {
        const auto date = mark.expected.hour.date;
        const bool away = date >= day(2026_y / 8 / 2) && date <= day(2026_y / 8 / 4) && !mark.observation;
        EXPECT_EQ(mark.state == desk::HourState::Excused, away) << record::dateText(date);
        EXPECT_EQ(mark.reason, away ? "away" : "");
        excused += away ? 1 : 0;
    }
    EXPECT_EQ(excused, 5);
    EXPECT_EQ(*weekend.book->observationCount(), 1) << "no line is written for a gap";
}

} // namespace
