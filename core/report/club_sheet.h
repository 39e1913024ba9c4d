// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/climate/completeness.h"
#include "core/record/instant.h"

#include <date/date.h>

#include <optional>
#include <string>
#include <vector>

/// Members' months side by side. Thermometers that hang differently read differently, so stations are grouped
/// by exposure and stand in alphabetical order within a group: nobody is ranked.

namespace wickbook::report {

/// A reading as a member's table gives it; used values, in °C, % and hPa.
struct ClubReading {
    record::StationDate date{};
    std::optional<record::HourOfDay> hour; ///< none: outside the observing hours
    std::optional<double> humidity, vapourPressure;
    bool setAside = false;
};

struct ClubMember {
    std::string station;
    bool invented = false;
    std::string exposure;            ///< "screen", as the sidecar has it
    std::optional<double> elevation; ///< m
    std::vector<record::HourOfDay> hours;
    date::year_month month{};
    std::vector<ClubReading> readings;
};

/// One observing hour of one member.
struct ClubLine {
    std::string station;
    bool invented = false;
    std::string exposure;
    std::optional<double> elevation; ///< m
    record::HourOfDay hour{};
    int n = 0;
    int days = 0;                                          ///< of the month
    std::optional<double> meanHumidity;                    ///< %
    std::optional<double> meanVapourPressure;              ///< hPa
    std::optional<double> dewPointOfMeanVapourPressure;    ///< °C, over water, without enhancement
    std::optional<double> highestHumidity, lowestHumidity; ///< %, at observing hours
    climate::Withheld withheld = climate::Withheld::No;    ///< where set there are no means
};

struct ClubSheet {
    date::year_month month{};
    std::vector<ClubLine> lines; ///< by exposure, then station, then hour
    bool unlikeExposures = false;
};

/// Pre: at least one member, all of one month.
ClubSheet clubSheet(const std::vector<ClubMember>& members, const climate::CompletenessRule& rule = {});

std::vector<std::string> clubHeader();
/// Cells of a table, each as long as the header; missing is empty.
std::vector<std::vector<std::string>> clubRows(const ClubSheet& sheet);

} // namespace wickbook::report
