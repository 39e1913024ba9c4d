// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/date_guess.h"
#include "core/exchange/import_plan.h"

#include <map>
#include <optional>
#include <string>

/// From the time cells of a row to a moment and the hour it is filed under.

namespace wickbook::exchange {

using FieldCells = std::map<ImportField, std::string>;

struct RowTime {
    record::Instant instant{};
    /// What the file says of the hour: none: nothing, the station's window decides; an empty inner one: it is
    /// an extra reading.
    std::optional<std::optional<record::ObservingHour>> hour;
};

/// Errors: NoTime, BadTime, DoubleTime, ImpossibleTime, with field, value and detail. zone: for times without
/// an offset; none: the station's. doubleTimes: what becomes of a time that the clock showed twice. exported:
/// a date and an hour beside a time stand for themselves, though the station may not observe at that hour any
/// more.
tl::expected<RowTime, RejectedLine> rowTime(const FieldCells& cells, const record::StationRecord& station,
                                            const std::optional<record::Zone>& zone, DateOrder order,
                                            DoubleTimes doubleTimes = DoubleTimes::Reject,
                                            bool exported = false);

/// A clock time at the station: its zone may have changed, so every period is asked, and one moment must come
/// of it.
record::ResolvedTime resolveAtStation(const record::StationRecord& station, record::LocalTime local);

} // namespace wickbook::exchange
