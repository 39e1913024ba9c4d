// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/outcome.h"
#include "app/cli/paper_options.h"

#include <string>
#include <vector>

namespace wickbook::cli {

/// Members' month folders (or their month.csv) side by side in one CSV or PDF. What can't be used is named
/// and the rest goes on; strict: with exit code 1.
Outcome<ExitCode> clubReport(const std::vector<std::string>& members, const std::string& out,
                             const PaperOptions& pages, bool strict);

} // namespace wickbook::cli
