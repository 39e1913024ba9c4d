// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/limits.h"

#include <array>
#include <cassert>
#include <unordered_map>

namespace wickbook::checks {

namespace {

constexpr std::string_view kWmo305 = "WMO-No. 305, chapter 6";
constexpr std::string_view kPractice = "common practice, no source";
constexpr std::string_view kOurs = "our judgement";
constexpr std::string_view kComputed = "computed";

constexpr std::array kTable{
    // Gross limits: latitude above or up to 45 degrees, summer and winter half-year.
    LimitEntry{"gross-temperature.latitude", 45, "degrees", kWmo305},
    LimitEntry{"gross-temperature.high-summer-doubtful-low", -30, "°C", kWmo305},
    LimitEntry{"gross-temperature.high-summer-doubtful-high", 40, "°C", kWmo305},
    LimitEntry{"gross-temperature.high-summer-erroneous-low", -40, "°C", kWmo305},
    LimitEntry{"gross-temperature.high-summer-erroneous-high", 50, "°C", kWmo305},
    LimitEntry{"gross-temperature.high-winter-doubtful-low", -80, "°C", kWmo305},
    LimitEntry{"gross-temperature.high-winter-doubtful-high", 35, "°C", kWmo305},
    LimitEntry{"gross-temperature.high-winter-erroneous-low", -90, "°C", kWmo305},
    LimitEntry{"gross-temperature.high-winter-erroneous-high", 40, "°C", kWmo305},
    LimitEntry{"gross-temperature.low-summer-doubtful-low", -20, "°C", kWmo305},
    LimitEntry{"gross-temperature.low-summer-doubtful-high", 50, "°C", kWmo305},
    LimitEntry{"gross-temperature.low-summer-erroneous-low", -30, "°C", kWmo305},
    LimitEntry{"gross-temperature.low-summer-erroneous-high", 60, "°C", kWmo305},
    LimitEntry{"gross-temperature.low-winter-doubtful-low", -30, "°C", kWmo305},
    LimitEntry{"gross-temperature.low-winter-doubtful-high", 50, "°C", kWmo305},
    LimitEntry{"gross-temperature.low-winter-erroneous-low", -40, "°C", kWmo305},
    LimitEntry{"gross-temperature.low-winter-erroneous-high", 55, "°C", kWmo305},
    // Dew point: summer above 45 degrees and winter up to 45 degrees; the other two take the temperature
    // limits.
    LimitEntry{"gross-dew-point.doubtful-low", -35, "°C", kWmo305},
    LimitEntry{"gross-dew-point.doubtful-high", 35, "°C", kWmo305},
    LimitEntry{"gross-dew-point.erroneous-low", -45, "°C", kWmo305},
    LimitEntry{"gross-dew-point.erroneous-high", 40, "°C", kWmo305},
    LimitEntry{"gross-pressure.doubtful-low", 400, "hPa", kWmo305},
    LimitEntry{"gross-pressure.doubtful-high", 1080, "hPa", kWmo305},
    LimitEntry{"gross-pressure.erroneous-low", 300, "hPa", kWmo305},
    LimitEntry{"gross-pressure.erroneous-high", 1100, "hPa", kWmo305},
    LimitEntry{"gross-pressure.from-usual", 60, "hPa", kPractice},
    LimitEntry{"wet-above-dry.tolerance", 0.2, "K", kPractice},
    LimitEntry{"very-dry.lowest-humidity", 10, "%", kPractice},
    LimitEntry{"dry-wick.depression", 0.3, "K", kPractice},
    LimitEntry{"dry-wick.vapour-ratio", 1.35, "", kOurs},
    LimitEntry{"dry-wick.vapour-rise", 2.0, "hPa", kOurs},
    LimitEntry{"dry-wick.hours", 26, "h", kOurs},
    LimitEntry{"dry-wick.rise-in-repeats", 0.3, "K", kOurs},
    LimitEntry{"freezing-halt.hours", 24, "h", kOurs},
    LimitEntry{"freezing-halt.warming", 0.5, "K", kOurs},
    LimitEntry{"frozen-read-as-water.wet-below", -2, "°C", kComputed},
    LimitEntry{"frozen-read-as-water.humidity", 5, "%", kComputed},
    LimitEntry{"step-temperature.within-3-hours", 9, "K", kWmo305},
    LimitEntry{"step-temperature.within-6-hours", 15, "K", kWmo305},
    LimitEntry{"step-temperature.within-12-hours", 25, "K", kWmo305},
    LimitEntry{"step-dew-point.within-3-hours", 8, "K", kWmo305},
    LimitEntry{"step-dew-point.within-6-hours", 12, "K", kWmo305},
    LimitEntry{"step-dew-point.within-12-hours", 20, "K", kWmo305},
    LimitEntry{"persistence.tenths", 3, "readings", kPractice},
    LimitEntry{"persistence.halves", 5, "readings", kPractice},
    LimitEntry{"persistence.wholes", 8, "readings", kPractice},
    LimitEntry{"persistence.gap-hours", 36, "h", kOurs},
    LimitEntry{"digit-preference.fewest", 500, "readings", kOurs},
    LimitEntry{"digit-preference.chi-square", 21.666, "", "chi-square, 9 degrees of freedom, 1 %"},
    LimitEntry{"copied-day.fewest-tenths", 2, "readings", kOurs},
    LimitEntry{"copied-day.fewest-coarse", 3, "readings", kOurs},
    LimitEntry{"early.minutes", 15, "min", kPractice},
    LimitEntry{"late.minutes", 15, "min", kPractice},
    LimitEntry{"future.minutes", 0, "min", kPractice},
    LimitEntry{"climatology.spread", 3, "interquartile ranges", kPractice},
    LimitEntry{"climatology.years", 3, "years", kPractice},
    LimitEntry{"fog-but-dry.humidity", 80, "%", "162 fog hours of one year at one airport: lowest 84"},
    LimitEntry{"rain-but-dry.humidity", 40, "%", "one year at one airport: lowest 29, 5th percentile 63"},
    LimitEntry{"max-min.tolerance", 0.2, "K", kPractice},
    LimitEntry{"max-min.hours", 24, "h", kPractice},
    LimitEntry{"fine-but-saturated.humidity", 98, "%", kPractice},
    LimitEntry{"unlikely.read-right", 0.46, "", "measured by planting slips in a real register"},
};

} // namespace

std::span<const LimitEntry> limitTable() {
    return kTable;
}

double Limits::value(std::string_view name) const {
    static const auto kBuiltIn = [] {
        std::unordered_map<std::string_view, double> values;
        for (const LimitEntry& entry : kTable) {
            values.emplace(entry.name, entry.value);
        }
        return values;
    }();
    if (!own_.empty()) {
        if (const auto own = own_.find(std::string{name}); own != own_.end()) {
            return own->second;
        }
    }
    const auto builtIn = kBuiltIn.find(name);
    assert(builtIn != kBuiltIn.end());
    return builtIn != kBuiltIn.end() ? builtIn->second : 0.0;
}

} // namespace wickbook::checks
