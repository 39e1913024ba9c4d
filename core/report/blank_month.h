// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/observing_hours.h"
#include "core/record/station_record.h"

#include <string>
#include <vector>

/// A month to be written down: a line for each hour the station keeps, clock changes and changes of the plan
/// included.

namespace wickbook::report {

struct BlankMonth {
    record::StationRecord station;
    date::year_month month{};
    std::vector<record::ExpectedHour> lines;
    units::TemperatureUnit dryUnit = units::TemperatureUnit::Celsius;
    units::TemperatureUnit wetUnit = units::TemperatureUnit::Celsius;
    bool dryTenths = true; ///< read finer than whole degrees
    bool wetTenths = true;
    bool whirled = false; ///< decides the order of reading
};

BlankMonth blankMonth(const record::StationRecord& station, date::year_month month);

/// The same lines as a table that the import takes once it is filled: date, hour and empty cells.
std::vector<std::string> blankMonthHeader();
std::vector<std::vector<std::string>> blankMonthRows(const BlankMonth& month);

} // namespace wickbook::report
