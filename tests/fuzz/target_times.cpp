// SPDX-License-Identifier: GPL-3.0-or-later
// The first byte chooses a zone, the rest is a time, a date, an hour, a month or a zone's name as somebody
// wrote it.
#include "core/exchange/date_guess.h"
#include "core/record/instant.h"
#include "core/record/observing_hours.h"
#include "core/record/zone.h"
#include "tests/fuzz/stations.h"
#include "tests/fuzz/targets.h"

#include <array>
#include <cstdlib>

namespace wickbook::fuzz {

namespace {

using record::Instant;
using record::LocalTime;
using record::Zone;

const std::vector<Zone>& zones() {
    // Half hours, a day that was left out, double summer time, mean time to the second, winter time as the
    // saving.
    static const std::vector<Zone> kZones = [] {
        std::vector<Zone> all;
        for (const char* name :
             {"UTC", "Europe/London", "Australia/Lord_Howe", "Pacific/Apia", "America/Argentina/Cordoba",
              "Europe/Dublin", "Africa/Casablanca", "Asia/Manila"}) {
            const auto zone = Zone::named(name);
            promise(zone.has_value(), "the zone database knows", name);
            all.push_back(*zone);
        }
        return all;
    }();
    return kZones;
}

void checkMoment(Instant instant, std::string_view text) {
    const auto again = record::parseTime(record::instantText(instant));
    // A moment may lie a few hours outside the years that are taken, where an offset stood beside it.
    if (again) {
        promise(again->offset == std::chrono::seconds{0} &&
                    Instant{again->local.time_since_epoch()} == instant,
                "a moment comes back from its text", text);
    }
    for (const auto* station : {&stationOfUtcHours(), &stationThatMoved()}) {
        const auto hour = record::hourFor(*station, instant);
        if (!hour) {
            continue;
        }
        const auto moment = record::momentOf(*station, *hour);
        promise(moment.has_value(), "an hour that is taken has a moment", text);
        promise(std::chrono::abs(*moment - instant) <= std::chrono::minutes{60}, "and is near", text);
    }
}

void checkInZone(const Zone& zone, LocalTime local, std::string_view text) {
    const auto resolved = record::resolveLocal(zone, local);
    if (const auto* unique = std::get_if<record::UniqueTime>(&resolved)) {
        promise(zone.localAt(unique->instant) == local, "the clock showed it then", text);
        checkMoment(unique->instant, text);
    } else if (const auto* twice = std::get_if<record::DoubleTime>(&resolved)) {
        promise(twice->first < twice->second, "the earlier one first", text);
        promise(zone.localAt(twice->first) == local && zone.localAt(twice->second) == local,
                "the clock showed it twice", text);
        checkMoment(twice->first, text);
    } else {
        const Instant jump = std::get<record::ImpossibleTime>(resolved).jump;
        promise(zone.localAt(jump - std::chrono::seconds{1}) < local && zone.localAt(jump) > local,
                "the clock jumped over it", text);
    }
    const Instant near{local.time_since_epoch()};
    promise(std::chrono::abs(zone.standardOffsetAt(near)) < std::chrono::hours{16}, "an offset of this world",
            text);
}

void checkDate(std::string_view text) {
    if (const auto day = record::parseDate(text)) {
        promise(record::parseDate(record::dateText(*day)) == day, "a date comes back from its text", text);
    }
    using exchange::DateOrder;
    exchange::DateGuess guess;
    guess.look(text);
    for (const DateOrder order : {DateOrder::Unknown, DateOrder::DayFirst, DateOrder::MonthFirst}) {
        if (const auto day = exchange::readDate(text, order)) {
            promise(record::parseDate(record::dateText(*day)) == *day, "a date in a file comes back", text);
        }
    }
    const auto dayFirst = exchange::readDate(text, DateOrder::DayFirst);
    const auto monthFirst = exchange::readDate(text, DateOrder::MonthFirst);
    const auto unknown = exchange::readDate(text, DateOrder::Unknown);
    promise(!unknown || (dayFirst == unknown && monthFirst == unknown),
            "a date is taken without an order only where no order matters", text);
}

void checkZoneName(const std::string& name) {
    if (const auto zone = Zone::named(name)) {
        const Instant summer{date::sys_days{date::year{2025} / 7 / 1}};
        promise(std::chrono::abs(zone->offsetAt(summer)) < std::chrono::hours{16}, "an offset of this world",
                name);
        promise(Zone::named(zone->name()) == zone, "a zone is found by its own name", name);
    }
}

} // namespace

void runTimes(std::string_view bytes) {
    if (bytes.empty()) {
        return;
    }
    const Zone& zone = zones().at(static_cast<unsigned char>(bytes.front()) % zones().size());
    const std::string text{bytes.substr(1)};
    if (const auto written = record::parseTime(text)) {
        const std::string plain = record::localTimeText(written->local) +
                                  (written->offset ? record::offsetText(*written->offset) : std::string{});
        const auto again = record::parseTime(plain);
        // 24:00 of the last day of the last year is the first moment of a year that is not taken.
        if (!plain.starts_with("2201-01-01")) {
            promise(again && again->local == written->local && again->offset == written->offset,
                    "a time comes back from its text", plain);
        }
        if (written->offset) {
            checkMoment(Instant{written->local.time_since_epoch() - *written->offset}, text);
        }
        checkInZone(zone, written->local, text);
    }
    checkDate(text);
    if (const auto hour = record::parseHour(text)) {
        promise(hour->count() >= 0 && hour->count() < 24L * 60, "an hour of one day", text);
        promise(record::parseHour(record::hourText(*hour)) == hour, "an hour comes back from its text", text);
    }
    if (const auto month = record::parseMonth(text)) {
        promise(month->ok(), "a month of the year", text);
    }
    checkZoneName(text);
}

} // namespace wickbook::fuzz
