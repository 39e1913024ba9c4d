// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

/// What came of the lines of an import: counts, and the first rejected lines to be told. Little memory,
/// however many lines there were.

namespace wickbook::cli {

struct ImportTally {
    std::int64_t lines = 0;
    std::int64_t incomplete = 0;
    std::int64_t added = 0;
    std::int64_t revised = 0;
    std::int64_t kept = 0;
    std::int64_t same = 0;
    std::int64_t rejected = 0;
    std::vector<exchange::RejectedLine> firstRejected; ///< as many as are told one by one
    std::map<std::string, std::int64_t> reasons;
    std::optional<record::StationDate> firstDay; ///< of what came in
    std::optional<record::StationDate> lastDay;

    void reject(const exchange::RejectedLine& line);
    void takeOver(const record::Observation& values);
};

/// The first rejected lines, a sentence each. rejectsFile: where all of them are; empty: nowhere.
void tellRejected(const ImportTally& tally, const std::string& rejectsFile);
void tellSummary(const ImportTally& tally, bool dryRun);

} // namespace wickbook::cli
