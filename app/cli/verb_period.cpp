// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/book_access.h"
#include "app/cli/console.h"
#include "app/cli/options.h"
#include "app/cli/station_options.h"
#include "app/cli/verb_table.h"
#include "core/record/observing_hours.h"
#include "core/units/number_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <memory>

namespace wickbook::cli {

namespace {

struct PeriodOptions {
    std::string book, from;
    StationOptions station;
};

/// The moment the date begins: by the clock of the new zone where one is named, else of the one in force.
record::Instant beginningOf(record::StationDate date, const record::PeriodChange& change,
                            const record::StationRecord& station) {
    if (change.zone) {
        if (const auto zone = record::Zone::named(*change.zone)) {
            return record::startOfDate(date, *zone);
        }
    }
    // The zone may itself change about that date: ask for the one at the moment found, once more.
    const auto zoneAt = [&](record::Instant instant) { return station.periodAt(instant).zone; };
    const record::Instant guess =
        record::startOfDate(date, zoneAt(record::Instant{record::LocalTime{date}.time_since_epoch()}));
    return record::startOfDate(date, zoneAt(guess));
}

/// What differs, as it was understood, so that a slip is seen at once.
std::string changesText(const record::PeriodChange& change) {
    std::string text;
    const auto name = [&](std::string_view what, const std::string& value) {
        text += fmt::format("{}{} {}", text.empty() ? "" : "; ", what, value);
    };
    if (change.hours) {
        std::string hours;
        for (const record::HourOfDay hour : *change.hours) {
            hours += (hours.empty() ? "" : ", ") + record::hourText(hour);
        }
        name("observing hours", hours);
    }
    if (change.hourRule) {
        name("hours by", std::string{record::hourRuleName(*change.hourRule)});
    }
    if (change.elevation) {
        name("elevation", units::exactText(change.elevation->metres()) + " m");
    }
    if (change.position) {
        name("position", units::exactText(change.position->latitude) + ", " +
                             units::exactText(change.position->longitude));
    }
    if (change.zone) {
        name("zone", *change.zone);
    }
    if (change.ownCoefficient) {
        name("own coefficient", units::exactText(change.ownCoefficient->waterPerKelvin) + " per kelvin");
    }
    if (change.meanPressure) {
        name("mean pressure", units::exactText(*change.meanPressure) + " hPa");
    }
    if (change.exposure) {
        name("exposure", std::string{psychrometry::entryOf(*change.exposure).name});
    }
    return text;
}

/// Readings that were filed under an hour, or as extra, by the plan that was in force, and that the new plan
/// would file otherwise.
Outcome<std::int64_t> readingsFiledOtherwise(const store::Book& book, const record::StationRecord& station,
                                             record::Instant from) {
    const auto span = book.span();
    if (!span) {
        return refuse(span.error());
    }
    if (!*span || (*span)->second < from) {
        return 0;
    }
    const auto stored = book.observationsBetween(from, (*span)->second + std::chrono::seconds{1});
    if (!stored) {
        return refuse(stored.error());
    }
    return std::count_if(stored->begin(), stored->end(), [&](const record::StoredObservation& reading) {
        return record::hourFor(station, reading.values.instant) != reading.values.hour;
    });
}

Outcome<ExitCode> addPeriod(const PeriodOptions& options) {
    if (!options.station.anyGiven()) {
        return refuse("Say what differs from that date on: --hours, --hour-rule, --elevation, --latitude, "
                      "--longitude, --zone, --exposure, --own-water or --mean-pressure.");
    }
    const auto date = dateFrom("--from", options.from);
    if (!date) {
        return tl::unexpected(date.error());
    }
    // Options are read before the book is touched; a position given by half needs the one in force.
    if (const auto early = options.station.change({}); !early) {
        return tl::unexpected(early.error());
    }
    auto opened = openToWrite(options.book);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    auto change = options.station.change({});
    const record::Instant from = beginningOf(*date, *change, opened->station);
    change = options.station.change(opened->station.periodAt(from).position);
    change->id = record::Uuid::random();
    change->from = from;

    record::StationFacts facts = opened->station.facts();
    facts.periods.push_back(*change);
    if (const auto stored = opened->book.reviseFacts(facts, {accountName(), {}}); !stored) {
        return refuse(stored.error());
    }
    say(fmt::format("From {} on ({}): {}.", options.from, record::instantText(from), changesText(*change)));

    if (change->hours || change->hourRule || change->zone) {
        const record::StationRecord after(facts);
        const auto count = readingsFiledOtherwise(opened->book, after, from);
        if (!count) {
            return tl::unexpected(count.error());
        }
        if (*count > 0) {
            say(fmt::format(
                "{} {} from then on {} the hour entered with, which the new hours would not give; "
                "nothing was re-assigned.",
                *count, *count == 1 ? "reading" : "readings", *count == 1 ? "keeps" : "keep"));
        }
    }
    return ExitCode::Done;
}

} // namespace

VerbAction declarePeriod(OptionList command) {
    auto options = std::make_shared<PeriodOptions>();
    command.needed("--book", options->book, "The book");
    command.needed("--from", options->from, "Date it holds from, by the station's clock: 1994-05-01");
    options->station.declare(command, false);
    return [options] { return addPeriod(*options); };
}

} // namespace wickbook::cli
