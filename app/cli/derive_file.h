// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/pair_result.h"

#include <string>

namespace wickbook::cli {

/// Derives a file of pairs row by row, in bounded memory. Every row keeps its place and its own columns as
/// they stood; what can't be read or derived becomes a finding, never a failure. pressure_hpa, wick, exposure
/// and coefficient_per_k appear once, with the value used; the other results follow at the end.
/// Found where strict and any row has a finding.
Outcome<ExitCode> deriveFile(const std::string& inPath, const std::string& outPath,
                             const PairDefaults& defaults, bool strict);

} // namespace wickbook::cli
