// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/rule.h"

namespace wickbook::checks {

/// Minutes from the nominal hour to the moment of reading, positive where late; none for an extra reading or
/// an hour that the clock skips.
std::optional<double> minutesLate(const ReadingContext& context);
/// The same of a reading without its neighbours.
std::optional<double> minutesLate(const record::Observation& values, const record::StationRecord& station);

} // namespace wickbook::checks
