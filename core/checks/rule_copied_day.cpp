// SPDX-License-Identifier: GPL-3.0-or-later
// copied-day: every reading of the day is equal to the same hour's of an earlier day within the neighbours
// (common practice, no source). Two hours that agree to the tenth are enough; on coarser scales three, for
// they agree by chance. Quiet where every reading of the day has fog or rime noted: the air then does stand
// still. Doubtful, on the later day's readings up to this one, once the day has that many.
// Arguments: date of the other day (2025-03-01); count of equal readings.
#include "core/checks/rule_support.h"
#include "core/checks/rules.h"

#include <algorithm>
#include <set>

namespace wickbook::checks::rules {

namespace {

using DayPairs = std::vector<const record::DerivedReading*>;

void addTo(DayPairs& day, const record::DerivedReading& reading, record::StationDate date) {
    const auto& hour = reading.values().hour;
    if (hour && hour->date == date && reading.values().hasPair()) {
        day.push_back(&reading);
    }
}

/// How many hours of the day agree with the other's; none where one of them does not.
std::optional<std::size_t> agreement(const DayPairs& day, const DayPairs& other) {
    std::size_t equal = 0;
    for (const auto* reading : day) {
        for (const auto* candidate : other) {
            if (candidate->values().hour->hour == reading->values().hour->hour) {
                if (!samePairRead(*reading, *candidate)) {
                    return std::nullopt;
                }
                ++equal;
            }
        }
    }
    return equal;
}

} // namespace

void copiedDay(const ReadingContext& context, Findings& findings) {
    const auto& hour = context.reading.values().hour;
    if (!hour || !context.reading.values().hasPair()) {
        return;
    }
    DayPairs today;
    std::set<record::StationDate> others;
    for (const auto& neighbour : context.before) {
        addTo(today, neighbour, hour->date);
        if (neighbour.values().hour && neighbour.values().hour->date < hour->date) {
            others.insert(neighbour.values().hour->date);
        }
    }
    today.push_back(&context.reading);
    for (const auto& neighbour : context.after) {
        addTo(today, neighbour, hour->date);
    }
    if (std::all_of(today.begin(), today.end(), [](const record::DerivedReading* reading) {
            return hasAnyWeather(*reading, {record::Weather::Fog, record::Weather::Rime});
        })) {
        return;
    }
    const double fewest =
        context.limits.value(coarserStep(context.reading) <= kTenthsUpTo ? "copied-day.fewest-tenths"
                                                                         : "copied-day.fewest-coarse");
    for (auto date = others.rbegin(); date != others.rend(); ++date) {
        DayPairs other;
        for (const auto& neighbour : context.before) {
            addTo(other, neighbour, *date);
        }
        const auto equal = agreement(today, other);
        if (equal && *equal == today.size() && static_cast<double>(*equal) >= fewest) {
            findings.push_back({"copied-day",
                                Severity::Doubtful,
                                Root::Persistence,
                                {{"date", record::dateText(*date)}, {"count", static_cast<double>(*equal)}},
                                {}});
            return;
        }
    }
}

} // namespace wickbook::checks::rules
