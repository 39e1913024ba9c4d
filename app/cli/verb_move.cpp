// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/console.h"
#include "app/cli/options.h"
#include "app/cli/register_changes.h"
#include "app/cli/verb_table.h"
#include "core/desk/move_plan.h"
#include "ui/text/error_words.h"

#include <fmt/format.h>

#include <memory>

namespace wickbook::cli {

namespace {

struct MoveOptions {
    WhichReadings which;
    HowToChange how;
    std::string date, month, hour;
    bool some = false;
};

std::string_view reasonWords(desk::StayReason reason) {
    switch (reason) {
    case desk::StayReason::NoSuchDay:
        return "that month has no such day";
    case desk::StayReason::NoSuchHour:
        return "no reading was due at that hour";
    case desk::StayReason::HourTaken:
        return "a reading stands there";
    case desk::StayReason::StillToCome:
        return "that hour is still to come";
    }
    return {};
}

Outcome<desk::Destination> destinationFrom(const MoveOptions& options,
                                           const std::vector<record::StoredObservation>& readings) {
    desk::Destination to;
    if (!options.month.empty()) {
        const auto month = monthFrom(options.month);
        if (!month) {
            return tl::unexpected(month.error());
        }
        to.month = *month;
    }
    if (!options.date.empty()) {
        const auto date = dateFrom("--to-date", options.date);
        if (!date) {
            return tl::unexpected(date.error());
        }
        to.days = static_cast<int>((*date - record::filedDate(readings.front().values)).count());
    }
    if (!options.hour.empty()) {
        const auto hour = record::parseHour(options.hour);
        if (!hour) {
            return refuse(
                "--to-hour: " +
                ui::timeErrorWords(hour.error(), QString::fromStdString(options.hour)).toStdString());
        }
        to.hour = *hour;
    }
    return to;
}

Outcome<ExitCode> move(const MoveOptions& options) {
    if (auto reason = options.how.hasReason(); !reason) {
        return tl::unexpected(reason.error());
    }
    if ((options.date.empty() && options.month.empty() && options.hour.empty()) ||
        (!options.date.empty() && !options.month.empty())) {
        return refuse("Say where they belong: --to-date or --to-month, --to-hour, or a date and an hour.");
    }
    auto opened = openFor(options.which, options.how);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    const auto readings = readingsMeant(*opened, options.which);
    if (!readings) {
        return tl::unexpected(readings.error());
    }
    const auto to = destinationFrom(options, *readings);
    if (!to) {
        return tl::unexpected(to.error());
    }
    const record::SystemClock clock;
    const auto plan = desk::planMove(opened->book, opened->station, clock.now(), *readings, *to);
    if (!plan) {
        return refuse(plan.error());
    }
    for (const desk::StayingLine& stays : plan->staying) {
        say(fmt::format("{} stays: {}.", record::instantText(stays.line.values.instant),
                        reasonWords(stays.reason)));
    }
    if (!plan->staying.empty() && !options.some && !options.how.dryRun) {
        return refuse(fmt::format("Nothing was moved: {} of {} can't go there. With --some the others go.",
                                  plan->staying.size(), readings->size()));
    }
    std::vector<ReadingChange> changes;
    for (const desk::MovingLine& line : plan->moving) {
        changes.push_back({line.before, line.after});
    }
    return storeChanges(*opened, std::move(changes), options.how, {});
}

} // namespace

VerbAction declareMove(OptionList command) {
    auto options = std::make_shared<MoveOptions>();
    options->which.declare(command, true);
    command.text("--to-date", options->date,
                 "The date the first of them belongs to; the others keep their distance");
    command.text("--to-month", options->month, "The same days of this month, such as 2025-04");
    command.text("--to-hour", options->hour,
                 "The observing hour they belong to, such as 09:00 (each its own)");
    command.flag("--some", options->some, "Move those that can go and leave the others; else all or none");
    options->how.declare(command, "Reason, kept with the change; needed");
    return [options] { return move(*options); };
}

} // namespace wickbook::cli
