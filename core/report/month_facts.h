// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/month_report.h"

#include <string>
#include <vector>

/// What a newsletter's paragraph has to say of a month, as numbers and dates; sentences are made in ui/text.
/// Everything in it is at observing hours, and the paragraph must say so.

namespace wickbook::report {

/// A mean not given, and how much is missing of it.
struct WithheldMean {
    record::HourOfDay hour{};
    climate::Withheld because = climate::Withheld::No;
    int expected = 0;
    int n = 0;
};

struct MonthFacts {
    std::string stationName;
    bool invented = false; ///< the sample station: the paragraph must say so
    date::year_month month{};
    bool monthOver = true; ///< false: hours are still to come
    int hoursToCome = 0;

    int expected = 0, n = 0, missing = 0, setAside = 0;
    /// "mean of observing hours"; missing where withheld.
    std::optional<double> meanHumidity; ///< %
    std::optional<double> meanDewPoint; ///< °C
    /// ± of a single reading, k = 2, the month's median. Not the mean's own: a coefficient that is off is off
    /// all month, so averaging does not make it small.
    std::optional<double> humidityU95;                               ///< %
    std::optional<double> dewPointU95;                               ///< K
    std::optional<climate::Extreme> highestHumidity, lowestHumidity; ///< %
    std::optional<climate::Extreme> highestDewPoint, lowestDewPoint; ///< °C
    std::vector<WithheldMean> withheld;                              ///< hours without a mean, by hour of day

    int daysWithFog = 0;
    int daysAtOrAboveHigh = 0, daysAtOrBelowLow = 0;
    double highThreshold = 95, lowThreshold = 40; ///< %
    int corrected = 0;
    int openQueries = 0;
    int extraReadings = 0;
};

MonthFacts monthFacts(const MonthReport& report);

} // namespace wickbook::report
