// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/derived_reading.h"
#include "core/record/observing_hours.h"

#include <date/date.h>

#include <optional>
#include <span>
#include <string>
#include <vector>

/// A month's numbers, per observing hour and over the hours together. The word "daily mean" is never used:
/// the mean of observing hours averages the hours' means, equally weighted.

namespace wickbook::climate {

/// A reading and whether statistics leave it out (the checks and the person's judgement decide, see report).
struct MonthEntry {
    const record::DerivedReading* reading = nullptr;
    bool setAside = false;
};

struct Extreme {
    double value = 0;
    record::ObservingHour at;
    record::Instant instant{};
};

/// When a mean is not given (WMO-No. 1203): 11 or more days missing, or 5 or more in a row; a stricter 5/3
/// can be chosen.
struct CompletenessRule {
    int daysMissing = 11;
    int daysInARow = 5;
};

/// Why a mean is withheld.
enum class Withheld { No, TooManyMissing, TooManyInARow, NothingRead };

struct HourSummary {
    std::optional<record::HourOfDay> hour; ///< none: all hours, their means equally weighted
    int expected = 0;
    int n = 0;                                          ///< readings with humidity that count
    int missing = 0;                                    ///< expected hours without a usable pair
    int setAside = 0;                                   ///< present but left out
    std::optional<double> meanDry, meanWet;             ///< °C
    std::optional<double> meanVapourPressure;           ///< hPa
    std::optional<double> dewPointOfMeanVapourPressure; ///< °C
    std::optional<double> meanDewPoint;                 ///< °C
    std::optional<double> meanHumidity;                 ///< %
    std::optional<double> meanDepression;               ///< K
    std::optional<Extreme> highestHumidity, lowestHumidity;
    std::optional<Extreme> highestDewPoint, lowestDewPoint;
    std::optional<Extreme> highestVapourPressure, lowestVapourPressure;
    std::optional<Extreme> highestDepression, lowestDepression;
    int daysAtOrAbove95 = 0; ///< days (for one hour: readings) at or above the upper threshold
    int daysAtOrBelow40 = 0;
    int daysWithFog = 0;
    Withheld withheld = Withheld::No; ///< where set, the means are missing; extremes and counts stay
};

struct MonthSummary {
    date::year_month month;
    std::vector<HourSummary> hours; ///< by hour of day
    HourSummary all;
};

struct MonthOptions {
    CompletenessRule completeness;
    double highThreshold = 95; ///< %
    double lowThreshold = 40;  ///< %
};

/// Summary of the entries filed under the month. Extra readings (without an hour) take no part;
/// estimates are left out of means and extremes and counted as set aside.
MonthSummary summariseMonth(const record::StationRecord& station, date::year_month month,
                            std::span<const MonthEntry> entries, const MonthOptions& options = {});

/// "too-many-days-missing", "too-many-days-in-a-row", "nothing-read", or empty.
std::string_view withheldName(Withheld withheld);

} // namespace wickbook::climate
