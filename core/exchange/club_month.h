// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/club_sheet.h"

#include <tl/expected.hpp>

#include <iosfwd>
#include <string>

/// One member's month as it was handed on: month.csv and its sidecar month.csv-metadata.json. The numbers are
/// worked out from the readings themselves; summary.csv is not asked.

namespace wickbook::exchange {

enum class ClubFileProblem {
    NoTable,    ///< the CSV can't be read, or lacks the columns of an observation table
    NoMetadata, ///< the sidecar is no JSON of ours, or names no station
    NoReading,  ///< no line with a date
    TwoMonths   ///< readings of more than one month
};
struct ClubFileError {
    ClubFileProblem problem = ClubFileProblem::NoTable;
    std::string detail; ///< a column's name, a month
};

/// csv: the table; metadata: the sidecar's text.
tl::expected<report::ClubMember, ClubFileError> clubMember(std::istream& csv, const std::string& metadata);

} // namespace wickbook::exchange
