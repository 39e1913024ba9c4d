// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/sidecar.h"

#include "core/checks/limits.h"
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

/// A file name as a relative URL (RFC 3986): every byte that is not unreserved is percent-encoded, a colon
/// too, for what stands before it would be a scheme.
std::string relativeUrl(std::string_view fileName) {
    static constexpr std::string_view kUnreserved =
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~";
    static constexpr std::string_view kDigits = "0123456789ABCDEF";
    std::string url;
    for (const char c : fileName) {
        if (kUnreserved.find(c) != std::string_view::npos) {
            url += c;
        } else {
            const auto byte = static_cast<unsigned char>(c);
            url += {'%', kDigits[byte / 16U], kDigits[byte % 16U]};
        }
    }
    return url;
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

/// Columns that no row leaves empty.
bool isRequired(std::string_view name) {
    return name == "time_utc" || name == "local_date" || name == "utc_offset" || name == "origin" ||
           name == "quality" || name == "set_aside" || name == "revision";
}

Json columnOf(const ObservationColumn& column) {
    Json result{{"name", column.name},
                {"titles", column.name},
                {"dc:description", column.description},
                {"datatype", datatypeOf(column)}};
    if (isRequired(column.name)) {
        result["required"] = true;
    }
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
    if (entry.usesEnhancement) {
        facts.push_back(
            fact("enhancement factor f at the pressure p in hPa", "1.0016 + 3.15e-6 p - 0.074/p"));
    }
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
    values.push_back(fact("identity", thermometer.id.toText()));
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
            points.push_back(fact("point", Json::array({fact("at reading", point.reading, unit),
                                                        fact("add", point.correction, unit)})));
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
    const auto thermometerAs = [&](std::string_view bulb, const record::Uuid& id) {
        const auto* thermometer = station.thermometer(id);
        Json entry = fact(bulb, thermometer == nullptr ? std::string{} : thermometer->name);
        entry["schema:propertyID"] = id.toText(); // two may have one name
        return entry;
    };
    Json result = fact("thermometers in use",
                       Json::array({thermometerAs("dry", fitting.dry), thermometerAs("wet", fitting.wet)}));
    addValidity(result, fitting.from, std::nullopt);
    return result;
}

/// What the station decided otherwise than the checks' own table: findings and set_aside follow from it.
Json limitOf(const record::LimitMoment& moment, const std::optional<double>& value) {
    Json entry = fact("limit of the checks: " + moment.name, value ? Json(*value) : Json("built in again"));
    addValidity(entry, moment.from, std::nullopt);
    return entry;
}

/// What a month's summary goes by, unless a limit of the station's own, listed behind, says otherwise.
Json rulesOf(const record::StationFacts& facts) {
    const checks::Limits builtIn;
    Json values = Json::array();
    values.push_back(
        fact("a reading takes the nearest observing hour within", facts.hourWindowMinutes, "min"));
    values.push_back(fact("month.days-missing: means are withheld from this many days missing at an hour",
                          builtIn.value("month.days-missing"), "d"));
    values.push_back(
        fact("month.days-in-a-row: and from this many in a row", builtIn.value("month.days-in-a-row"), "d"));
    values.push_back(fact("month.damp-day: days at or above", builtIn.value("month.damp-day"), "%"));
    values.push_back(fact("month.dry-day: days at or below", builtIn.value("month.dry-day"), "%"));
    values.push_back(fact("source of the rule for means", "WMO-No. 1203"));
    return fact("rules built in", std::move(values));
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
    properties.push_back(rulesOf(facts));
    for (const auto& [moment, value] : facts.limits) {
        properties.push_back(limitOf(moment, value));
    }
    Json block{{"@type", "schema:Place"}, {"schema:name", station.name()}};
    if (facts.invented) {
        block["schema:description"] = "This station is invented, and so are its readings.";
    }
    block["schema:additionalProperty"] = std::move(properties);
    return block;
}

constexpr std::string_view kHowMade =
    "Readings of a dry-bulb and a wet-bulb thermometer. What was read (dry_read, wet_read) is never altered. "
    "Corrections are applied in the thermometer's unit, linear between their points, the nearest beyond. "
    "Humidity follows from the psychrometer equation e = f e_s(t_w) - A p (t - t_w), with the coefficient A "
    "and the pressure p in force and the saturation vapour pressures of Sonntag (1990), e_s over ice where "
    "the wick is ice. A bulb of melting ice stands at 0 °C; a wet bulb above the highest that the air allows "
    "is taken for saturation, 100 %, up to 0.2 K or a scale step, whichever is more. Relative humidity is "
    "over liquid water at every temperature, in per cent. Missing values are empty cells. Readings withdrawn "
    "and the history of revised ones stay in the book: brought into another book with the same station, the "
    "file comes out of it the same but for the column revision, which begins with 1 there.";

} // namespace

std::string sidecarMetadata(const record::StationRecord& station, const std::string& csvFileName) {
    Json columns = Json::array();
    for (const auto& column : observationColumns()) {
        columns.push_back(columnOf(column));
    }
    Json table{{"@context", "http://www.w3.org/ns/csvw"}, {"url", relativeUrl(csvFileName)}};
    table["dc:title"] = station.facts().invented ? station.name() + " (invented station)" : station.name();
    table["dc:description"] = kHowMade;
    table["dialect"] = {{"encoding", "utf-8"}, {"delimiter", ","}, {"quoteChar", "\""},
                        {"doubleQuote", true}, {"header", true},   {"headerRowCount", 1}};
    table["tableSchema"] = {{"columns", std::move(columns)},
                            {"primaryKey", Json::array({"time_utc", "local_date", "hour"})}};
    table["schema:spatialCoverage"] = stationBlock(station);
    // Names and notes are whatever was typed or imported: bytes that are no text must not stop an export.
    return table.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace wickbook::exchange
