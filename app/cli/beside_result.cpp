// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/beside_result.h"

#include "ui/text/instrument_words.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace wickbook::cli {

namespace {

/// Every digit: these numbers are computed with further.
JsonValue exactNumber(const std::optional<double>& value) {
    return value ? JsonValue(*value) : JsonValue();
}

JsonValue estimateJson(const std::optional<comparison::Estimate>& estimate) {
    if (!estimate) {
        return nullptr;
    }
    return {{"value", estimate->value},
            {"standard_error", estimate->standardError},
            {"lower95", estimate->lower95},
            {"upper95", estimate->upper95}};
}

JsonValue lineJson(const std::optional<comparison::LineFit>& fit) {
    if (!fit) {
        return nullptr;
    }
    return {{"n", fit->n},
            {"slope", estimateJson(fit->slope)},
            {"intercept", estimateJson(fit->intercept)},
            {"residual_deviation", fit->residualDeviation}};
}

JsonValue coefficientJson(const comparison::FittedCoefficient& fitted) {
    JsonValue reasons = JsonValue::array();
    for (const comparison::ThinEvidence reason : fitted.refused) {
        reasons.push_back(comparison::thinEvidenceName(reason));
    }
    return {
        {"pairs", fitted.given},
        {"depression_under_3", fitted.smallDepression},
        {"n", fitted.fit ? fitted.fit->n : 0},
        {"per_kelvin", fitted.fit ? estimateJson(fitted.fit->slope) : JsonValue()},
        {"residual_deviation_hpa", fitted.fit ? JsonValue(fitted.fit->residualDeviation) : JsonValue()},
        {"from_reference", fitted.fit ? JsonValue(fitted.fromReference) : JsonValue()},
        {"relative_standard_uncertainty", fitted.fit ? JsonValue(fitted.relativeUncertainty) : JsonValue()},
        {"residual_on_depression", lineJson(fitted.residualOnDepression)},
        {"residual_on_wind", lineJson(fitted.residualOnWind)},
        {"usable", fitted.usable()},
        {"refused", reasons}};
}

JsonValue spreadJson(const comparison::BesideReference& spread) {
    JsonValue bands = JsonValue::array();
    for (const comparison::BandSpread& band : spread.bands) {
        bands.push_back({{"from_rh", band.from},
                         {"to_rh", band.to},
                         {"n", band.n},
                         {"bias", exactNumber(band.bias)},
                         {"deviation", exactNumber(band.deviation)}});
    }
    return {{"n", spread.differences.size()},
            {"without_humidity", spread.withoutHumidity},
            {"bias", estimateJson(spread.bias)},
            {"deviation", exactNumber(spread.deviation)},
            {"bands", bands},
            {"on_depression", lineJson(spread.onDepression)},
            {"on_wind", lineJson(spread.onWind)}};
}

void writeLines(Output& output, const QStringList& lines) {
    for (const QString& line : lines) {
        output.text(line.toStdString() + "\n");
    }
}

} // namespace

Outcome<void> writeBesideReference(Format format, const comparison::BesideReference& spread,
                                   const comparison::FittedCoefficient& water,
                                   const comparison::FittedCoefficient& ice,
                                   const std::vector<record::Instant>& moments) {
    auto output = Output::open("-");
    if (!output) {
        return tl::unexpected(output.error());
    }
    if (format == Format::Json) {
        output->json({{"spread", spreadJson(spread)},
                      {"coefficient", {{"water", coefficientJson(water)}, {"ice", coefficientJson(ice)}}}});
    } else if (format == Format::Csv) {
        output->csv({"time", "rh", "reference_rh", "difference", "depression", "wind"});
        for (const comparison::HumidityDifference& each : spread.differences) {
            output->csv(
                {each.index < moments.size() ? record::instantText(moments[each.index]) : std::string{},
                 fmt::format("{:.6f}", each.own), fmt::format("{:.6f}", each.reference),
                 fmt::format("{:.6f}", each.difference()), fmt::format("{:.6f}", each.depression),
                 each.windBeaufort ? std::to_string(*each.windBeaufort) : std::string{}});
        }
    } else {
        const QLocale locale = QLocale::c();
        writeLines(*output, ui::besideReferenceWords(locale, spread));
        writeLines(*output, ui::fittedCoefficientWords(locale, water));
        writeLines(*output, ui::fittedCoefficientWords(locale, ice));
    }
    return output->finish();
}

Outcome<void> writeOverlap(Format format, const comparison::Overlap& overlap) {
    auto output = Output::open("-");
    if (!output) {
        return tl::unexpected(output.error());
    }
    if (format == Format::Text) {
        writeLines(*output, ui::overlapWords(QLocale::c(), overlap));
    } else {
        output->json({{"n", overlap.n},
                      {"months", overlap.months},
                      {"verdict", comparison::joinVerdictName(overlap.verdict)},
                      {"dry", estimateJson(overlap.dry)},
                      {"wet", estimateJson(overlap.wet)},
                      {"rh", estimateJson(overlap.humidity)},
                      {"dew_point", estimateJson(overlap.dewPoint)},
                      {"rh_deviation", exactNumber(overlap.humidityDeviation)}});
    }
    return output->finish();
}

} // namespace wickbook::cli
