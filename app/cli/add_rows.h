// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/outcome.h"
#include "core/exchange/import_plan.h"

#include <map>
#include <string>

/// Entering readings. "saved TIME" goes to standard output only after the reading is on the disk; findings
/// and refusals go to standard error. A reading within an hour of now is a live one: off the thermometer's
/// scale it is refused, since it can be read again; an older one is kept as it was written and marked.

namespace wickbook::cli {

using ReadingFields = std::map<exchange::ImportField, std::string>;

/// One reading; without a time: now. A refusal ends the verb.
Outcome<ExitCode> addOne(const std::string& book, const ReadingFields& fields, bool strict);

/// Rows of a CSV file or stream, each durable before the next is read. A row that can't be entered is told
/// with its line number, and the next one is taken; trouble with the book ends the verb.
Outcome<ExitCode> addRows(const std::string& book, const std::string& in, bool strict);

} // namespace wickbook::cli
