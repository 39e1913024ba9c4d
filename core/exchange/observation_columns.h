// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/check_series.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

/// The table of observation columns (CSV written by export and the month report): name, how a cell is
/// written, the CF standard name and unit for the sidecar. Names and order are relied on by others: new ones
/// are added at the end. Everything that an observation holds (record/observation.h) has a column and comes
/// back unchanged through the import, the other columns are derived and passed over there. Not in a file of
/// observations: those withdrawn, and the history: revision begins with 1 in the book that takes it in. A
/// missing value is an empty cell.

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
