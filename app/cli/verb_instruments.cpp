// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/book_access.h"
#include "app/cli/output.h"
#include "app/cli/verb_table.h"
#include "core/desk/beside_register.h"
#include "ui/text/instrument_words.h"
#include "ui/text/term_words.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <memory>

namespace wickbook::cli {

namespace {

struct InstrumentListOptions {
    std::string book, format = "text";
};

std::string nameOf(const record::StationRecord& station, const record::Uuid& id) {
    const record::Thermometer* thermometer = station.thermometer(id);
    return thermometer == nullptr ? std::string{"unknown"} : thermometer->name;
}

/// "2026-10-01", or "beginning".
std::string sinceText(const record::StationRecord& station, const std::optional<record::Instant>& from) {
    return from ? record::dateText(date::floor<date::days>(station.periodAt(*from).zone.localAt(*from)))
                : std::string{"beginning"};
}

std::string unitText(units::TemperatureUnit unit) {
    return unit == units::TemperatureUnit::Celsius ? "c" : "f";
}

JsonValue thermometersJson(const record::StationRecord& station) {
    JsonValue list = JsonValue::array();
    for (const record::Thermometer& each : station.facts().thermometers) {
        if (each.withdrawn) {
            continue;
        }
        list.push_back({{"name", each.name},
                        {"liquid", jsonText(each.liquid)},
                        {"unit", unitText(each.unit)},
                        {"step", each.step.toText()},
                        {"lowest_mark", each.lowestMark.toText()},
                        {"highest_mark", each.highestMark.toText()}});
    }
    return list;
}

JsonValue correctionsJson(const record::StationRecord& station) {
    JsonValue list = JsonValue::array();
    for (const record::Correction& each : station.facts().corrections) {
        if (each.withdrawn) {
            continue;
        }
        JsonValue points = JsonValue::array();
        for (const record::CorrectionPoint& point : each.points) {
            points.push_back({{"reading", point.reading}, {"add", point.correction}});
        }
        list.push_back({{"thermometer", nameOf(station, each.thermometer)},
                        {"from", sinceText(station, each.from)},
                        {"points", points},
                        {"standard_uncertainty", each.standardUncertainty},
                        {"source", jsonText(each.source)}});
    }
    return list;
}

JsonValue periodsJson(const record::StationRecord& station) {
    JsonValue list = JsonValue::array();
    for (const record::StationPeriod& period : station.periods()) {
        const auto rule = record::coefficientRule(period);
        const auto at = [&](psychrometry::Surface bulb) {
            const auto coefficient =
                rule.at(bulb, units::Temperature::fromCelsius(0), units::Pressure::fromHectopascals(1013.25));
            return coefficient ? JsonValue(coefficient->perKelvin) : JsonValue();
        };
        list.push_back(
            {{"from", sinceText(station, period.from)},
             {"exposure", psychrometry::entryOf(period.exposure).name},
             {"coefficient_water_at_0", at(psychrometry::Surface::Water)},
             {"coefficient_ice", at(psychrometry::Surface::Ice)},
             {"relative_standard_uncertainty",
              rule.relativeUncertainty.value_or(psychrometry::entryOf(period.exposure).relativeUncertainty)},
             {"mean_pressure", jsonNumber(period.meanPressure)}});
    }
    return list;
}

JsonValue everything(const record::StationRecord& station) {
    JsonValue fittings = JsonValue::array();
    for (const record::Fitting& each : station.facts().fittings) {
        if (!each.withdrawn) {
            fittings.push_back({{"from", sinceText(station, each.from)},
                                {"dry", nameOf(station, each.dry)},
                                {"wet", nameOf(station, each.wet)}});
        }
    }
    JsonValue beside = JsonValue::array();
    for (const record::SideBySide& each : station.facts().sideBySides) {
        beside.push_back({{"name", each.name},
                          {"purpose", record::besidePurposeName(each.purpose)},
                          {"from", record::dateText(each.from)},
                          {"to", each.to ? JsonValue(record::dateText(*each.to)) : JsonValue()},
                          {"readings", desk::readingsOf(station.facts(), each.id).size()},
                          {"decision", jsonText(each.decision)}});
    }
    return {{"thermometers", thermometersJson(station)},
            {"in_use", fittings},
            {"corrections", correctionsJson(station)},
            {"periods", periodsJson(station)},
            {"pair_checks", station.facts().pairChecks.size()},
            {"salt_checks", station.facts().saltChecks.size()},
            {"beside", beside}};
}

void writeText(Output& output, const record::StationRecord& station) {
    const QLocale locale = QLocale::c();
    const auto line = [&](const std::string& text) { output.text(text + "\n"); };
    for (const record::Thermometer& each : station.facts().thermometers) {
        if (!each.withdrawn) {
            line(fmt::format("thermometer {}: {}{}", each.name, ui::scaleWords(locale, each).toStdString(),
                             each.liquid.empty() ? "" : ", " + each.liquid));
        }
    }
    for (const record::Fitting& each : station.facts().fittings) {
        if (!each.withdrawn) {
            line(fmt::format("in use from {}: dry {}, wet {}", sinceText(station, each.from),
                             nameOf(station, each.dry), nameOf(station, each.wet)));
        }
    }
    for (const record::Correction& each : station.facts().corrections) {
        if (!each.withdrawn) {
            const record::Thermometer* thermometer = station.thermometer(each.thermometer);
            const auto unit = thermometer == nullptr ? units::TemperatureUnit::Celsius : thermometer->unit;
            line(fmt::format("correction of {} from {}: {} ({})", nameOf(station, each.thermometer),
                             sinceText(station, each.from), ui::pointsWords(locale, each, unit).toStdString(),
                             each.source));
        }
    }
    for (const record::StationPeriod& period : station.periods()) {
        std::string words = ui::exposureWords(period.exposure).toStdString();
        if (period.exposure == psychrometry::Exposure::Own && period.ownCoefficient) {
            words += ", " + ui::ownCoefficientWords(locale, *period.ownCoefficient).toStdString();
        }
        if (period.meanPressure) {
            words += fmt::format(", mean pressure {:g} hPa", *period.meanPressure);
        }
        line(fmt::format("from {}: {}", sinceText(station, period.from), words));
    }
    for (const record::PairCheck& each : station.facts().pairChecks) {
        const record::Thermometer* dry = station.thermometer(each.dry);
        const record::Thermometer* wet = station.thermometer(each.wet);
        if (dry != nullptr && wet != nullptr) {
            line(fmt::format("pair check of {}: {}", record::dateText(each.date),
                             ui::pairVerdictWords(locale, comparison::judgePair(each, *dry, *wet))
                                 .join(QLatin1Char(' '))
                                 .toStdString()));
        }
    }
    for (const record::SaltCheck& each : station.facts().saltChecks) {
        line(fmt::format("salt check of {}, {}: {}", record::dateText(each.date), each.sensor,
                         ui::saltVerdictWords(locale, comparison::judgeSalts(each)).front().toStdString()));
    }
    for (const record::SideBySide& each : station.facts().sideBySides) {
        line(fmt::format("beside from {}: {}, {} readings", record::dateText(each.from), each.name,
                         desk::readingsOf(station.facts(), each.id).size()));
    }
}

Outcome<ExitCode> instruments(const InstrumentListOptions& options) {
    const auto format = formatFrom(options.format);
    if (!format) {
        return tl::unexpected(format.error());
    }
    if (*format == Format::Csv) {
        return refuse("The instruments are no table; choose --format text or json.");
    }
    const auto opened = openToRead(options.book);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    auto output = Output::open("-");
    if (*format == Format::Json) {
        output->json(everything(opened->station));
    } else {
        writeText(*output, opened->station);
    }
    if (auto finished = output->finish(); !finished) {
        return tl::unexpected(finished.error());
    }
    return ExitCode::Done;
}

} // namespace

VerbAction declareInstruments(OptionList command) {
    auto options = std::make_shared<InstrumentListOptions>();
    command.needed("--book", options->book, "The book");
    command.text("--format", options->format, "text or json (text)");
    return [options] { return instruments(*options); };
}

} // namespace wickbook::cli
