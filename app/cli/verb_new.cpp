// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/book_access.h"
#include "app/cli/console.h"
#include "app/cli/options.h"
#include "app/cli/station_options.h"
#include "app/cli/verb_table.h"
#include "core/exchange/byte_decoder.h"
#include "core/record/station_record.h"

#include <fmt/format.h>

#include <memory>

namespace wickbook::cli {

namespace {

struct NewOptions {
    std::string book, name, unit = "c", resolution = "0.1", scale;
    StationOptions station;
};

/// −40…60 °C, as most station thermometers are engraved; the same marks in °F.
struct Scale {
    units::Decimal lowest{-40, 0};
    units::Decimal highest{60, 0};
};

Outcome<Scale> scaleFrom(const std::string& text, units::TemperatureUnit unit) {
    Scale scale;
    if (unit == units::TemperatureUnit::Fahrenheit) {
        scale.highest = {140, 0};
    }
    if (text.empty()) {
        return scale;
    }
    const auto comma = text.find(',');
    const auto low = units::parseDecimal(text.substr(0, comma), units::DecimalMark::Point);
    const auto high = comma == std::string::npos
                          ? tl::unexpected(units::DecimalError::Empty)
                          : units::parseDecimal(text.substr(comma + 1), units::DecimalMark::Point);
    if (!low || !high) {
        return refuse(fmt::format("--scale {}: write the lowest and the highest mark like -40,60.", text));
    }
    if (low->toDouble() >= high->toDouble()) {
        return refuse(fmt::format("--scale {}: the lowest mark comes first; write it like -40,60.", text));
    }
    scale.lowest = *low;
    scale.highest = *high;
    return scale;
}

Outcome<record::NewStation> stationFrom(const NewOptions& options) {
    if (options.name.find_first_not_of(" \t") == std::string::npos || !exchange::isUtf8(options.name)) {
        return refuse("--name: give the station a name, in UTF-8.");
    }
    const StationOptions& given = options.station;
    for (const std::string* text :
         {&given.hours, &given.elevation, &given.latitude, &given.longitude, &given.zone, &given.exposure}) {
        if (text->empty()) {
            return refuse(
                "--hours, --elevation, --latitude, --longitude, --zone and --exposure each need a value.");
        }
    }
    const auto facts = given.change({});
    if (!facts) {
        return tl::unexpected(facts.error());
    }
    const auto unit = unitFrom(options.unit);
    if (!unit) {
        return tl::unexpected(unit.error());
    }
    const auto step = decimalFrom("--resolution", options.resolution);
    if (!step) {
        return tl::unexpected(step.error());
    }
    if (step->toDouble() < 0.001 || step->toDouble() > 5) {
        return refuse(
            fmt::format("--resolution {} is no step of such a thermometer; 0.1, 0.2, 0.5 or 1 are usual.",
                        options.resolution));
    }
    const auto scale = scaleFrom(options.scale, *unit);
    if (!scale) {
        return tl::unexpected(scale.error());
    }
    record::NewStation station;
    station.name = options.name;
    station.position = facts->position.value_or(record::Position{});
    station.elevation = facts->elevation.value_or(station.elevation);
    station.zone = facts->zone.value_or(station.zone);
    station.hours = facts->hours.value_or(station.hours);
    station.hourRule = facts->hourRule.value_or(station.hourRule);
    station.exposure = facts->exposure.value_or(station.exposure);
    station.unit = *unit;
    station.step = *step;
    station.lowestMark = scale->lowest;
    station.highestMark = scale->highest;
    return station;
}

Outcome<ExitCode> newBook(const NewOptions& options) {
    const auto station = stationFrom(options);
    if (!station) {
        return tl::unexpected(station.error());
    }
    const auto book = store::Book::create(options.book, record::factsOf(*station, record::Uuid::random),
                                          {accountName(), {}});
    if (!book) {
        return refuse(book.error());
    }
    say(fmt::format("The book of {} is begun: {}.", station->name, options.book));
    return ExitCode::Done;
}

} // namespace

VerbAction declareNew(OptionList command) {
    auto options = std::make_shared<NewOptions>();
    command.needed("--book", options->book, "File of the new book; nothing may be there yet");
    command.needed("--name", options->name, "Name of the station");
    options->station.declare(command, true);
    command.text("--unit", options->unit, "Unit of the thermometers' scales: c or f (c)");
    command.text("--resolution", options->resolution, "Finest step that is read, in that unit (0.1)");
    command.text("--scale", options->scale,
                 "Lowest and highest engraved mark, such as -35,50 (-40,60; in °F -40,140)");
    return [options] { return newBook(*options); };
}

} // namespace wickbook::cli
