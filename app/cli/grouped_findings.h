// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/output.h"
#include "core/desk/register_review.h"

namespace wickbook::cli {

/// The questions of a register in groups, worst first: a heading for each group, then a line for each reading
/// asked about, with what was read and what may have gone wrong.
void writeGroups(Output& output, const desk::RegisterReview& review, units::TemperatureUnit unit);

} // namespace wickbook::cli
