// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/import_files.h"
#include "app/cli/options.h"
#include "app/cli/verb_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <memory>

namespace wickbook::cli {

namespace {

struct ImportTexts {
    std::string book, unit, decimal, zone, rejects, onConflict = "reject", dateOrder, doubleTimes;
    std::vector<std::string> in, map;
    bool dryRun = false;
    bool strict = false;
};

std::string fieldNames() {
    std::string names;
    for (int i = 0; i < exchange::kImportFieldCount; ++i) {
        names +=
            (i == 0 ? "" : ", ") + std::string{exchange::fieldName(static_cast<exchange::ImportField>(i))};
    }
    return names;
}

Outcome<std::map<std::string, exchange::ImportField>> columnsFrom(const std::vector<std::string>& maps) {
    std::map<std::string, exchange::ImportField> columns;
    for (const std::string& text : maps) {
        // A column's name may hold '='; a field's can't.
        const auto equals = text.rfind('=');
        const auto field = equals == std::string::npos
                               ? std::nullopt
                               : exchange::fieldFromName(std::string_view{text}.substr(equals + 1));
        if (!field || equals == 0) {
            return refuse(
                fmt::format("--map {}: write FILE_COLUMN=FIELD with one of {}.", text, fieldNames()));
        }
        columns[text.substr(0, equals)] = *field;
    }
    return columns;
}

Outcome<ImportRequest> requestFrom(const ImportTexts& texts) {
    ImportRequest request;
    request.book = texts.book;
    request.files = texts.in;
    request.rejects = texts.rejects;
    request.dryRun = texts.dryRun;
    request.strict = texts.strict;
    if (std::count(texts.in.begin(), texts.in.end(), "-") > 1) {
        return refuse("Standard input can be read once: give --in - only once.");
    }
    const auto columns = columnsFrom(texts.map);
    if (!columns) {
        return tl::unexpected(columns.error());
    }
    request.options.columns = *columns;
    if (!texts.unit.empty()) {
        const auto unit = unitFrom(texts.unit);
        if (!unit) {
            return tl::unexpected(unit.error());
        }
        request.options.unit = *unit;
    }
    if (texts.decimal == "comma") {
        request.options.decimal = units::DecimalMark::Comma;
    } else if (texts.decimal == "point") {
        request.options.decimal = units::DecimalMark::Point;
    } else if (!texts.decimal.empty()) {
        return refuse(fmt::format("--decimal can be comma or point; \"{}\" is neither.", texts.decimal));
    }
    if (texts.dateOrder == "day-first") {
        request.options.dateOrder = exchange::DateOrder::DayFirst;
    } else if (texts.dateOrder == "month-first") {
        request.options.dateOrder = exchange::DateOrder::MonthFirst;
    } else if (!texts.dateOrder.empty()) {
        return refuse(
            fmt::format("--date-order can be day-first or month-first; \"{}\" is neither.", texts.dateOrder));
    }
    if (texts.doubleTimes == "earlier") {
        request.options.doubleTimes = exchange::DoubleTimes::Earlier;
    } else if (texts.doubleTimes == "later") {
        request.options.doubleTimes = exchange::DoubleTimes::Later;
    } else if (!texts.doubleTimes.empty() && texts.doubleTimes != "reject") {
        return refuse(fmt::format("--double-times can be earlier, later or reject; \"{}\" is none of them.",
                                  texts.doubleTimes));
    }
    if (!texts.zone.empty()) {
        auto zone = zoneFrom(texts.zone);
        if (!zone) {
            return tl::unexpected(zone.error());
        }
        request.options.zone = *zone;
    }
    if (texts.onConflict == "keep") {
        request.onConflict = exchange::OnConflict::Keep;
    } else if (texts.onConflict == "revise") {
        request.onConflict = exchange::OnConflict::Revise;
    } else if (texts.onConflict != "reject") {
        return refuse(fmt::format("--on-conflict can be keep, revise or reject; \"{}\" is none of them.",
                                  texts.onConflict));
    }
    return request;
}

} // namespace

VerbAction declareImport(OptionList command) {
    auto texts = std::make_shared<ImportTexts>();
    command.needed("--book", texts->book, "The book");
    command.many("--in", texts->in, "CSV or SEF file, \"-\" for standard input; several may be given", true);
    command.many("--map", texts->map, "FILE_COLUMN=FIELD, as often as needed; fields: " + fieldNames());
    command.text("--unit", texts->unit, "Unit of the temperatures: c or f (the station's)");
    command.text("--decimal", texts->decimal, "comma or point (either)");
    command.text("--zone", texts->zone, "Zone of times without an offset (the station's)");
    command.text("--date-order", texts->dateOrder,
                 "day-first or month-first, for dates like 1/3/2025 (as the file's other dates show)");
    command.text("--double-times", texts->doubleTimes,
                 "Times that the clock showed twice: earlier, later or reject (reject)");
    command.text("--rejects", texts->rejects,
                 "CSV file for the lines that could not be taken, with number, text and reason");
    command.text(
        "--on-conflict", texts->onConflict,
        "Where the book holds a reading at the hour: keep it, revise it, or reject the line (reject)");
    command.flag("--dry-run", texts->dryRun, "Say what would happen and store nothing");
    command.flag("--strict", texts->strict,
                 "Exit code 1 where a line is rejected or a reading has a finding");
    return [texts]() -> Outcome<ExitCode> { return requestFrom(*texts).and_then(importFiles); };
}

} // namespace wickbook::cli
