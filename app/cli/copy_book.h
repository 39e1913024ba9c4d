// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/outcome.h"

#include <string>

namespace wickbook::cli {

/// Copies a book into a new file: what is copied is verified first, and the copy after it is written. Says
/// what the copy holds. A damaged book is not copied on: its damage would take the place of a good backup.
Outcome<ExitCode> copyBook(const std::string& from, const std::string& to);

} // namespace wickbook::cli
