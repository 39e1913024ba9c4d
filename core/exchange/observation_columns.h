// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/check_series.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

/// The table of observation columns (CSV written by export and the month report): name, how a cell is
/// written, the CF standard name and unit for the sidecar. Names and order are relied on by others. Columns
/// of what was read (time_utc, hour, dry_read, wet_read, unit, wick, pressure_hpa where pressure_source is
/// "read", weather, wind_beaufort, origin, quality, observer, note) come back unchanged through the import;
/// the others are derived and passed over there. A missing value is an empty cell.

namespace wickbook::exchange {

struct ObservationColumn {
    std::string_view name;
    std::string_view datatype;     ///< CSVW: "dateTime", "date", "string", "decimal", "integer", "boolean"
    std::string_view unit;         ///< UCUM, empty for none
    std::string_view standardName; ///< CF, empty for none
    std::string_view description;
    std::string (*cell)(const checks::CheckedReading&, const record::StationRecord&);
};

std::span<const ObservationColumn> observationColumns();

std::vector<std::string> observationHeader();
std::vector<std::string> observationRow(const checks::CheckedReading& reading,
                                        const record::StationRecord& station);

} // namespace wickbook::exchange
