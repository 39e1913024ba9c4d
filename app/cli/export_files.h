// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/book_access.h"
#include "core/checks/check_series.h"

#include <span>
#include <string>
#include <vector>

namespace wickbook::cli {

/// Name of a file made from the station's name and the dates it holds: "hill-farm_2025-03-01_2025-03-31.csv".
/// Letters and digits of ASCII only, so that it fits every disk.
std::string exportFileName(const record::StationRecord& station,
                           const std::vector<checks::CheckedReading>& readings);

/// The station's name in letters and digits of ASCII: "hill-farm", or "station".
std::string stationSlug(const record::StationRecord& station);

/// The register as SEF files (core/exchange/sef_writer.h) in a folder, which is made; how many were written,
/// and of how many values.
struct SefWritten {
    std::size_t files = 0;
    std::size_t values = 0;
};
Outcome<SefWritten> writeSef(const OpenedBook& opened,
                             std::span<const record::StoredObservation> observations,
                             const std::string& folder);

/// Observations as CSV; a file has its metadata beside it, <name>-metadata.json. "-": standard output, no
/// metadata. A folder (there already, or with a '/' at its end) gets a file named by exportFileName. The path
/// written.
Outcome<std::string> writeObservations(const OpenedBook& opened,
                                       const std::vector<checks::CheckedReading>& readings,
                                       const std::string& out);

} // namespace wickbook::cli
