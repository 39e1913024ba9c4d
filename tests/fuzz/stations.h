// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/station_record.h"

/// Invented stations that the targets bring readings to. Made once.

namespace wickbook::fuzz {

/// Hours 09 and 21 by UTC, in London: a clock that changes, hours that don't.
const record::StationRecord& stationOfUtcHours();
/// Hours 07, 14 and 21 by the clock; from 1968 in another zone, later with other hours and a thermometer in
/// °F.
const record::StationRecord& stationThatMoved();

} // namespace wickbook::fuzz
