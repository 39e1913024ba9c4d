// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/outcome.h"

#include <string>

namespace wickbook::cli {

/// Keeps a verified copy of the book in the folder and rotates the copies there; says what was kept and what
/// was dropped. The folder must be there.
Outcome<ExitCode> keepOnShelf(const std::string& book, const std::string& folder);
/// The copies in a folder as CSV, the newest first: file, time_utc, reason, readings, revisions, bytes,
/// trouble. Pages are not verified.
Outcome<ExitCode> listShelf(const std::string& folder);
/// What differs between a book just restored and another one: totals to standard error, lines to standard
/// output.
Outcome<ExitCode> printDifference(const std::string& restored, const std::string& other);

} // namespace wickbook::cli
