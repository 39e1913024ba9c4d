// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/own_years.h"

#include <cmath>

namespace wickbook::report {

namespace {

std::optional<Usual> usualOf(const std::vector<YearOfMonth>& years,
                             std::optional<double> YearOfMonth::*quantity) {
    Usual usual;
    double sum = 0;
    for (const YearOfMonth& each : years) {
        const std::optional<double>& mean = each.*quantity;
        if (!mean) {
            continue;
        }
        if (usual.years == 0 || *mean < usual.lowest) {
            usual.lowest = *mean;
            usual.lowestYear = each.year;
        }
        if (usual.years == 0 || *mean > usual.highest) {
            usual.highest = *mean;
            usual.highestYear = each.year;
        }
        ++usual.years;
        sum += *mean;
    }
    if (usual.years < kFewestYearsForAverage) {
        return std::nullopt;
    }
    usual.average = sum / usual.years;
    double squares = 0;
    for (const YearOfMonth& each : years) {
        if (const std::optional<double>& mean = each.*quantity) {
            squares += (*mean - usual.average) * (*mean - usual.average);
        }
    }
    usual.spread = std::sqrt(squares / (usual.years - 1));
    // Of the years the station was read in that month at all, 80 % must have a mean.
    usual.isNormal = usual.years >= kYearsOfANormal && usual.years * 10 >= static_cast<int>(years.size()) * 8;
    return usual;
}

} // namespace

std::optional<Usual> OwnYears::humidity() const {
    return usualOf(years, &YearOfMonth::meanHumidity);
}

std::optional<Usual> OwnYears::dewPoint() const {
    return usualOf(years, &YearOfMonth::meanDewPoint);
}

std::optional<Usual> OwnYears::vapourPressure() const {
    return usualOf(years, &YearOfMonth::meanVapourPressure);
}

Standing standingOf(double mean, const Usual& usual) {
    const double departure = mean - usual.average;
    if (std::abs(departure) <= usual.spread) {
        return Standing::AsUsual;
    }
    if (departure < 0) {
        return mean < usual.lowest ? Standing::Lowest : Standing::Below;
    }
    return mean > usual.highest ? Standing::Highest : Standing::Above;
}

} // namespace wickbook::report
