// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/book_access.h"
#include "app/cli/console.h"
#include "app/cli/options.h"
#include "app/cli/output.h"
#include "app/cli/verb_table.h"
#include "core/desk/wick_care.h"
#include "core/exchange/spreadsheet_text.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <memory>

namespace wickbook::cli {

namespace {

struct WickOptions {
    std::string book, date, note, format = "text";
    bool fresh = false;
    bool water = false;
};

Outcome<ExitCode> listCare(const WickOptions& options) {
    const auto format = formatFrom(options.format);
    if (!format) {
        return tl::unexpected(format.error());
    }
    const auto opened = openToRead(options.book);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    const auto lines = desk::wickCare(opened->book, opened->station, kEarliestDate, kLatestDate);
    if (!lines) {
        return refuse(lines.error());
    }
    auto output = Output::open("-");
    if (*format == Format::Json) {
        JsonValue list = JsonValue::array();
        for (const desk::WickCareLine& line : *lines) {
            list.push_back({{"date", record::dateText(line.date)},
                            {"care", desk::wickDeedName(line.deed)},
                            {"observer", jsonText(line.observer)},
                            {"note", jsonText(line.note)}});
        }
        output->json(list);
    } else {
        output->csv({"date", "care", "observer", "note"});
        for (const desk::WickCareLine& line : *lines) {
            output->csv({record::dateText(line.date), std::string{desk::wickDeedName(line.deed)},
                         exchange::spreadsheetText(line.observer), exchange::spreadsheetText(line.note)});
        }
    }
    if (auto finished = output->finish(); !finished) {
        return tl::unexpected(finished.error());
    }
    return ExitCode::Done;
}

Outcome<ExitCode> wick(const WickOptions& options) {
    if (!options.fresh && !options.water) {
        if (!options.date.empty() || !options.note.empty()) {
            return refuse("Say what was done: --new for a new wick, --water for a clean, filled reservoir.");
        }
        return listCare(options);
    }
    const auto date = dateFrom("--date", options.date);
    if (!date) {
        return tl::unexpected(date.error());
    }
    auto opened = openToWrite(options.book);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    const record::SystemClock clock;
    if (record::startOfDate(*date, opened->station) > clock.now()) {
        return refuse(fmt::format("--date {}: write it down once it has happened.", options.date));
    }
    record::StationFacts after = opened->station.facts();
    const auto add = [&](bool wanted, record::DiaryKind kind) {
        if (wanted) {
            after.diary.push_back({record::Uuid::random(), *date, kind, options.note, false});
        }
    };
    add(options.fresh, record::DiaryKind::NewWick);
    add(options.water, record::DiaryKind::Water);
    if (const auto stored = opened->book.reviseFacts(after, {accountName(), {}}); !stored) {
        return refuse(stored.error());
    }
    say(fmt::format("Written down for {}; it marks the charts.", options.date));
    return ExitCode::Done;
}

} // namespace

VerbAction declareWick(OptionList command) {
    auto options = std::make_shared<WickOptions>();
    command.needed("--book", options->book, "The book; without --new or --water the log is listed");
    command.flag("--new", options->fresh, "A new wick was put on");
    command.flag("--water", options->water, "The reservoir was cleaned and filled");
    command.text("--date", options->date, "Day: 2026-11-01");
    command.text("--note", options->note, "Note");
    command.text("--format", options->format, "of the list: text (as csv), json or csv");
    return [options] { return wick(*options); };
}

} // namespace wickbook::cli
