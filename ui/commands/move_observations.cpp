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
        Replacement moving{line, line.values};
        record::placeInTime(moving.after, session.station(), *moment + off);
        moving.after.hour = hour;
        plan.moving.push_back(std::move(moving));
    }
    return plan;
}

store::Result<std::size_t> MoveObservations::perform(Session& session, const MovePlan& plan,
                                                     const record::Author& author, const QString& text) {
    return ReplaceObservations::perform(session, plan.moving, author, text);
}

} // namespace wickbook::ui
