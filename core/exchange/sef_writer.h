// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/revision.h"
#include "core/record/station_record.h"

#include <span>
#include <string>
#include <vector>

/// The register as files of the Station Exchange Format, version 1.0.0 (see sef_reader.h): one variable a
/// file, dry bulb (ta), wet bulb (tb), ice bulb (ibt) and station pressure (p). Values are as read, without
/// corrections, in °C or hPa; what was read in °F stands beside its value in Meta (orig=61.5F). What a person
/// judged doubtful or erroneous is marked qc=…; estimates and missing readings are left out: they were not
/// observed. A header has one place, so a station that moved gives a set of files for each.
/// Times are in UTC, to the minute. Notes and names are the register's and stay there.

namespace wickbook::exchange {

struct SefOutFile {
    std::string name; ///< "hill-farm_19260101-19301231_ta.tsv"
    std::string bytes;
    std::size_t observations = 0;
};

/// By place, then ta, tb, ibt, p; a variable without a value has no file. observations: in time order.
/// slug: the station in letters and digits of ASCII, for names and ID.
std::vector<SefOutFile> sefFiles(const record::StationRecord& station,
                                 std::span<const record::StoredObservation> observations,
                                 const std::string& slug);

} // namespace wickbook::exchange
