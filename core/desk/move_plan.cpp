// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/move_plan.h"

#include "core/record/observing_hours.h"

#include <algorithm>
#include <map>
#include <set>

namespace wickbook::desk {

namespace {

using Refused = std::optional<StayingLine>;

/// The date a line goes to; none where that month has no such day.
std::optional<record::StationDate> dateThere(record::StationDate from, const Destination& to) {
    if (!to.month) {
        return from + date::days{to.days};
    }
    const date::year_month_day there = *to.month / date::year_month_day{from}.day();
    return there.ok() ? std::optional{record::StationDate{date::local_days{there}}} : std::nullopt;
}

/// Keeps an observation under an hour, read as far off it as it was off its own.
std::optional<record::Observation> atHour(const record::Observation& line,
                                          const record::StationRecord& station,
                                          const record::ObservingHour& hour) {
    const auto moment = record::momentOf(station, hour);
    if (!moment) {
        return std::nullopt;
    }
    const auto was = record::momentOf(station, *line.hour);
    const std::chrono::seconds off = was ? line.instant - *was : std::chrono::seconds{0};
    record::Observation there = line;
    record::placeInTime(there, station, *moment + off);
    there.hour = hour;
    return there;
}

/// An extra reading by its own clock time on another date; none where the clock skips that time. A time that
/// the clock shows twice is the first of the two.
std::optional<record::Observation> atClock(const record::Observation& line,
                                           const record::StationRecord& station, record::StationDate date,
                                           const std::optional<record::HourOfDay>& hour) {
    const record::LocalTime was{line.instant.time_since_epoch() + line.offset};
    const record::LocalTime local = date + (was - date::floor<date::days>(was));
    const auto resolved =
        record::resolveLocal(station.periodAt(record::Instant{local.time_since_epoch()}).zone, local);
    record::Instant moment{};
    if (const auto* unique = std::get_if<record::UniqueTime>(&resolved)) {
        moment = unique->instant;
    } else if (const auto* twice = std::get_if<record::DoubleTime>(&resolved)) {
        moment = twice->first;
    } else {
        return std::nullopt;
    }
    record::Observation there = line;
    record::placeInTime(there, station, moment);
    there.hour.reset();
    if (hour) {
        there.hour = record::ObservingHour{date, *hour};
        if (!record::momentOf(station, *there.hour)) {
            return std::nullopt;
        }
    }
    return there;
}

/// What stands where a line would go, other than the line itself.
store::Result<std::optional<record::Uuid>> occupant(const store::Book& book, const MovingLine& line) {
    const auto found = line.after.hour ? book.atHour(*line.after.hour) : book.atInstant(line.after.instant);
    if (!found) {
        return tl::unexpected(found.error());
    }
    const bool other =
        *found && (*found)->id() != line.before.id() && (line.after.hour || !(*found)->values.hour);
    return other ? std::optional{(*found)->id()} : std::nullopt;
}

/// Lines whose place is taken stay; and since a line that stays keeps its own place, others may have to stay
/// for it, until nothing changes any more.
void stayWhereTaken(MovePlan& plan, const std::map<record::Uuid, record::Uuid>& taken) {
    for (bool again = true; again;) {
        again = false;
        std::set<record::Uuid> leaving;
        for (const MovingLine& line : plan.moving) {
            leaving.insert(line.before.id());
        }
        std::set<record::ObservingHour> promised;
        for (auto line = plan.moving.begin(); line != plan.moving.end();) {
            const auto by = taken.find(line->before.id());
            const bool blocked = (by != taken.end() && !leaving.contains(by->second)) ||
                                 (line->after.hour && !promised.insert(*line->after.hour).second);
            if (blocked) {
                plan.staying.push_back({line->before, StayReason::HourTaken, record::filedDate(line->after)});
                line = plan.moving.erase(line);
                again = true;
            } else {
                ++line;
            }
        }
    }
    std::stable_sort(plan.staying.begin(), plan.staying.end(), [](const auto& a, const auto& b) {
        return a.line.values.instant < b.line.values.instant;
    });
}

} // namespace

store::Result<MovePlan> planMove(const store::Book& book, const record::StationRecord& station,
                                 record::Instant now, const std::vector<record::StoredObservation>& lines,
                                 const Destination& to) {
    MovePlan plan;
    plan.to = to;
    std::map<record::Uuid, record::Uuid> taken; // line → who stands where it would go
    for (const record::StoredObservation& line : lines) {
        const record::StationDate filed = record::filedDate(line.values);
        const auto date = dateThere(filed, to);
        if (!date) {
            plan.staying.push_back({line, StayReason::NoSuchDay, filed});
            continue;
        }
        const bool sameHour = !to.hour || (line.values.hour && line.values.hour->hour == *to.hour);
        if (*date == filed && sameHour) {
            ++plan.thereAlready;
            continue;
        }
        const auto there =
            line.values.hour ? atHour(line.values, station, {*date, to.hour.value_or(line.values.hour->hour)})
                             : atClock(line.values, station, *date, to.hour);
        if (!there) {
            plan.staying.push_back({line, StayReason::NoSuchHour, *date});
            continue;
        }
        // An hour is still to come until its moment, a few minutes' earliness of the reading or not.
        const auto due = there->hour ? record::momentOf(station, *there->hour) : std::nullopt;
        if (due.value_or(there->instant) > now || there->instant > now) {
            plan.staying.push_back({line, StayReason::StillToCome, *date});
            continue;
        }
        plan.moving.push_back({line, *there});
        const auto by = occupant(book, plan.moving.back());
        if (!by) {
            return tl::unexpected(by.error());
        }
        if (*by) {
            taken.emplace(line.id(), **by);
        }
    }
    stayWhereTaken(plan, taken);
    return plan;
}

} // namespace wickbook::desk
