// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/observation.h"

/// What a change to a line does to the rest of it, by the same rules for the window's pages and for the
/// command line: how the value came about, what a person judged of it, and whether it is still read back.
///
/// Reading back against the paper: a line is held against the page it was copied from, and ticked where both
/// say the same. The tick is of those words: whoever changes what the paper tells takes it off.

namespace wickbook::desk {

/// What a page of the paper register tells of an hour is the same in both; who judged it how, whose initials
/// stand there, where the paper lies and which hour the line is kept under are no part of that.
[[nodiscard]] bool tellsTheSame(const record::Observation& a, const record::Observation& b);

/// An edited line as it is to be stored: without the tick where the paper would have to be asked again.
[[nodiscard]] record::Observation withTickOf(const record::Observation& before, record::Observation after);

/// A revised reading as it is to be stored. estimate: its value is one. Otherwise a value in place of an
/// estimate or of a reason is observed, other readings, weather or wind are a correction, and a note or
/// initials more leave it as it came about. What was judged is gone where it was another reading that was
/// judged, and so is a tick (withTickOf).
[[nodiscard]] record::Observation asRevised(const record::Observation& before, record::Observation after,
                                            bool estimate);

} // namespace wickbook::desk
