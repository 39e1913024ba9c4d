// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/book_access.h"
#include "core/checks/check_series.h"

#include <string>
#include <vector>

namespace wickbook::cli {

/// Name of a file made from the station's name and the dates it holds: "hill-farm_2025-03-01_2025-03-31.csv".
/// Letters and digits of ASCII only, so that it fits every disk.
std::string exportFileName(const record::StationRecord& station,
                           const std::vector<checks::CheckedReading>& readings);

/// Observations as CSV; a file has its metadata beside it, <name>-metadata.json. "-": standard output, no
/// metadata. A folder (there already, or with a '/' at its end) gets a file named by exportFileName. The path
/// written.
Outcome<std::string> writeObservations(const OpenedBook& opened,
                                       const std::vector<checks::CheckedReading>& readings,
                                       const std::string& out);

} // namespace wickbook::cli
