// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/fact_changes.h"
#include "app/cli/options.h"
#include "app/cli/verb_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <memory>

namespace wickbook::cli {

namespace {

struct ThermometerOptions {
    FactOptions facts;
    std::string name, liquid, unit, step, lowest, highest, hang, from;
};

/// Lays what was given over the thermometer.
Outcome<record::Thermometer> described(record::Thermometer thermometer, const ThermometerOptions& options) {
    if (!options.liquid.empty()) {
        thermometer.liquid = options.liquid;
    }
    if (!options.unit.empty()) {
        const auto unit = unitFrom(options.unit);
        if (!unit) {
            return tl::unexpected(unit.error());
        }
        thermometer.unit = *unit;
    }
    const auto read = [](const char* option, const std::string& text,
                         units::Decimal& target) -> Outcome<void> {
        if (text.empty()) {
            return {};
        }
        const auto value = decimalFrom(option, text);
        if (!value) {
            return tl::unexpected(value.error());
        }
        target = *value;
        return {};
    };
    for (const auto& each : {read("--step", options.step, thermometer.step),
                             read("--lowest", options.lowest, thermometer.lowestMark),
                             read("--highest", options.highest, thermometer.highestMark)}) {
        if (!each) {
            return tl::unexpected(each.error());
        }
    }
    if (thermometer.step.toDouble() < 0.01 || thermometer.step.toDouble() > 2) {
        return refuse(fmt::format("--step {}: the finest step that is read lies between 0.01 and 2 degrees.",
                                  thermometer.step.toText()));
    }
    if (thermometer.lowestMark.toDouble() >= thermometer.highestMark.toDouble()) {
        return refuse(fmt::format("--lowest {} must lie below --highest {}.", thermometer.lowestMark.toText(),
                                  thermometer.highestMark.toText()));
    }
    return thermometer;
}

Outcome<void> hangUp(record::StationFacts& facts, const record::StationRecord& station,
                     const record::Thermometer& thermometer, const ThermometerOptions& options) {
    if (options.hang.empty()) {
        return {};
    }
    if (options.hang != "dry" && options.hang != "wet") {
        return refuse(fmt::format("--hang {}: it can hang as dry or as wet.", options.hang));
    }
    if (options.from.empty()) {
        return refuse("Say from when it hangs there with --from, such as --from 2026-11-01.");
    }
    const auto from = beginningFrom(options.from, station);
    if (!from) {
        return tl::unexpected(from.error());
    }
    const record::Thermometer* dry = station.dryThermometerAt(**from);
    const record::Thermometer* wet = station.wetThermometerAt(**from);
    record::Fitting fitting;
    fitting.id = record::Uuid::random();
    fitting.from = *from;
    fitting.dry = options.hang == "dry" ? thermometer.id : dry == nullptr ? record::Uuid{} : dry->id;
    fitting.wet = options.hang == "wet" ? thermometer.id : wet == nullptr ? record::Uuid{} : wet->id;
    if (fitting.dry == fitting.wet) {
        return refuse(
            fmt::format("{} hangs as the other bulb then; one thermometer can't be both.", thermometer.name));
    }
    facts.fittings.push_back(fitting);
    return {};
}

Outcome<ExitCode> thermometer(const ThermometerOptions& options) {
    auto opened = openForFacts(options.facts);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    record::StationFacts after = opened->station.facts();
    auto known = std::find_if(after.thermometers.begin(), after.thermometers.end(),
                              [&](const auto& each) { return !each.withdrawn && each.name == options.name; });
    const bool isNew = known == after.thermometers.end();
    record::Thermometer start;
    if (isNew) {
        start.id = record::Uuid::random();
        start.name = options.name;
        start.unit = opened->unit();
    } else {
        start = *known;
    }
    const auto made = described(start, options);
    if (!made) {
        return tl::unexpected(made.error());
    }
    if (isNew) {
        after.thermometers.push_back(*made);
    } else {
        *known = *made;
    }
    if (const auto hung = hangUp(after, opened->station, *made, options); !hung) {
        return tl::unexpected(hung.error());
    }
    const std::string hangs = options.hang.empty() ? ""
                                                   : fmt::format(" It hangs as the {} bulb from {} on.",
                                                                 options.hang, options.from);
    return keepFacts(
        *opened, after, options.facts,
        fmt::format("Thermometer {} is {}.{}", options.name, isNew ? "written down" : "changed", hangs));
}

} // namespace

VerbAction declareThermometer(OptionList command) {
    auto options = std::make_shared<ThermometerOptions>();
    options->facts.declare(command);
    command.needed("--name", options->name,
                   "Serial number or name; one that is in the book already is changed");
    command.text("--liquid", options->liquid, "spirit, mercury, …");
    command.text("--unit", options->unit, "Unit of its scale: c or f (the station's)");
    command.text("--step", options->step, "Finest step that is read, in its unit (0.1)");
    command.text("--lowest", options->lowest, "Lowest mark (-40)");
    command.text("--highest", options->highest, "Highest mark (60)");
    command.text("--hang", options->hang,
                 "dry or wet: it hangs there, beside the other one in use, with --from");
    command.text("--from", options->from,
                 "Date from which it hangs there, by the station's clock: 1994-05-01");
    return [options] { return thermometer(*options); };
}

} // namespace wickbook::cli
