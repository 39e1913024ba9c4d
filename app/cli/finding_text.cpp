// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/finding_text.h"

#include "core/units/number_text.h"

#include <QLocale>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <array>

namespace wickbook::cli {

namespace {

constexpr std::string_view kPressureAssumed = "pressure-assumed";
constexpr std::string_view kBadNumber = "bad-number";
constexpr std::string_view kBadWord = "bad-word";
constexpr std::string_view kMissingValue = "missing-value";
constexpr std::string_view kRaggedRow = "ragged-row";
constexpr std::string_view kUnreadable = "unreadable";

std::string wordOf(const checks::Finding& finding, std::string_view name) {
    return finding.word(name).value_or(std::string{});
}

int countOf(const checks::Finding& finding, std::string_view name) {
    return static_cast<int>(finding.number(name).value_or(0));
}

ui::FindingWords words(const char* title, const std::string& message, const char* remedy) {
    return {QString::fromUtf8(title), QString::fromStdString(message), QString::fromUtf8(remedy)};
}

} // namespace

checks::Finding pressureAssumed(units::Pressure pressure) {
    return {kPressureAssumed,
            checks::Severity::Note,
            checks::Root::Pressure,
            {{"pressure", pressure.hectopascals()}},
            {}};
}

checks::Finding badNumber(const std::string& column, const std::string& text) {
    return {kBadNumber,
            checks::Severity::Erroneous,
            checks::Root::None,
            {{"column", column}, {"text", text}},
            {}};
}

checks::Finding badWord(const std::string& column, const std::string& text) {
    return {
        kBadWord, checks::Severity::Erroneous, checks::Root::None, {{"column", column}, {"text", text}}, {}};
}

checks::Finding missingValue(const std::string& column) {
    return {kMissingValue, checks::Severity::Soft, checks::Root::None, {{"column", column}}, {}};
}

checks::Finding raggedRow(double cells, double columns) {
    return {kRaggedRow,
            checks::Severity::Erroneous,
            checks::Root::None,
            {{"cells", cells}, {"columns", columns}},
            {}};
}

checks::Finding unreadableRow() {
    return {kUnreadable, checks::Severity::Erroneous, checks::Root::None, {}, {}};
}

ui::FindingWords wordsFor(const checks::Finding& finding, units::TemperatureUnit unit) {
    if (finding.code == kPressureAssumed) {
        return words(
            "Pressure assumed",
            fmt::format("No pressure was given, so the mean at sea level, {} hPa, was taken; 500 m up that "
                        "costs about 1 % of relative humidity.",
                        units::exactText(finding.number("pressure").value_or(0))),
            "Give --pressure, or --elevation for the standard atmosphere.");
    }
    if (finding.code == kBadNumber) {
        return words("Not a number",
                     fmt::format("\"{}\" under {} is not a number.", wordOf(finding, "text"),
                                 wordOf(finding, "column")),
                     "Correct the cell and derive the file again.");
    }
    if (finding.code == kBadWord) {
        return words("Unknown word",
                     fmt::format("\"{}\" is none of the words that {} can hold.", wordOf(finding, "text"),
                                 wordOf(finding, "column")),
                     "Correct the cell and derive the file again.");
    }
    if (finding.code == kMissingValue) {
        return words("Value missing",
                     fmt::format("{} is empty, so nothing could be derived.", wordOf(finding, "column")),
                     "Fill the cell in if the value is known; a reading without it stays as it is.");
    }
    if (finding.code == kRaggedRow) {
        return words("Row of another length",
                     fmt::format("The row has {} cells where the header has {}.", countOf(finding, "cells"),
                                 countOf(finding, "columns")),
                     "Look for a separator too many or too few, such as a decimal comma without quotes.");
    }
    if (finding.code == kUnreadable) {
        return words("Row can't be read", "The row is not a sound CSV record.",
                     "Look for a quote that is opened and not closed.");
    }
    return ui::findingWords(QLocale::c(), finding, unit);
}

JsonValue causesJson(const checks::Finding& finding, units::TemperatureUnit unit) {
    JsonValue causes = JsonValue::array();
    for (const checks::LikelyCause& cause : finding.causes) {
        causes.push_back({{"code", cause.code},
                          {"message", ui::causeWords(QLocale::c(), cause, unit).toStdString()},
                          {"dry_c", jsonNumber(cause.dryCelsius)},
                          {"wet_c", jsonNumber(cause.wetCelsius)},
                          {"wick", jsonText(record::wickName(cause.wick))},
                          {"relative_humidity_pct", jsonNumber(cause.humidityPercent)},
                          {"dew_point_c", jsonNumber(cause.dewPointCelsius)},
                          {"weight", jsonNumber(cause.weight)}});
    }
    return causes;
}

} // namespace wickbook::cli
