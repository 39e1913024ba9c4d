// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"

#include <functional>
#include <istream>
#include <string>
#include <vector>

/// Readings of another instrument beside the station's, from a CSV file: a logger's, or typed in a table.
///
/// Columns, by name, in any order and case; unknown ones are left aside:
///   time (with or without offset; else date and clock), rh or humidity (%), temperature (the other's air),
///   other_dry, other_wet, other_wick (where it is a psychrometer), dry, wet, wick (the station's own, where
///   the register has none), pressure (hPa), wind (Beaufort), note.
/// A temperature's column may end in _f or _c; else the station's unit holds. Missing cells, numbers and
/// times are read as in a register (import_plan.h). A line without a time, or with neither a humidity nor
/// another pair, is rejected with its reason; nothing is guessed.

namespace wickbook::exchange {

struct BesideFile {
    std::vector<record::BesideReading> readings; ///< without identities: the caller's
    std::vector<RejectedLine> rejected;
    std::int64_t lines = 0;
    std::vector<std::string> leftAside; ///< headers of columns nobody asked for
};

/// Lines a file may have: a minute's readings of half a year.
inline constexpr std::int64_t kMostBesideLines = 250'000;

/// Errors: an empty file, one without a column for time or for humidity, or of too many lines.
tl::expected<BesideFile, ImportError> readBesideFile(std::istream& input, const std::string& fileName,
                                                     const record::StationRecord& station,
                                                     units::DecimalMark decimal = units::DecimalMark::Either);

} // namespace wickbook::exchange
