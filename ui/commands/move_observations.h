// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/move_plan.h"
#include "ui/commands/replace_observations.h"

/// Lines go to where they belong, as one step: one transaction, one step of undo. What moves and what stays
/// was planned before (core/desk/move_plan.h).

namespace wickbook::ui {

/// The desk's plan for the open book, its station and clock; nothing is written.
store::Result<desk::MovePlan> planMove(const Session& session,
                                       const std::vector<record::StoredObservation>& lines,
                                       const desk::Destination& to);

class MoveObservations {
public:
    /// The plan's moves, all of them or none; as ReplaceObservations::perform.
    static store::Result<std::size_t> perform(Session& session, const desk::MovePlan& plan,
                                              const record::Author& author, const QString& text);
};

} // namespace wickbook::ui
