// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/add_rows.h"
#include "app/cli/verb_table.h"

#include <CLI/CLI.hpp>

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

VerbAction declareAdd(CLI::App& command) {
    auto options = std::make_shared<AddOptions>();
    command.add_option("--book", options->book, "The book")->required();
    command.add_option(
        "--at", options->at,
        "When it was read: 2025-03-01T09:00 by the station's clock, or with Z or +01:00 (now)");
    command.add_option("--dry", options->dry, "Dry bulb as read, in the thermometer's unit");
    command.add_option("--wet", options->wet, "Wet bulb as read");
    command.add_option("--wick", options->wick, "water or ice");
    command.add_option("--weather", options->weather, "Such as fog, or rain;thunder, or none");
    command.add_option("--note", options->note, "Remark");
    command.add_option("--observer", options->observer, "Initials");
    command.add_option("--pressure", options->pressure, "Station pressure, hPa");
    command.add_option(
        "--in", options->in,
        "CSV of rows, \"-\" for standard input; columns time (or date with hour or clock), dry, wet, "
        "wick, pressure, weather, wind, max, min, note, observer, origin, quality");
    command.add_flag("--strict", options->strict,
                     "Exit code 1 where there is any finding, notes included, or a rejected row");
    return [options] { return add(*options); };
}

} // namespace wickbook::cli
