// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/sidecar.h"

#include "core/exchange/observation_columns.h"
#include "core/psychrometry/exposure.h"
#include "core/units/number_text.h"

#include <nlohmann/json.hpp>

/// Shape: W3C Recommendation "Metadata Vocabulary for Tabular Data" (2015). Whatever that vocabulary has no
/// word for stands under prefixed names of its initial context (section 5.8, common properties), so the file
/// stays valid: Dublin Core for titles, schema.org for the station.

namespace wickbook::exchange {

namespace {

using Json = nlohmann::ordered_json;

/// A concept of the CF standard name table, as the NERC vocabulary server addresses it.
std::string standardNameUrl(std::string_view name) {
    return "http://vocab.nerc.ac.uk/standard_name/" + std::string(name) + "/";
}

Json fact(std::string_view name, Json value, std::string_view unit = {}) {
    Json result{{"@type", "schema:PropertyValue"}, {"schema:name", name}, {"schema:value", std::move(value)}};
    if (!unit.empty()) {
        result["schema:unitText"] = unit;
    }
    return result;
}

void addValidity(Json& to, const std::optional<record::Instant>& from,
                 const std::optional<record::Instant>& until) {
    if (from) {
        to["schema:validFrom"] = record::instantText(*from);
    }
    if (until) {
        to["schema:validThrough"] = record::instantText(*until);
    }
}

Json datatypeOf(const ObservationColumn& column) {
    if (column.datatype == "boolean") {
        return {{"base", "boolean"}, {"format", "yes|no"}};
    }
    if (column.datatype == "dateTime") {
        return {{"base", "dateTime"}, {"format", "yyyy-MM-ddTHH:mm:ssX"}};
    }
    return column.datatype;
}

Json columnOf(const ObservationColumn& column) {
    Json result{{"name", column.name},
                {"titles", column.name},
                {"dc:description", column.description},
                {"datatype", datatypeOf(column)}};
    if (!column.standardName.empty()) {
        result["propertyUrl"] = standardNameUrl(column.standardName);
    }
    if (!column.unit.empty()) {
        result["schema:unitText"] = column.unit; // UCUM
    }
    return result;
}

std::string_view unitName(units::TemperatureUnit unit) {
    return unit == units::TemperatureUnit::Celsius ? "Cel" : "[degF]";
}

Json coefficientFacts(const record::StationPeriod& period) {
    Json facts = Json::array();
    if (period.exposure == psychrometry::Exposure::Own) {
        if (period.ownCoefficient) {
            facts.push_back(
                fact("psychrometer coefficient, water", period.ownCoefficient->waterPerKelvin, "K-1"));
            if (period.ownCoefficient->icePerKelvin) {
                facts.push_back(
                    fact("psychrometer coefficient, ice", *period.ownCoefficient->icePerKelvin, "K-1"));
            }
            if (period.ownCoefficient->relativeUncertainty) {
                facts.push_back(fact("relative standard uncertainty of the coefficient",
                                     *period.ownCoefficient->relativeUncertainty, "1"));
            }
            facts.push_back(fact("source of the coefficient", "fitted at the station"));
        }
        return facts;
    }
    const auto& entry = psychrometry::entryOf(period.exposure);
    facts.push_back(fact("psychrometer coefficient at 0 °C, water", entry.waterCoefficient, "K-1"));
    if (entry.waterCoefficientSlope != 0.0) {
        facts.push_back(fact("relative increase of the coefficient with the wet bulb",
                             entry.waterCoefficientSlope, "K-1"));
    }
    facts.push_back(fact("psychrometer coefficient, ice", entry.iceCoefficient, "K-1"));
    facts.push_back(fact("source of the coefficient", entry.source));
    return facts;
}

Json periodOf(const record::StationPeriod& period) {
    Json hours = Json::array();
    for (const auto hour : period.hours) {
        hours.push_back(record::hourText(hour));
    }
    Json facts = Json::array();
    facts.push_back(fact("latitude", period.position.latitude, "deg"));
    facts.push_back(fact("longitude", period.position.longitude, "deg"));
    facts.push_back(fact("elevation", period.elevation.metres(), "m"));
    if (period.meanPressure) {
        facts.push_back(fact("mean pressure at the station", *period.meanPressure, "hPa"));
    }
    facts.push_back(fact("time zone", period.zone.name()));
    facts.push_back(fact("observing hours", std::move(hours)));
    facts.push_back(fact("observing hours follow", record::hourRuleName(period.hourRule)));
    facts.push_back(fact("exposure", psychrometry::entryOf(period.exposure).name));
    for (auto& coefficient : coefficientFacts(period)) {
        facts.push_back(std::move(coefficient));
    }
    if (!period.surroundings.empty()) {
        facts.push_back(fact("surroundings", period.surroundings));
    }
    Json result{{"@type", "schema:PropertyValue"}, {"schema:name", "period"}};
    addValidity(result, period.from, period.to);
    result["schema:value"] = std::move(facts);
    return result;
}

Json thermometerOf(const record::StationFacts& facts, const record::Thermometer& thermometer) {
    const auto unit = unitName(thermometer.unit);
    Json values = Json::array();
    values.push_back(fact("name", thermometer.name));
    if (!thermometer.liquid.empty()) {
        values.push_back(fact("liquid", thermometer.liquid));
    }
    values.push_back(fact("scale step", thermometer.step.toDouble(), unit));
    values.push_back(fact("lowest mark", thermometer.lowestMark.toDouble(), unit));
    values.push_back(fact("highest mark", thermometer.highestMark.toDouble(), unit));
    for (const auto& correction : facts.corrections) {
        if (correction.withdrawn || correction.thermometer != thermometer.id) {
            continue;
        }
        Json points = Json::array();
        for (const auto& point : correction.points) {
            points.push_back(
                Json::array({fact("at reading", point.reading, unit), fact("add", point.correction, unit)}));
        }
        Json entry = fact("correction", std::move(points));
        addValidity(entry, correction.from, std::nullopt);
        entry["schema:description"] = correction.source;
        entry["schema:additionalProperty"] =
            Json::array({fact("standard uncertainty", correction.standardUncertainty, unit)});
        values.push_back(std::move(entry));
    }
    return {{"@type", "schema:PropertyValue"},
            {"schema:name", "thermometer"},
            {"schema:value", std::move(values)}};
}

Json fittingOf(const record::StationRecord& station, const record::Fitting& fitting) {
    const auto nameOf = [&](const record::Uuid& id) {
        const auto* thermometer = station.thermometer(id);
        return thermometer == nullptr ? std::string{} : thermometer->name;
    };
    Json result = fact("thermometers in use",
                       Json::array({fact("dry", nameOf(fitting.dry)), fact("wet", nameOf(fitting.wet))}));
    addValidity(result, fitting.from, std::nullopt);
    return result;
}

Json stationBlock(const record::StationRecord& station) {
    const auto& facts = station.facts();
    Json properties = Json::array();
    for (const auto& period : station.periods()) {
        properties.push_back(periodOf(period));
    }
    for (const auto& thermometer : facts.thermometers) {
        if (!thermometer.withdrawn) {
            properties.push_back(thermometerOf(facts, thermometer));
        }
    }
    for (const auto& fitting : facts.fittings) {
        if (!fitting.withdrawn) {
            properties.push_back(fittingOf(station, fitting));
        }
    }
    Json block{{"@type", "schema:Place"}, {"schema:name", station.name()}};
    if (facts.invented) {
        block["schema:description"] = "This station is invented, and so are its readings.";
    }
    block["schema:additionalProperty"] = std::move(properties);
    return block;
}

constexpr std::string_view kHowMade =
    "Readings of a dry-bulb and a wet-bulb thermometer. Corrections are applied in the thermometer's unit; "
    "humidity follows from the psychrometer equation with the coefficient and the pressure in force, "
    "relative "
    "humidity is over liquid water at every temperature, in per cent. Missing values are empty cells. What "
    "was "
    "read (dry_read, wet_read) is never altered.";

} // namespace

std::string sidecarMetadata(const record::StationRecord& station, const std::string& csvFileName) {
    Json columns = Json::array();
    for (const auto& column : observationColumns()) {
        columns.push_back(columnOf(column));
    }
    Json table{{"@context", "http://www.w3.org/ns/csvw"}, {"url", csvFileName}};
    table["dc:title"] = station.facts().invented ? station.name() + " (invented station)" : station.name();
    table["dc:description"] = kHowMade;
    table["dialect"] = {{"encoding", "utf-8"}, {"delimiter", ","}, {"quoteChar", "\""},
                        {"doubleQuote", true}, {"header", true},   {"headerRowCount", 1}};
    table["tableSchema"] = {{"columns", std::move(columns)},
                            {"primaryKey", Json::array({"time_utc", "hour"})}};
    table["schema:spatialCoverage"] = stationBlock(station);
    // Names and notes are whatever was typed or imported: bytes that are no text must not stop an export.
    return table.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace wickbook::exchange
