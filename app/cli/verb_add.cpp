// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/add_rows.h"
#include "app/cli/verb_table.h"

#include <memory>

namespace wickbook::cli {

namespace {

using exchange::ImportField;

struct AddOptions {
    std::string book, at, dry, wet, wick, weather, note, observer, pressure, in;
    bool strict = false;

    [[nodiscard]] std::map<ImportField, std::string> fields() const {
        std::map<ImportField, std::string> given;
        const auto put = [&](ImportField field, const std::string& text) {
            if (!text.empty()) {
                given.emplace(field, text);
            }
        };
        put(ImportField::Time, at);
        put(ImportField::Dry, dry);
        put(ImportField::Wet, wet);
        put(ImportField::Wick, wick);
        put(ImportField::Weather, weather);
        put(ImportField::Note, note);
        put(ImportField::Observer, observer);
        put(ImportField::Pressure, pressure);
        return given;
    }
};

Outcome<ExitCode> add(const AddOptions& options) {
    const auto fields = options.fields();
    if (!options.in.empty() && !fields.empty()) {
        return refuse("Give a reading by --dry and --wet, or a file by --in, not both.");
    }
    if (options.in.empty() && options.dry.empty() && options.wet.empty()) {
        return refuse("Give --dry and --wet as read, or --in with a file of rows.");
    }
    return options.in.empty() ? addOne(options.book, fields, options.strict)
                              : addRows(options.book, options.in, options.strict);
}

} // namespace

VerbAction declareAdd(OptionList command) {
    auto options = std::make_shared<AddOptions>();
    command.needed("--book", options->book, "The book");
    command.text(
        "--at", options->at,
        "When it was read: 2025-03-01T09:00 by the station's clock, or with Z or +01:00 (now). Within an "
        "hour of now a value off the thermometer's scale is refused, for you can read again; an "
        "older one is kept as written and marked");
    command.text("--dry", options->dry, "Dry bulb as read, in the thermometer's unit");
    command.text("--wet", options->wet, "Wet bulb as read");
    command.text("--wick", options->wick, "water or ice");
    command.text("--weather", options->weather, "Such as fog, or rain;thunder, or none");
    command.text("--note", options->note, "Remark");
    command.text("--observer", options->observer, "Initials");
    command.text("--pressure", options->pressure, "Station pressure, hPa");
    command.text(
        "--in", options->in,
        "CSV of rows, \"-\" for standard input; columns time (or date with hour or clock), dry, wet, "
        "wick, pressure, weather, wind, max, min, note, observer, origin, quality");
    command.flag("--strict", options->strict,
                 "Exit code 1 where there is any finding, notes included, or a rejected row");
    return [options] { return add(*options); };
}

} // namespace wickbook::cli
