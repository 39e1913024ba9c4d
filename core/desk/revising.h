// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/observation.h"

/// Reading back against the paper: a line is held against the page it was copied from, and ticked where both
/// say the same. The tick is of those words: whoever changes what the paper tells takes it off, by the same
/// rule for the window's pages and for the command line.

namespace wickbook::desk {

/// What a page of the paper register tells of an hour is the same in both; who judged it how, whose initials
/// stand there, where the paper lies and which hour the line is kept under are no part of that.
[[nodiscard]] bool tellsTheSame(const record::Observation& a, const record::Observation& b);

/// An edited line as it is to be stored: without the tick where the paper would have to be asked again.
[[nodiscard]] record::Observation withTickOf(const record::Observation& before, record::Observation after);

} // namespace wickbook::desk
