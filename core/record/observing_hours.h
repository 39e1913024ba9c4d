// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/observation.h"
#include "core/record/station_record.h"

#include <optional>
#include <vector>

/// Which moments the station promised to read at, and which of them a reading belongs to.

namespace wickbook::record {

/// An expected hour and its moment.
struct ExpectedHour {
    ObservingHour hour;
    Instant instant;
};

/// Every hour due on the dates [from, to], in time order. An hour the clock change skips is not expected; one
/// it shows twice is expected once, at the first. Where a period ends within a day, each hour belongs to the
/// period its moment lies in.
std::vector<ExpectedHour> expectedHours(const StationRecord& station, StationDate from, StationDate to);

/// The hour a reading at this moment takes: the nearest within the station's window (60 min unless changed),
/// ties to the earlier; none: an extra reading.
std::optional<ObservingHour> hourFor(const StationRecord& station, Instant instant);

/// The moment of a nominal hour by the rule in force; none where no period has such an hour or the clock
/// skips it.
std::optional<Instant> momentOf(const StationRecord& station, const ObservingHour& hour);

/// Fills hour, zone and offset of an observation from its instant.
void placeInTime(Observation& observation, const StationRecord& station, Instant instant);

} // namespace wickbook::record
