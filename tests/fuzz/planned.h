// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"

#include <string_view>

/// What every plan of an import promises, whatever the file.

namespace wickbook::fuzz {

/// A rejected line has its file, number, reason and, in the rejects file, all of it back. Throws
/// BrokenPromise.
void checkRejected(const exchange::RejectedLine& rejected, std::string_view file);
/// A line that comes in can be kept in a book and judged. Throws BrokenPromise.
void checkKeepable(const exchange::PlannedObservation& planned);

} // namespace wickbook::fuzz
