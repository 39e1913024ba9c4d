// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/checked_range.h"
#include "core/record/observing_hours.h"

#include <optional>
#include <vector>

namespace wickbook::desk {

/// How an observing hour stands in the register.
enum class HourState {
    Kept,      ///< a reading that counts
    Doubtful,  ///< marked or judged doubtful, or one bulb only
    Erroneous, ///< judged erroneous or marked so
    Excused,   ///< missing, with its reason written down or that of an absence entered ahead
    Missed,    ///< nothing written down
    Due,       ///< the hour on offer now
    Ahead      ///< still to come
};

struct HourMark {
    record::ExpectedHour expected;
    HourState state = HourState::Missed;
    std::optional<record::Uuid> observation;
    std::string reason{}; ///< of an excused hour, as the book keeps it
};

/// One mark for each hour due on the dates [from, to], in time order.
Result<std::vector<HourMark>> hourMarks(const store::Book& book, const record::StationRecord& station,
                                        record::StationDate from, record::StationDate to,
                                        record::Instant now);

/// The hour to offer for entry: the nearest to now; where that one is filled the next that is not. None at a
/// station without observing hours.
Result<std::optional<record::ExpectedHour>>
hourOnOffer(const store::Book& book, const record::StationRecord& station, record::Instant now);

} // namespace wickbook::desk
