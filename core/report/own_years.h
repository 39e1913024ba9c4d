// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/climate/month_summary.h"
#include "core/climate/station_average.h"

#include <date/date.h>

#include <optional>
#include <vector>

/// The same calendar month in the station's other years: what "usual" means here. Called the station average
/// of n years; a normal only from thirty years on, of which at least 80 % have a mean (WMO-No. 1203).

namespace wickbook::report {

inline constexpr int kFewestYearsForAverage = 5;
inline constexpr int kYearsOfANormal = 30;

/// One other year's month, as its own report has it: the mean of observing hours, none where it is withheld.
struct YearOfMonth {
    date::year year{};
    std::optional<double> meanHumidity;       ///< %
    std::optional<double> meanDewPoint;       ///< °C
    std::optional<double> meanVapourPressure; ///< hPa
};

/// How a month stands to the other years' means of one quantity.
struct Usual {
    int years = 0;      ///< with a mean
    double average = 0; ///< of the years' means, equally weighted
    double spread = 0;  ///< standard deviation of the years' means (n − 1)
    double lowest = 0, highest = 0;
    date::year lowestYear{}, highestYear{};
    bool isNormal = false; ///< thirty years or more, 80 % of them with a mean
};

struct OwnYears {
    std::vector<YearOfMonth> years; ///< other years of the same series and the same observing hours, by year
    /// The single readings of those years at observing hours, as they are spread.
    std::optional<climate::StationAverage> readings;

    /// None with fewer than five years' means.
    [[nodiscard]] std::optional<Usual> humidity() const;
    [[nodiscard]] std::optional<Usual> dewPoint() const;
    [[nodiscard]] std::optional<Usual> vapourPressure() const;
};

/// Where a month's mean lies among the other years.
enum class Standing {
    AsUsual, ///< within one standard deviation of the years
    Below,   ///< further
    Above,
    Lowest, ///< further, and beyond every other year
    Highest
};
Standing standingOf(double mean, const Usual& usual);

} // namespace wickbook::report
