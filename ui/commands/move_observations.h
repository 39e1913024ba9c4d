// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"

#include <QUndoCommand>

#include <cstddef>
#include <optional>
#include <vector>

/// Lines that were written under the wrong month go to the same days and hours of another: one transaction,
/// one step of undo. Every line keeps its identity and its history; what moves is the hour it is kept under.
/// A line that has no place there stays where it is, and the plan says why before anything is done.

namespace wickbook::ui {

/// A line, and what it will be.
struct MovingLine {
    record::StoredObservation before;
    record::Observation after;
};

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
    std::vector<MovingLine> moving;
    std::vector<StayingLine> staying;
};

/// What would move and what would stay; nothing is written. Lines of the month named stay out of both.
store::Result<MovePlan> planMove(const Session& session, const std::vector<record::StoredObservation>& lines,
                                 date::year_month to);

class MoveObservations : public QUndoCommand {
public:
    /// Stores the plan's moves at once and pushes on the undo stack; all of them or none. On failure
    /// (storage, or a line changed since the plan was made) nothing is pushed and the session has emitted
    /// storageFailed. An empty plan stores nothing.
    static store::Result<std::size_t> perform(Session& session, const MovePlan& plan, record::Author author,
                                              const QString& text);

    void undo() override;
    void redo() override;

private:
    struct Line {
        record::Uuid subject;
        record::Observation other;   ///< what the next swap will store
        record::Observation current; ///< what the book holds now
    };
    MoveObservations(Session& session, std::vector<Line> lines, record::Author author, const QString& text);
    void swap(const QString& why);

    Session& session_;
    std::vector<Line> lines_;
    record::Author author_;
    bool stored_ = true; ///< the first redo has been done by perform
};

} // namespace wickbook::ui
