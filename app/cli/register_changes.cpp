// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/register_changes.h"

#include "app/cli/console.h"
#include "app/cli/find_reading.h"
#include "app/cli/options.h"
#include "app/cli/output.h"
#include "app/cli/reading_columns.h"
#include "core/exchange/spreadsheet_text.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace wickbook::cli {

namespace {

/// A value that differs, by the name of its column.
struct Difference {
    std::string name, was, is;
};

/// What one reading's change came to. revision 0: only tried.
struct Changed {
    record::Observation values;
    std::int64_t revision = 0;
    std::vector<Difference> differences;
};

std::vector<Difference> differencesOf(const ReadingChange& change) {
    const record::ObservationRevision before{change.before.stamp, change.before.values};
    const record::ObservationRevision after{change.before.stamp, change.after};
    std::vector<Difference> found;
    for (const ReadingColumn& column : readingColumns().subspan(kStampColumns)) {
        std::string was = column.text(before);
        std::string is = column.text(after);
        if (was != is) {
            found.push_back({std::string{column.name}, std::move(was), std::move(is)});
        }
    }
    return found;
}

std::string orEmpty(const std::string& text) {
    return text.empty() ? std::string{"empty"} : text;
}

void write(Output& output, Format format, const std::vector<Changed>& all) {
    if (format == Format::Csv) {
        output.csv({"time_utc", "revision", "field", "was", "is"});
    }
    JsonValue list = JsonValue::array();
    for (const Changed& one : all) {
        const std::string time = record::instantText(one.values.instant);
        const std::string number = one.revision == 0 ? std::string{} : std::to_string(one.revision);
        if (format == Format::Text) {
            output.text(one.revision == 0 ? fmt::format("would change {}\n", time)
                                          : fmt::format("changed {} revision {}\n", time, number));
        }
        JsonValue changes = JsonValue::object();
        for (const Difference& difference : one.differences) {
            if (format == Format::Text) {
                output.text(fmt::format("  {:<15} {}, was {}\n", difference.name, orEmpty(difference.is),
                                        orEmpty(difference.was)));
            } else if (format == Format::Csv) {
                output.csv({time, number, difference.name, exchange::spreadsheetCell(difference.was),
                            exchange::spreadsheetCell(difference.is)});
            }
            changes[difference.name] = {{"was", jsonText(difference.was)}, {"is", jsonText(difference.is)}};
        }
        list.push_back(
            {{"time_utc", time},
             {"local_date", record::dateText(record::filedDate(one.values))},
             {"hour", one.values.hour ? jsonText(record::hourText(one.values.hour->hour)) : JsonValue()},
             {"revision", one.revision == 0 ? JsonValue() : JsonValue(one.revision)},
             {"changes", std::move(changes)}});
    }
    if (format == Format::Json) {
        output.json(list);
    }
}

Outcome<record::StoredObservation> liveReading(const OpenedBook& opened, const std::string& at) {
    auto reading = findReading(opened, at);
    if (reading && reading->values.withdrawn) {
        return refuse(fmt::format("The reading of {} was withdrawn; putback brings it back, with the number "
                                  "of the revision that history gives.",
                                  at));
    }
    return reading;
}

} // namespace

void WhichReadings::declare(OptionList& command, bool several) {
    command.needed("--book", book, "The book");
    command.many("--at", at,
                 std::string{"When it was read, or its observing hour: 2025-03-01T09:00 by the station's "
                             "clock, or with Z or an offset"} +
                     (several ? "; may be given several times" : ""),
                 !several);
    if (several) {
        command.text("--from", from, "With --to: all readings filed under these dates, such as 2025-03-01");
        command.text("--to", to, "The last of the dates, included");
    }
}

void HowToChange::declare(OptionList& command, const std::string& whyHelp) {
    command.text("--why", why, whyHelp);
    command.text("--by", by, "Initials of who changes it (the account's name)");
    command.flag("--dry-run", dryRun, "Only tell what would change; nothing is stored");
    command.text("--format", format, "text, json or csv (text)");
}

Outcome<void> HowToChange::hasReason() const {
    if (why.empty()) {
        return refuse("Say why with --why: what stood there first is kept, and so is the reason.");
    }
    return {};
}

record::Author HowToChange::author(const std::string& usualWhy) const {
    return {by.empty() ? accountName() : by, why.empty() ? usualWhy : why};
}

Outcome<OpenedBook> openFor(const WhichReadings& which, const HowToChange& how) {
    return how.dryRun ? openToRead(which.book) : openToWrite(which.book);
}

Outcome<std::vector<record::StoredObservation>> readingsMeant(const OpenedBook& opened,
                                                              const WhichReadings& which) {
    const bool range = !which.from.empty() && !which.to.empty();
    if (which.at.empty() != range || (!range && !(which.from.empty() && which.to.empty()))) {
        return refuse("Say which readings: each with --at, or those of some dates with --from and --to.");
    }
    std::vector<record::StoredObservation> readings;
    if (range) {
        const auto dates = dateRangeFrom(which.from, which.to);
        if (!dates) {
            return tl::unexpected(dates.error());
        }
        auto found = opened.book.observationsOn(*dates->from, *dates->to);
        if (!found) {
            return refuse(found.error());
        }
        if (found->empty()) {
            return refuse(
                fmt::format("No reading stands from {} to {}; give other dates.", which.from, which.to));
        }
        return std::move(*found);
    }
    for (const std::string& at : which.at) {
        auto reading = liveReading(opened, at);
        if (!reading) {
            return tl::unexpected(reading.error());
        }
        const bool twice = std::any_of(readings.begin(), readings.end(),
                                       [&](const auto& other) { return other.id() == reading->id(); });
        if (!twice) {
            readings.push_back(std::move(*reading));
        }
    }
    std::stable_sort(readings.begin(), readings.end(),
                     [](const auto& a, const auto& b) { return a.values.instant < b.values.instant; });
    return readings;
}

Outcome<ExitCode> storeChanges(OpenedBook& opened, std::vector<ReadingChange> changes, const HowToChange& how,
                               const std::string& usualWhy) {
    const auto format = formatFrom(how.format);
    if (!format) {
        return tl::unexpected(format.error());
    }
    std::erase_if(changes, [](const ReadingChange& one) { return one.before.values == one.after; });
    std::vector<Changed> all;
    std::vector<store::ObservationChange> toStore;
    for (const ReadingChange& one : changes) {
        all.push_back({one.after, 0, differencesOf(one)});
        store::ObservationChange change;
        change.subject = one.before.id();
        change.replaces = one.before.stamp.sequence;
        change.values = one.after;
        change.author = how.author(usualWhy);
        toStore.push_back(std::move(change));
    }
    if (!how.dryRun && !toStore.empty()) {
        const auto stored = opened.book.appendAll(toStore);
        if (!stored) {
            return refuse(stored.error());
        }
        for (std::size_t i = 0; i < all.size(); ++i) {
            all[i].revision = (*stored)[i].sequence;
        }
    }
    auto output = Output::open("-");
    write(*output, *format, all);
    if (auto finished = output->finish(); !finished) {
        return tl::unexpected(finished.error());
    }
    if (all.empty()) {
        say(std::string_view{"Nothing to change: it stands so already."});
    } else if (how.dryRun) {
        say(std::string_view{"Nothing was stored."});
    }
    return ExitCode::Done;
}

} // namespace wickbook::cli
