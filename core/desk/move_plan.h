// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/book.h"

#include <date/date.h>

#include <cstddef>
#include <optional>
#include <vector>

/// Lines that were written in the wrong place go to where they belong: to the same days of another month, so
/// many days on or back, to another hour. What would move and what would stay is worked out before anything
/// is done. Every line keeps its identity and its history; what moves is the hour it is kept under. Writes
/// nothing: the plan's revisions are stored by who asked, all of them or none.

namespace wickbook::desk {

/// Where lines go.
struct Destination {
    std::optional<date::year_month> month{}; ///< the same days of this month …
    int days = 0;                            ///< … or, without a month, so many days on (back: negative)
    std::optional<record::HourOfDay> hour{}; ///< none: the hour each line has
};

enum class StayReason {
    NoSuchDay,  ///< a 31st in a month of thirty days
    NoSuchHour, ///< the station did not read at that hour then, or the clock skipped it
    HourTaken,  ///< another reading stands there, or another of these lines goes there
    StillToCome ///< the hour lies ahead
};

struct StayingLine {
    record::StoredObservation line;
    StayReason reason = StayReason::NoSuchDay;
    record::StationDate wouldBe{}; ///< the date it would have had; for NoSuchDay the date it has
};

struct MovingLine {
    record::StoredObservation before;
    record::Observation after;
};

struct MovePlan {
    Destination to;
    std::vector<MovingLine> moving;
    std::vector<StayingLine> staying;
    std::size_t thereAlready = 0; ///< lines that stand there as it is; in neither list
};

/// A reading made some minutes off its hour stays as far off. An extra reading goes by its own clock time and
/// stays one, unless an hour is named: then it is kept under that hour, read when it was. Lines may change
/// places with one another. now: hours after it are still to come.
store::Result<MovePlan> planMove(const store::Book& book, const record::StationRecord& station,
                                 record::Instant now, const std::vector<record::StoredObservation>& lines,
                                 const Destination& to);

} // namespace wickbook::desk
