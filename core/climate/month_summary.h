// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/climate/completeness.h"
#include "core/climate/month_entry.h"
#include "core/record/observing_hours.h"

#include <date/date.h>

#include <optional>
#include <span>
#include <vector>

/// A month's numbers, per observing hour and over the hours together. The word "daily mean" is never used:
/// the mean of observing hours averages the hours' means, equally weighted.
///
/// Counting, per hour and in the sum, always adds up:  n + setAside + missing = expected
///   expected  hours of the station's plan (observing_hours.h) that are due, or read before they are
///   n         of them with humidity that counts: what the means, extremes and threshold days rest on
///   setAside  of them read but left out: marked so by the caller, or an estimate
///   missing   the rest: nothing, a reason, one bulb only, ice or water not told
/// A reading filed under an hour the plan does not hold takes no part, like an extra reading.

namespace wickbook::climate {

struct Extreme {
    double value = 0;
    record::ObservingHour at;
    record::Instant instant{}; ///< when it was read
};

struct HourSummary {
    std::optional<record::HourOfDay> hour; ///< none: all hours, their means equally weighted
    int expected = 0;
    int n = 0;                                ///< readings with humidity that count
    int missing = 0;                          ///< expected hours without a usable pair
    int setAside = 0;                         ///< present but left out
    std::optional<double> meanDry, meanWet;   ///< °C, corrected
    std::optional<double> meanVapourPressure; ///< hPa
    std::optional<double>
        dewPointOfMeanVapourPressure;     ///< °C; f is the mean of the readings' (1 but aspirated)
    std::optional<double> meanDewPoint;   ///< °C; missing where a counted reading has no dew point
    std::optional<double> meanHumidity;   ///< %, mean of the relative humidities
    std::optional<double> meanDepression; ///< K
    /// Of equal values the earliest.
    std::optional<Extreme> highestHumidity, lowestHumidity;
    std::optional<Extreme> highestDewPoint, lowestDewPoint;
    std::optional<Extreme> highestVapourPressure, lowestVapourPressure;
    std::optional<Extreme> highestDepression, lowestDepression;
    int daysAtOrAbove95 = 0;          ///< days with a counted reading at or above the upper threshold
    int daysAtOrBelow40 = 0;          ///< days with a counted reading at or below the lower threshold
    int daysWithFog = 0;              ///< days with fog noted at the hour, whether or not its humidity counts
    Withheld withheld = Withheld::No; ///< where set, the means are missing; extremes and counts stay
};

struct MonthSummary {
    date::year_month month;
    std::vector<HourSummary> hours; ///< by hour of day; every hour the plan has on some day of the month
    /// Counts are sums. Means are withheld where one hour's are, with that hour's reason (the earliest such).
    HourSummary all;
    int hoursToCome = 0; ///< planned hours not yet due: in none of the counts above
};

struct MonthOptions {
    CompletenessRule completeness;
    double highThreshold = 95; ///< %
    double lowThreshold = 40;  ///< %
    /// Hours after this moment without a reading are to come, not missing. None: the whole month is due.
    std::optional<record::Instant> dueUntil = std::nullopt;
};

/// Summary of the entries filed under the month; others are passed over, in any order. Extra readings
/// (without an hour) take no part; estimates are left out of means and extremes and counted as set aside. The
/// means are of the calendar month: an hour kept only from the 20th on has no mean (see completeness.h).
MonthSummary summariseMonth(const record::StationRecord& station, date::year_month month,
                            std::span<const MonthEntry> entries, const MonthOptions& options = {});

} // namespace wickbook::climate
