// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/copied_days.h"

#include "core/checks/roots.h"
#include "core/checks/rule_support.h"

#include <algorithm>
#include <map>

namespace wickbook::checks {

namespace {

constexpr std::string_view kCode = "copied-day";

using Day = std::vector<std::size_t>; ///< places in the series, by hour

/// Whether every reading of the day stands at the same hour of the other day too.
bool isCopyOf(const Day& day, const Day& other, std::span<const record::DerivedReading> series) {
    return std::all_of(day.begin(), day.end(), [&](std::size_t place) {
        return std::any_of(other.begin(), other.end(), [&](std::size_t candidate) {
            return series[place].values().hour->hour == series[candidate].values().hour->hour &&
                   samePairRead(series[place], series[candidate]);
        });
    });
}

/// The observer has said why the air stood still.
bool isFoggy(const Day& day, std::span<const record::DerivedReading> series) {
    return std::all_of(day.begin(), day.end(), [&](std::size_t place) {
        return hasAnyWeather(series[place], {record::Weather::Fog, record::Weather::Rime});
    });
}

std::size_t fewestEqual(const Day& day, std::span<const record::DerivedReading> series,
                        const LimitAt& limitAt) {
    const bool tenths = std::all_of(
        day.begin(), day.end(), [&](std::size_t place) { return coarserStep(series[place]) <= kTenthsUpTo; });
    const record::Instant at = series[day.front()].values().instant;
    return static_cast<std::size_t>(tenths ? limitAt(at, "copied-day.fewest-tenths")
                                           : limitAt(at, "copied-day.fewest-coarse") + 1);
}

void mark(Judgement& judged, const record::Observation& values, record::StationDate other,
          std::size_t count) {
    const bool known = std::any_of(judged.findings.begin(), judged.findings.end(),
                                   [](const Finding& finding) { return finding.code == kCode; });
    if (known) {
        return;
    }
    judged.findings.push_back({kCode,
                               Severity::Doubtful,
                               Root::Persistence,
                               {{"date", record::dateText(other)}, {"count", static_cast<double>(count)}},
                               {}});
    sortGravestFirst(judged.findings);
    judged.leftOut = leftOut(values, judged.findings);
}

} // namespace

void markCopiedDays(std::span<const record::DerivedReading> series, std::size_t first, const LimitAt& limitAt,
                    std::vector<Judgement>& judged) {
    std::map<record::StationDate, Day> days;
    for (std::size_t place = 0; place < series.size(); ++place) {
        const record::Observation& values = series[place].values();
        if (values.hour && values.hasPair() && !values.withdrawn &&
            values.origin != record::Origin::Missing) {
            days[values.hour->date].push_back(place);
        }
    }
    for (auto day = days.begin(); day != days.end(); ++day) {
        if (isFoggy(day->second, series) || day->second.size() < fewestEqual(day->second, series, limitAt)) {
            continue;
        }
        const date::year_month_day ymd{day->first};
        const record::StationDate start{date::local_days{ymd.year() / ymd.month() / 1}};
        for (auto other = day; other != days.begin();) {
            --other;
            if (other->first < start) {
                break;
            }
            if (!isCopyOf(day->second, other->second, series)) {
                continue;
            }
            for (const std::size_t place : day->second) {
                if (place >= first && place - first < judged.size()) {
                    mark(judged[place - first], series[place].values(), other->first, day->second.size());
                }
            }
            break;
        }
    }
}

} // namespace wickbook::checks
