// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/limits.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <iterator>
#include <set>
#include <unordered_map>

namespace wickbook::checks {

namespace {

constexpr std::string_view kWmo305 = "WMO-No. 305, chapter 6";
constexpr std::string_view kWmo1203 = "WMO-No. 1203, from memory";
constexpr std::string_view kPractice = "common practice, no source";
constexpr std::string_view kOurs = "our judgement";
constexpr std::string_view kComputed = "computed";

constexpr std::array kTable{
    // Gross limits: latitude above or up to 45 degrees, summer and winter half-year.
    LimitEntry{"gross-temperature.latitude", 45, "degrees", 0, 90, kWmo305},
    LimitEntry{"gross-temperature.high-summer-doubtful-low", -30, "°C", -100, 100, kWmo305},
    LimitEntry{"gross-temperature.high-summer-doubtful-high", 40, "°C", -100, 100, kWmo305},
    LimitEntry{"gross-temperature.high-summer-erroneous-low", -40, "°C", -100, 100, kWmo305},
    LimitEntry{"gross-temperature.high-summer-erroneous-high", 50, "°C", -100, 100, kWmo305},
    LimitEntry{"gross-temperature.high-winter-doubtful-low", -80, "°C", -100, 100, kWmo305},
    LimitEntry{"gross-temperature.high-winter-doubtful-high", 35, "°C", -100, 100, kWmo305},
    LimitEntry{"gross-temperature.high-winter-erroneous-low", -90, "°C", -100, 100, kWmo305},
    LimitEntry{"gross-temperature.high-winter-erroneous-high", 40, "°C", -100, 100, kWmo305},
    LimitEntry{"gross-temperature.low-summer-doubtful-low", -20, "°C", -100, 100, kWmo305},
    LimitEntry{"gross-temperature.low-summer-doubtful-high", 50, "°C", -100, 100, kWmo305},
    LimitEntry{"gross-temperature.low-summer-erroneous-low", -30, "°C", -100, 100, kWmo305},
    LimitEntry{"gross-temperature.low-summer-erroneous-high", 60, "°C", -100, 100, kWmo305},
    LimitEntry{"gross-temperature.low-winter-doubtful-low", -30, "°C", -100, 100, kWmo305},
    LimitEntry{"gross-temperature.low-winter-doubtful-high", 50, "°C", -100, 100, kWmo305},
    LimitEntry{"gross-temperature.low-winter-erroneous-low", -40, "°C", -100, 100, kWmo305},
    LimitEntry{"gross-temperature.low-winter-erroneous-high", 55, "°C", -100, 100, kWmo305},
    // Dew point: summer above 45 degrees and winter up to 45 degrees; the other two take the temperature
    // limits.
    LimitEntry{"gross-dew-point.doubtful-low", -35, "°C", -100, 100, kWmo305},
    LimitEntry{"gross-dew-point.doubtful-high", 35, "°C", -100, 100, kWmo305},
    LimitEntry{"gross-dew-point.erroneous-low", -45, "°C", -100, 100, kWmo305},
    LimitEntry{"gross-dew-point.erroneous-high", 40, "°C", -100, 100, kWmo305},
    LimitEntry{"gross-pressure.doubtful-low", 400, "hPa", 100, 1200, kWmo305},
    LimitEntry{"gross-pressure.doubtful-high", 1080, "hPa", 100, 1200, kWmo305},
    LimitEntry{"gross-pressure.erroneous-low", 300, "hPa", 100, 1200, kWmo305},
    LimitEntry{"gross-pressure.erroneous-high", 1100, "hPa", 100, 1200, kWmo305},
    LimitEntry{"gross-pressure.from-usual", 60, "hPa", 1, 300, kPractice},
    LimitEntry{"wet-above-dry.tolerance", 0.2, "K", 0.2, 0.2, kPractice},
    LimitEntry{"very-dry.lowest-humidity", 10, "%", 0, 100, kPractice},
    LimitEntry{"dry-wick.depression", 0.3, "K", 0, 60, kPractice},
    LimitEntry{"dry-wick.vapour-ratio", 1.35, "", 1, 10, kOurs},
    LimitEntry{"dry-wick.vapour-rise", 2.0, "hPa", 0, 50, kOurs},
    LimitEntry{"dry-wick.hours", 26, "h", 0, 96, kOurs},
    LimitEntry{"dry-wick.rise-in-repeats", 0.3, "K", 0, 60, kOurs},
    LimitEntry{"freezing-halt.hours", 24, "h", 0, 96, kOurs},
    LimitEntry{"freezing-halt.warming", 0.5, "K", 0, 60, kOurs},
    LimitEntry{"frozen-read-as-water.wet-below", -2, "°C", -40, 0, kComputed},
    LimitEntry{"frozen-read-as-water.humidity", 5, "%", 0, 100, kComputed},
    LimitEntry{"step-temperature.within-3-hours", 9, "K", 0, 60, kWmo305},
    LimitEntry{"step-temperature.within-6-hours", 15, "K", 0, 60, kWmo305},
    LimitEntry{"step-temperature.within-12-hours", 25, "K", 0, 60, kWmo305},
    LimitEntry{"step-dew-point.within-3-hours", 8, "K", 0, 60, kWmo305},
    LimitEntry{"step-dew-point.within-6-hours", 12, "K", 0, 60, kWmo305},
    LimitEntry{"step-dew-point.within-12-hours", 20, "K", 0, 60, kWmo305},
    LimitEntry{"persistence.tenths", 3, "readings", 2, 13, kPractice},
    LimitEntry{"persistence.halves", 5, "readings", 2, 13, kPractice},
    LimitEntry{"persistence.wholes", 8, "readings", 2, 13, kPractice},
    LimitEntry{"persistence.gap-hours", 36, "h", 0, 96, kOurs},
    LimitEntry{"digit-preference.fewest", 500, "readings", 100, 1000000, kOurs},
    LimitEntry{"digit-preference.chi-square", 21.666, "", 9, 1000, "chi-square, 9 degrees of freedom, 1 %"},
    LimitEntry{"copied-day.fewest-tenths", 2, "readings", 1, 8, kOurs},
    LimitEntry{"copied-day.fewest-coarse", 3, "readings", 1, 8, kOurs},
    LimitEntry{"early.minutes", 15, "min", 0, 720, kPractice},
    LimitEntry{"late.minutes", 15, "min", 0, 720, kPractice},
    LimitEntry{"future.minutes", 0, "min", 0, 720, kPractice},
    LimitEntry{"climatology.spread", 3, "interquartile ranges", 0.5, 20, kPractice},
    LimitEntry{"climatology.years", 3, "years", 2, 100, kPractice},
    LimitEntry{"fog-but-dry.humidity", 80, "%", 0, 100,
               "162 fog hours of one year at one airport: lowest 84"},
    LimitEntry{"rain-but-dry.humidity", 40, "%", 0, 100,
               "one year at one airport: lowest 29, 5th percentile 63"},
    LimitEntry{"max-min.tolerance", 0.2, "K", 0, 60, kPractice},
    LimitEntry{"max-min.hours", 24, "h", 0, 96, kPractice},
    LimitEntry{"fine-but-saturated.humidity", 98, "%", 50, 110, kPractice},
    LimitEntry{"month.days-missing", 11, "days", 1, 31, kWmo1203},
    LimitEntry{"month.days-in-a-row", 5, "days", 1, 31, kWmo1203},
    LimitEntry{"month.damp-day", 95, "%", 0, 110, kPractice},
    LimitEntry{"month.dry-day", 40, "%", 0, 110, kPractice},
    LimitEntry{"unlikely.read-right", 0.46, "", 0, 1, "measured by planting slips in a real register"},
};

} // namespace

std::span<const LimitEntry> limitTable() {
    return kTable;
}

namespace {

/// The names differ in length, ends and middle; every rule asks for some at every reading.
struct NameHash {
    std::size_t operator()(std::string_view name) const {
        const auto at = [&](std::size_t i) {
            return static_cast<std::size_t>(static_cast<unsigned char>(name[i]));
        };
        return name.empty()
                   ? 0
                   : name.size() + 31 * at(0) + 1021 * at(name.size() - 1) + 8191 * at(name.size() / 2);
    }
};

} // namespace

const LimitEntry* limitEntry(std::string_view name) {
    static const auto kByName = [] {
        std::unordered_map<std::string_view, const LimitEntry*, NameHash> entries;
        for (const LimitEntry& entry : kTable) {
            entries.emplace(entry.name, &entry);
        }
        return entries;
    }();
    const auto found = kByName.find(name);
    return found == kByName.end() ? nullptr : found->second;
}

bool isFixed(const LimitEntry& entry) {
    return entry.lowest == entry.highest;
}

bool isWhole(const LimitEntry& entry) {
    return entry.unit == "readings" || entry.unit == "years" || entry.unit == "days";
}

double Limits::value(std::string_view name) const {
    if (!own_.empty()) {
        if (const auto own = own_.find(name); own != own_.end()) {
            return own->second;
        }
    }
    const LimitEntry* builtIn = limitEntry(name);
    assert(builtIn != nullptr);
    return builtIn != nullptr ? builtIn->value : 0.0;
}

StationLimits::StationLimits(const record::LimitChanges& changes) {
    std::set<record::Instant> moments;
    for (const auto& [limit, value] : changes) {
        if (limit.from) {
            moments.insert(*limit.from);
        }
    }
    const auto addSpan = [&](std::optional<record::Instant> from) {
        Limits::Own own;
        for (const auto& [limit, value] : changes) { // of one name, in time order
            if (limit.from && (!from || *limit.from > *from)) {
                continue;
            }
            if (value) {
                own.insert_or_assign(limit.name, *value);
            } else {
                own.erase(limit.name);
            }
        }
        if (from) {
            spans_.push_back({from, Limits{std::move(own)}});
        } else {
            spans_.front().limits = Limits{std::move(own)};
        }
    };
    addSpan({});
    for (const record::Instant moment : moments) {
        addSpan(moment);
    }
}

const Limits& StationLimits::at(record::Instant instant) const {
    const auto after =
        std::upper_bound(std::next(spans_.begin()), spans_.end(), instant,
                         [](record::Instant moment, const LimitSpan& span) { return moment < *span.from; });
    return std::prev(after)->limits;
}

double StationLimits::lowest(std::string_view name) const {
    double lowest = spans_.front().limits.value(name);
    for (const LimitSpan& span : spans_) {
        lowest = std::min(lowest, span.limits.value(name));
    }
    return lowest;
}

} // namespace wickbook::checks
