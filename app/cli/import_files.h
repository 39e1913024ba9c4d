// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/outcome.h"
#include "core/exchange/conflict.h"

#include <string>
#include <vector>

namespace wickbook::cli {

struct ImportRequest {
    std::string book;
    std::vector<std::string> files; ///< "-" for standard input
    exchange::ImportOptions options;
    exchange::OnConflict onConflict = exchange::OnConflict::Reject;
    std::string rejects; ///< file for rejected lines; empty: told on standard error only
    bool dryRun = false;
    bool strict = false;
};

/// Plans every file, holds the plans against the book, and stores all of it in one transaction or none.
/// Says on standard error what came of the lines. Found where strict and a line was rejected or a reading
/// that came in has a finding.
Outcome<ExitCode> importFiles(const ImportRequest& request);

} // namespace wickbook::cli
