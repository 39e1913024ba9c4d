// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/commands/move_observations.h"

#include "core/record/observing_hours.h"

#include <memory>

namespace wickbook::ui {

namespace {

date::year_month monthOf(record::StationDate date) {
    const date::year_month_day day{date};
    return day.year() / day.month();
}

} // namespace

store::Result<MovePlan> planMove(const Session& session, const std::vector<record::StoredObservation>& lines,
                                 date::year_month to) {
    MovePlan plan;
    plan.to = to;
    for (const record::StoredObservation& line : lines) {
        const record::StationDate filed = record::filedDate(line.values);
        if (monthOf(filed) == to) {
            continue;
        }
        if (!line.values.hour) {
            plan.staying.push_back({line, StayReason::NoHour, filed});
            continue;
        }
        const date::year_month_day there = to / date::year_month_day{filed}.day();
        if (!there.ok()) {
            plan.staying.push_back({line, StayReason::NoSuchDay, filed});
            continue;
        }
        const record::ObservingHour hour{record::StationDate{date::local_days{there}},
                                         line.values.hour->hour};
        const auto moment = record::momentOf(session.station(), hour);
        if (!moment) {
            plan.staying.push_back({line, StayReason::NoSuchHour, hour.date});
            continue;
        }
        if (*moment > session.now()) {
            plan.staying.push_back({line, StayReason::StillToCome, hour.date});
            continue;
        }
        const auto taken = session.book().atHour(hour);
        if (!taken) {
            return tl::unexpected(taken.error());
        }
        if (*taken) {
            plan.staying.push_back({line, StayReason::HourTaken, hour.date});
            continue;
        }
        // A reading made some minutes off its hour stays as far off.
        const auto was = record::momentOf(session.station(), *line.values.hour);
        const std::chrono::seconds off = was ? line.values.instant - *was : std::chrono::seconds{0};
        MovingLine moving{line, line.values};
        record::placeInTime(moving.after, session.station(), *moment + off);
        moving.after.hour = hour;
        plan.moving.push_back(std::move(moving));
    }
    return plan;
}

MoveObservations::MoveObservations(Session& session, std::vector<Line> lines, record::Author author,
                                   const QString& text)
    : QUndoCommand(text), session_(session), lines_(std::move(lines)), author_(std::move(author)) {}

store::Result<std::size_t> MoveObservations::perform(Session& session, const MovePlan& plan,
                                                     record::Author author, const QString& text) {
    std::vector<store::ObservationChange> changes;
    std::vector<Line> lines;
    for (const MovingLine& moving : plan.moving) {
        store::ObservationChange change;
        change.subject = moving.before.id();
        change.replaces = moving.before.stamp.sequence;
        change.values = moving.after;
        change.author = author;
        changes.push_back(std::move(change));
        lines.push_back({moving.before.id(), moving.before.values, moving.after});
    }
    if (changes.empty()) {
        return std::size_t{0};
    }
    const auto receipts = session.writeAll(changes);
    if (!receipts) {
        return tl::unexpected(receipts.error());
    }
    session.undoStack().push(new MoveObservations(session, std::move(lines), std::move(author), text));
    return receipts->size();
}

void MoveObservations::undo() {
    swap(QObject::tr("undone: %1").arg(text()));
}

void MoveObservations::redo() {
    if (stored_) {
        stored_ = false; // QUndoStack redoes on push; perform has done it already
        return;
    }
    swap(QObject::tr("done again: %1").arg(text()));
}

void MoveObservations::swap(const QString& why) {
    std::vector<store::ObservationChange> changes;
    for (const Line& line : lines_) {
        store::ObservationChange change;
        change.subject = line.subject;
        change.values = line.other;
        change.author = {author_.who, why.toStdString()};
        changes.push_back(std::move(change));
    }
    if (!session_.writeAll(changes)) {
        setObsolete(true); // the session has told why; the stack drops a command that can't be done
        return;
    }
    for (Line& line : lines_) {
        std::swap(line.other, line.current);
    }
}

} // namespace wickbook::ui
