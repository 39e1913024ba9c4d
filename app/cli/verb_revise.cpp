// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/register_changes.h"
#include "app/cli/verb_table.h"
#include "core/desk/revising.h"
#include "core/exchange/byte_decoder.h"
#include "core/exchange/import_plan.h"
#include "ui/text/error_words.h"

#include <fmt/format.h>

#include <memory>

namespace wickbook::cli {

namespace {

using exchange::ImportField;

constexpr const char* kEmptied = "-";

struct ReviseOptions {
    WhichReadings which;
    HowToChange how;
    std::string dry, wet, wick, pressure, weather, wind, maximum, minimum, note, observer;
    bool estimated = false;
    bool observed = false;

    /// What was given, as typed.
    [[nodiscard]] std::map<ImportField, std::string> fields() const {
        std::map<ImportField, std::string> given;
        const auto put = [&given](ImportField field, const std::string& text) {
            if (!text.empty()) {
                given.emplace(field, text);
            }
        };
        put(ImportField::Dry, dry);
        put(ImportField::Wet, wet);
        put(ImportField::Wick, wick);
        put(ImportField::Pressure, pressure);
        put(ImportField::Weather, weather);
        put(ImportField::Wind, wind);
        put(ImportField::Maximum, maximum);
        put(ImportField::Minimum, minimum);
        put(ImportField::Note, note);
        put(ImportField::Observer, observer);
        return given;
    }
};

/// The reading with the fields that were given, and no others, as they were typed. "-" empties one.
Outcome<record::Observation> withFields(const OpenedBook& opened, const record::Observation& before,
                                        const std::map<ImportField, std::string>& given) {
    // Cells are read as everywhere; where and when is the reading's own, and a bulb that was not named, or
    // is emptied, stands there only because a row without any is none.
    std::map<ImportField, std::string> cells = given;
    cells.emplace(ImportField::Time, record::instantText(before.instant));
    for (const ImportField bulb : {ImportField::Dry, ImportField::Wet}) {
        if (const auto cell = cells.find(bulb); cell == cells.end() || cell->second == kEmptied) {
            cells[bulb] = "0";
        }
    }
    exchange::ImportOptions options;
    if (before.dry.value) {
        options.unit = before.dry.value->unit;
    }
    const auto typed = exchange::observationFromFields(cells, opened.station, options);
    if (!typed) {
        return refuse(fmt::format("Not changed: {}.", ui::rejectWords(typed.error()).toStdString()));
    }
    record::Observation after = before;
    for (const auto& [field, text] : given) {
        switch (field) {
        case ImportField::Dry:
            after.dry = text == kEmptied ? record::BulbReading{} : typed->dry;
            break;
        case ImportField::Wet:
            after.wet = text == kEmptied ? record::BulbReading{} : typed->wet;
            break;
        case ImportField::Wick:
            after.wick = typed->wick;
            break;
        case ImportField::Pressure:
            after.pressure = typed->pressure;
            break;
        case ImportField::Weather:
            after.weather = typed->weather;
            break;
        case ImportField::Wind:
            after.windBeaufort = typed->windBeaufort;
            break;
        case ImportField::Maximum:
            after.maximum = typed->maximum;
            break;
        case ImportField::Minimum:
            after.minimum = typed->minimum;
            break;
        case ImportField::Note:
            after.note = text == kEmptied ? std::string{} : text;
            break;
        case ImportField::Observer:
            after.observer = text == kEmptied ? std::string{} : text;
            break;
        default:
            break;
        }
    }
    return after;
}

Outcome<ExitCode> revise(const ReviseOptions& options) {
    if (auto reason = options.how.hasReason(); !reason) {
        return tl::unexpected(reason.error());
    }
    const auto given = options.fields();
    if (given.empty() && !options.estimated && !options.observed) {
        return refuse("Say what to change: a field such as --dry or --note, --estimated or --observed.");
    }
    if (options.estimated && options.observed) {
        return refuse("A value is --estimated or --observed, not both.");
    }
    for (const auto& [field, text] : given) {
        if (!exchange::isUtf8(text)) {
            return refuse(fmt::format("{} is not UTF-8 text; write it again.", exchange::fieldName(field)));
        }
    }
    auto opened = openFor(options.which, options.how);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    const auto readings = readingsMeant(*opened, options.which);
    if (!readings) {
        return tl::unexpected(readings.error());
    }
    std::vector<ReadingChange> changes;
    for (const record::StoredObservation& before : *readings) {
        const auto after = withFields(*opened, before.values, given);
        if (!after) {
            return tl::unexpected(after.error());
        }
        if (!after->dry.given() && !after->wet.given()) {
            return refuse(
                fmt::format("A reading has at least one of its two bulbs; to take back the one of {} "
                            "use withdraw.",
                            options.which.at.front()));
        }
        const bool estimate =
            options.estimated || (!options.observed && before.values.origin == record::Origin::Estimated);
        if (*after != before.values || estimate != (before.values.origin == record::Origin::Estimated)) {
            changes.push_back({before, desk::asRevised(before.values, *after, estimate)});
        }
    }
    return storeChanges(*opened, std::move(changes), options.how, {});
}

} // namespace

VerbAction declareRevise(OptionList command) {
    auto options = std::make_shared<ReviseOptions>();
    options->which.declare(command, false);
    command.text("--dry", options->dry,
                 "Dry bulb as it is to stand, in the thermometer's unit; \"-\" empties a "
                 "field");
    command.text("--wet", options->wet, "Wet bulb");
    command.text("--wick", options->wick, "water or ice");
    command.text("--pressure", options->pressure, "Station pressure, hPa");
    command.text("--weather", options->weather, "Such as fog, or rain;thunder, or none");
    command.text("--wind", options->wind, "Beaufort force");
    command.text("--max", options->maximum, "Maximum as read");
    command.text("--min", options->minimum, "Minimum as read");
    command.text("--note", options->note, "Remark");
    command.text("--observer", options->observer, "Initials of who read");
    command.flag("--estimated", options->estimated,
                 "The value is an estimate: marked, and left out of means and extremes");
    command.flag("--observed", options->observed, "What stood there was an estimate; this was read");
    options->how.declare(command, "Reason, kept with the change; needed");
    return [options] { return revise(*options); };
}

} // namespace wickbook::cli
