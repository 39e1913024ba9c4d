// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/summary_table.h"

#include "core/units/number_text.h"

#include <fmt/format.h>

#include <charconv>
#include <cmath>
#include <functional>
#include <map>

namespace wickbook::report {

namespace {

using climate::Extreme;
using climate::HourSummary;

std::string valueText(const std::optional<Extreme>& extreme) {
    return extreme ? units::dataText(extreme->value) : std::string{};
}

std::string placeText(const std::optional<Extreme>& extreme) {
    return extreme ? record::dateText(extreme->at.date) + "T" + record::hourText(extreme->at.hour)
                   : std::string{};
}

struct Column {
    std::string name;
    std::function<std::string(const HourSummary&)> cell;
};

void addCounts(std::vector<Column>& columns) {
    columns.push_back({"hour", [](const HourSummary& s) {
                           return s.hour ? record::hourText(*s.hour) : std::string{"all"};
                       }});
    columns.push_back({"expected", [](const HourSummary& s) { return std::to_string(s.expected); }});
    columns.push_back({"n", [](const HourSummary& s) { return std::to_string(s.n); }});
    columns.push_back({"missing", [](const HourSummary& s) { return std::to_string(s.missing); }});
    columns.push_back({"set_aside", [](const HourSummary& s) { return std::to_string(s.setAside); }});
}

void addMeans(std::vector<Column>& columns) {
    const auto add = [&columns](std::string name, std::optional<double> HourSummary::*mean) {
        columns.push_back(
            {std::move(name), [mean](const HourSummary& s) { return units::dataText(s.*mean); }});
    };
    add("mean_dry_c", &HourSummary::meanDry);
    add("mean_wet_c", &HourSummary::meanWet);
    add("mean_vapour_pressure_hpa", &HourSummary::meanVapourPressure);
    add("dew_point_of_mean_vapour_pressure_c", &HourSummary::dewPointOfMeanVapourPressure);
    add("mean_dew_point_c", &HourSummary::meanDewPoint);
    add("mean_relative_humidity_pct", &HourSummary::meanHumidity);
}

void addExtremes(std::vector<Column>& columns) {
    const auto add = [&columns](const std::string& name, const std::string& unit,
                                std::optional<Extreme> HourSummary::*extreme) {
        columns.push_back(
            {name + "_" + unit, [extreme](const HourSummary& s) { return valueText(s.*extreme); }});
        columns.push_back({name + "_at", [extreme](const HourSummary& s) { return placeText(s.*extreme); }});
    };
    add("highest_relative_humidity", "pct", &HourSummary::highestHumidity);
    add("lowest_relative_humidity", "pct", &HourSummary::lowestHumidity);
    add("highest_dew_point", "c", &HourSummary::highestDewPoint);
    add("lowest_dew_point", "c", &HourSummary::lowestDewPoint);
}

std::string thresholdText(double percent) {
    return fmt::format("{:g}", percent);
}

std::vector<Column> columns(const climate::MonthOptions& options = {}) {
    std::vector<Column> all;
    addCounts(all);
    addMeans(all);
    addExtremes(all);
    all.push_back({"days_at_or_above_" + thresholdText(options.highThreshold),
                   [](const HourSummary& s) { return std::to_string(s.daysAtOrAbove95); }});
    all.push_back({"days_at_or_below_" + thresholdText(options.lowThreshold),
                   [](const HourSummary& s) { return std::to_string(s.daysAtOrBelow40); }});
    all.push_back({"mean_withheld_because",
                   [](const HourSummary& s) { return std::string{climate::withheldName(s.withheld)}; }});
    return all;
}

std::optional<double> numberOf(const std::string& cell) {
    double value = 0;
    const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), value);
    return error == std::errc{} && end == cell.data() + cell.size() ? std::optional{value} : std::nullopt;
}

/// Six decimals are kept and two are ever shown: what differs beyond them is arithmetic, not the month.
bool printsAlike(const std::string& a, const std::string& b) {
    const auto left = numberOf(a);
    const auto right = numberOf(b);
    return a == b || (left && right && std::abs(*left - *right) < 0.005);
}

std::vector<std::string> rowOf(const HourSummary& summary, const std::vector<Column>& all) {
    std::vector<std::string> row;
    row.reserve(all.size());
    for (const Column& column : all) {
        row.push_back(column.cell(summary));
    }
    return row;
}

} // namespace

std::vector<std::string> summaryHeader(const climate::MonthOptions& options) {
    std::vector<std::string> header;
    for (const Column& column : columns(options)) {
        header.push_back(column.name);
    }
    return header;
}

std::vector<std::vector<std::string>> summaryRows(const climate::MonthSummary& summary) {
    const std::vector<Column> all = columns();
    std::vector<std::vector<std::string>> rows;
    for (const HourSummary& hour : summary.hours) {
        rows.push_back(rowOf(hour, all));
    }
    rows.push_back(rowOf(summary.all, all));
    return rows;
}

std::vector<std::vector<std::string>> summaryTable(const climate::MonthSummary& summary,
                                                   const climate::MonthOptions& options) {
    auto table = summaryRows(summary);
    table.insert(table.begin(), summaryHeader(options));
    return table;
}

std::vector<NumberChange> numberChanges(const std::vector<std::vector<std::string>>& before,
                                        const std::vector<std::vector<std::string>>& after) {
    std::vector<NumberChange> changes;
    if (before.empty() || after.empty()) {
        return changes;
    }
    std::map<std::pair<std::string, std::string>, std::string> was;
    for (std::size_t row = 1; row < before.size(); ++row) {
        for (std::size_t at = 1; at < before[row].size() && at < before[0].size(); ++at) {
            was[{before[row][0], before[0][at]}] = before[row][at];
        }
    }
    for (std::size_t row = 1; row < after.size(); ++row) {
        for (std::size_t at = 1; at < after[row].size() && at < after[0].size(); ++at) {
            const auto found = was.find({after[row][0], after[0][at]});
            if (found != was.end() && !printsAlike(found->second, after[row][at])) {
                changes.push_back({after[row][0], after[0][at], found->second, after[row][at]});
            }
        }
    }
    return changes;
}

} // namespace wickbook::report
