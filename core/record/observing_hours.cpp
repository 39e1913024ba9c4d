// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/observing_hours.h"

#include <algorithm>
#include <cstdlib>

namespace wickbook::record {

namespace {

/// The moment of a date and hour under one period's rule; none where the clock skips it.
std::optional<Instant> momentUnder(const StationPeriod& period, const ObservingHour& hour) {
    const LocalTime nominal = LocalTime{hour.date} + hour.hour;
    switch (period.hourRule) {
    case HourRule::Utc:
        return Instant{nominal.time_since_epoch()};
    case HourRule::Standard: {
        // The standard offset hardly ever changes: one guess and one look at the offset there is enough.
        const Instant guess{nominal.time_since_epoch() -
                            period.zone.standardOffsetAt(Instant{nominal.time_since_epoch()})};
        return Instant{nominal.time_since_epoch() - period.zone.standardOffsetAt(guess)};
    }
    case HourRule::Clock: {
        const ResolvedTime resolved = resolveLocal(period.zone, nominal);
        if (const auto* unique = std::get_if<UniqueTime>(&resolved)) {
            return unique->instant;
        }
        if (const auto* twice = std::get_if<DoubleTime>(&resolved)) {
            return twice->first;
        }
        return std::nullopt;
    }
    }
    return std::nullopt;
}

/// Periods that could hold an hour of these dates: a day's margin each way covers every offset.
bool touches(const StationPeriod& period, StationDate from, StationDate to) {
    const Instant begin{LocalTime{from - date::days{1}}.time_since_epoch()};
    const Instant end{LocalTime{to + date::days{2}}.time_since_epoch()};
    return (!period.from || *period.from < end) && (!period.to || *period.to > begin);
}

} // namespace

std::vector<ExpectedHour> expectedHours(const StationRecord& station, StationDate from, StationDate to) {
    std::vector<ExpectedHour> result;
    for (const StationPeriod& period : station.periods()) {
        if (!touches(period, from, to)) {
            continue;
        }
        for (StationDate day = from; day <= to; day += date::days{1}) {
            for (const HourOfDay hour : period.hours) {
                const ObservingHour observingHour{day, hour};
                const auto moment = momentUnder(period, observingHour);
                if (moment && period.contains(*moment)) {
                    result.push_back({observingHour, *moment});
                }
            }
        }
    }
    std::sort(result.begin(), result.end(), [](const ExpectedHour& a, const ExpectedHour& b) {
        return a.instant != b.instant ? a.instant < b.instant : a.hour < b.hour;
    });
    // Where a change of zone or rule lets the same nominal hour come twice, it is one hour: the first.
    std::vector<ExpectedHour> unique;
    for (const ExpectedHour& hour : result) {
        const bool again =
            std::any_of(unique.rbegin(), unique.rbegin() + std::min<std::ptrdiff_t>(8, std::ssize(unique)),
                        [&](const ExpectedHour& seen) { return seen.hour == hour.hour; });
        if (!again) {
            unique.push_back(hour);
        }
    }
    return unique;
}

std::optional<ObservingHour> hourFor(const StationRecord& station, Instant instant) {
    // Under the rule "utc" the nominal date is UTC's; a day's margin each way covers every offset and rule.
    const auto day = date::floor<date::days>(LocalTime{instant.time_since_epoch()});
    const auto window = std::chrono::seconds{std::chrono::minutes{station.facts().hourWindowMinutes}};
    std::optional<ObservingHour> best;
    std::chrono::seconds bestDistance = window;
    for (const ExpectedHour& hour : expectedHours(station, day - date::days{1}, day + date::days{1})) {
        const std::chrono::seconds distance{std::abs((hour.instant - instant).count())};
        // Expected hours come in time order, so "strictly nearer" leaves ties to the earlier.
        if (distance < bestDistance || (!best && distance <= bestDistance)) {
            best = hour.hour;
            bestDistance = distance;
        }
    }
    return best;
}

std::optional<Instant> momentOf(const StationRecord& station, const ObservingHour& hour) {
    for (const ExpectedHour& expected : expectedHours(station, hour.date, hour.date)) {
        if (expected.hour == hour) {
            return expected.instant;
        }
    }
    return std::nullopt;
}

void placeInTime(Observation& observation, const StationRecord& station, Instant instant) {
    const StationPeriod& period = station.periodAt(instant);
    observation.instant = instant;
    observation.zone = period.zone.name();
    observation.offset = period.zone.offsetAt(instant);
    observation.hour = hourFor(station, instant);
}

} // namespace wickbook::record
