// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/commands/replace_observations.h"

#include <cstddef>
#include <optional>
#include <vector>

/// Lines that were written under the wrong month go to the same days and hours of another: one transaction,
/// one step of undo. Every line keeps its identity and its history; what moves is the hour it is kept under.
/// A line that has no place there stays where it is, and the plan says why before anything is done.

namespace wickbook::ui {

enum class StayReason {
    NoSuchDay,   ///< a 31st in a month of thirty days
    NoSuchHour,  ///< the station did not read at that hour then, or the clock skipped it
    HourTaken,   ///< another reading stands there
    StillToCome, ///< the hour lies ahead
    NoHour       ///< an extra reading belongs to its moment, not to an hour
};

struct StayingLine {
    record::StoredObservation line;
    StayReason reason = StayReason::NoSuchDay;
    record::StationDate wouldBe{}; ///< the date it would have had; for NoSuchDay and NoHour the date it has
};

struct MovePlan {
    date::year_month to{};
    std::vector<Replacement> moving;
    std::vector<StayingLine> staying;
};

/// What would move and what would stay; nothing is written. Lines of the month named stay out of both.
store::Result<MovePlan> planMove(const Session& session, const std::vector<record::StoredObservation>& lines,
                                 date::year_month to);

class MoveObservations {
public:
    /// The plan's moves, all of them or none; as ReplaceObservations::perform.
    static store::Result<std::size_t> perform(Session& session, const MovePlan& plan,
                                              const record::Author& author, const QString& text);
};

} // namespace wickbook::ui
