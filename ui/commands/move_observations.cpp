// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/commands/move_observations.h"

namespace wickbook::ui {

store::Result<desk::MovePlan> planMove(const Session& session,
                                       const std::vector<record::StoredObservation>& lines,
                                       const desk::Destination& to) {
    return desk::planMove(session.book(), session.station(), session.now(), lines, to);
}

store::Result<std::size_t> MoveObservations::perform(Session& session, const desk::MovePlan& plan,
                                                     const record::Author& author, const QString& text) {
    std::vector<Replacement> moves;
    moves.reserve(plan.moving.size());
    for (const desk::MovingLine& line : plan.moving) {
        moves.push_back({line.before, line.after});
    }
    return ReplaceObservations::perform(session, moves, author, text);
}

} // namespace wickbook::ui
