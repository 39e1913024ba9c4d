// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/pair_result.h"

#include "app/cli/finding_text.h"
#include "core/checks/rule.h"
#include "core/psychrometry/ranges.h"
#include "core/psychrometry/standard_atmosphere.h"
#include "core/record/observation.h"
#include "core/units/number_text.h"

#include <nlohmann/json.hpp>

#include <array>

namespace wickbook::cli {

namespace {

/// Standard uncertainty of a pressure read, and of one from the elevation or assumed, hPa (our judgement).
constexpr double kReadPressureUncertainty = 1.0;
constexpr double kOtherPressureUncertainty = 10.0;

/// A quantity of a pair that could be derived; nothing is shown of one that could not.
template <typename Get>
ResultCell derived(const PairResult& result, Get get) {
    if (!result.derivation || result.derivation->problem) {
        return std::monostate{};
    }
    const std::optional<double> value = get(*result.derivation);
    return value ? ResultCell{DerivedNumber{*value}} : ResultCell{std::monostate{}};
}

using psychrometry::Derivation;

ResultCell vapourPressure(const PairResult& result) {
    return derived(result, [](const Derivation& d) -> std::optional<double> {
        return d.vapourPressure ? std::optional{d.vapourPressure->hectopascals()} : std::nullopt;
    });
}
ResultCell relativeHumidity(const PairResult& result) {
    return derived(result, [](const Derivation& d) -> std::optional<double> {
        return d.relativeHumidity ? std::optional{d.relativeHumidity->percent()} : std::nullopt;
    });
}
ResultCell dewPoint(const PairResult& result) {
    return derived(result, [](const Derivation& d) -> std::optional<double> {
        return d.dewPoint ? std::optional{d.dewPoint->celsius()} : std::nullopt;
    });
}
ResultCell frostPoint(const PairResult& result) {
    return derived(result, [](const Derivation& d) -> std::optional<double> {
        return d.frostPoint ? std::optional{d.frostPoint->celsius()} : std::nullopt;
    });
}
ResultCell depression(const PairResult& result) {
    // Plain subtraction: it needs no humidity, only two bulbs that are numbers of this world.
    if (!result.derivation || !psychrometry::isInRange(result.input.dry) ||
        !psychrometry::isInRange(result.input.wet)) {
        return std::monostate{};
    }
    return DerivedNumber{result.derivation->depression.kelvins()};
}
ResultCell vapourPressureDeficit(const PairResult& result) {
    return derived(result, [](const Derivation& d) -> std::optional<double> {
        return d.vapourPressureDeficit ? std::optional{d.vapourPressureDeficit->hectopascals()}
                                       : std::nullopt;
    });
}
ResultCell absoluteHumidity(const PairResult& result) {
    return derived(result, [](const Derivation& d) { return d.absoluteHumidity; });
}
ResultCell mixingRatio(const PairResult& result) {
    return derived(result, [](const Derivation& d) { return d.mixingRatio; });
}
ResultCell pressure(const PairResult& result) {
    if (!result.derivation) {
        return std::monostate{}; // nothing was used
    }
    const double value = result.input.pressure.hectopascals();
    return result.pressureOrigin == PressureOrigin::Elevation ? ResultCell{DerivedNumber{value}}
                                                              : ResultCell{GivenNumber{value}};
}
ResultCell coefficient(const PairResult& result) {
    if (!result.derivation) {
        return std::monostate{};
    }
    if (result.derivation->coefficient) {
        return GivenNumber{result.derivation->coefficient->perKelvin};
    }
    const auto& given = result.input.coefficient.perKelvin;
    return given ? ResultCell{GivenNumber{*given}} : ResultCell{std::monostate{}};
}
ResultCell wick(const PairResult& result) {
    if (!result.derivation) {
        return std::monostate{};
    }
    const bool known = result.derivation->wickUsed != psychrometry::WickState::NotGiven;
    const auto name = record::wickName(known ? result.derivation->wickUsed : result.input.wick);
    return name.empty() ? ResultCell{std::monostate{}} : ResultCell{std::string{name}};
}
ResultCell exposure(const PairResult& result) {
    return result.derivation && result.exposure
               ? ResultCell{std::string{psychrometry::entryOf(*result.exposure).name}}
               : ResultCell{std::monostate{}};
}
ResultCell relativeHumidityU95(const PairResult& result) {
    return derived(result, [](const Derivation& d) -> std::optional<double> {
        return d.uncertainty ? std::optional{d.uncertainty->relativeHumidityU95} : std::nullopt;
    });
}
ResultCell dewPointU95(const PairResult& result) {
    return derived(result, [](const Derivation& d) -> std::optional<double> {
        return d.uncertainty ? d.uncertainty->dewPointU95 : std::nullopt;
    });
}

} // namespace

PairResult preparedResult(const PairDefaults& defaults) {
    PairResult result;
    result.input.resolution = units::TemperatureDifference::fromKelvins(defaults.resolution);
    result.input.wick = defaults.wick;
    if (defaults.pressure) {
        result.pressureOrigin = PressureOrigin::Given;
        result.input.pressure = units::Pressure::fromHectopascals(*defaults.pressure);
    } else if (defaults.fromElevation) {
        result.pressureOrigin = PressureOrigin::Elevation;
        result.input.pressure = *defaults.fromElevation;
    } else {
        result.input.pressure =
            units::Pressure::fromHectopascals(psychrometry::kStandardSeaLevelHectopascals);
    }
    result.exposure = defaults.exposure;
    if (!result.exposure && defaults.coefficient) {
        result.exposure = psychrometry::Exposure::Own;
    }
    result.input.coefficient.perKelvin = defaults.coefficient;
    return result;
}

void deriveInto(PairResult& result) {
    result.input.coefficient.exposure = result.exposure.value_or(psychrometry::Exposure::Own);
    result.input.uncertainty.pressureHectopascals =
        result.pressureOrigin == PressureOrigin::Given ? kReadPressureUncertainty : kOtherPressureUncertainty;
    result.derivation = psychrometry::derive(result.input);
    for (checks::Finding& finding : checks::checkPair(result.input, *result.derivation)) {
        result.findings.push_back(std::move(finding));
    }
    if (result.pressureOrigin == PressureOrigin::Assumed) {
        result.findings.push_back(pressureAssumed(result.input.pressure));
    }
}

std::span<const ResultColumn> resultColumns() {
    static constexpr std::array<ResultColumn, 14> kColumns{{
        {"vapour_pressure_hpa", vapourPressure},
        {"relative_humidity_pct", relativeHumidity},
        {"dew_point_c", dewPoint},
        {"frost_point_c", frostPoint},
        {"depression_c", depression},
        {"vapour_pressure_deficit_hpa", vapourPressureDeficit},
        {"absolute_humidity_g_m3", absoluteHumidity},
        {"mixing_ratio_g_kg", mixingRatio},
        {"pressure_hpa", pressure},
        {"coefficient_per_k", coefficient},
        {"wick", wick},
        {"exposure", exposure},
        {"relative_humidity_u95_pct", relativeHumidityU95},
        {"dew_point_u95_c", dewPointU95},
    }};
    return kColumns;
}

void appendCellText(std::string& to, const ResultCell& cell) {
    if (const auto* number = std::get_if<DerivedNumber>(&cell)) {
        units::appendFixed(to, number->value, units::kDataDecimals);
    } else if (const auto* given = std::get_if<GivenNumber>(&cell)) {
        units::appendExact(to, given->value);
    } else if (const auto* text = std::get_if<std::string>(&cell)) {
        to += *text;
    }
}

std::string cellText(const ResultCell& cell) {
    std::string text;
    appendCellText(text, cell);
    return text;
}

JsonValue cellJson(const ResultCell& cell) {
    if (const auto* number = std::get_if<DerivedNumber>(&cell)) {
        return jsonNumber(number->value);
    }
    if (const auto* number = std::get_if<GivenNumber>(&cell)) {
        return number->value;
    }
    if (const auto* text = std::get_if<std::string>(&cell)) {
        return *text;
    }
    return nullptr;
}

std::string findingCodes(const std::vector<checks::Finding>& findings) {
    std::string codes;
    for (const checks::Finding& finding : findings) {
        codes += (codes.empty() ? "" : ";") + std::string{finding.code};
    }
    return codes;
}

JsonValue resultJson(const PairResult& result) {
    JsonValue object = JsonValue::object();
    for (const ResultColumn& column : resultColumns()) {
        object[std::string{column.name}] = cellJson(column.cell(result));
    }
    JsonValue findings = JsonValue::array();
    for (const checks::Finding& finding : result.findings) {
        findings.push_back({{"code", std::string{finding.code}},
                            {"severity", std::string{checks::severityName(finding.severity)}},
                            {"message", wordsFor(finding).message.toStdString()}});
    }
    object[std::string{kFindingsColumn}] = std::move(findings);
    return object;
}

std::vector<std::string> resultHeader() {
    std::vector<std::string> header;
    for (const ResultColumn& column : resultColumns()) {
        header.emplace_back(column.name);
    }
    header.emplace_back(kFindingsColumn);
    return header;
}

std::vector<std::string> resultRow(const PairResult& result) {
    std::vector<std::string> row;
    for (const ResultColumn& column : resultColumns()) {
        row.push_back(cellText(column.cell(result)));
    }
    row.push_back(findingCodes(result.findings));
    return row;
}

} // namespace wickbook::cli
