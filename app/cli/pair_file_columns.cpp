// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/pair_file_columns.h"

#include "core/exchange/csv.h"

#include <fmt/format.h>

#include <algorithm>

namespace wickbook::cli {

namespace {

/// Results that may stand in the file already: what is given there for a row.
constexpr std::array kGiven{PairField::Pressure, PairField::Wick, PairField::Exposure,
                            PairField::Coefficient};
constexpr std::array kAll{PairField::Dry,  PairField::Wet,      PairField::Pressure,
                          PairField::Wick, PairField::Exposure, PairField::Coefficient};

std::string_view withoutMargin(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    return first == std::string_view::npos ? std::string_view{}
                                           : text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

} // namespace

std::string_view pairFieldName(PairField field) {
    static constexpr std::array<std::string_view, kPairFields> kNames{
        "dry_c", "wet_c", "pressure_hpa", "wick", "exposure", "coefficient_per_k"};
    return kNames.at(static_cast<std::size_t>(field));
}

bool PairFileColumns::hasName(std::string_view name) const {
    return std::find(names_.begin(), names_.end(), name) != names_.end();
}

Outcome<PairFileColumns> PairFileColumns::from(std::vector<std::string> header) {
    PairFileColumns columns;
    columns.header_ = std::move(header);
    for (const std::string& name : columns.header_) {
        columns.names_.emplace_back(withoutMargin(name));
    }
    for (const PairField field : kAll) {
        const auto found = std::find(columns.names_.begin(), columns.names_.end(), pairFieldName(field));
        if (found != columns.names_.end()) {
            columns.places_.at(static_cast<std::size_t>(field)) =
                static_cast<std::size_t>(found - columns.names_.begin());
        }
    }
    for (const PairField needed : {PairField::Dry, PairField::Wet}) {
        if (!columns.has(needed)) {
            return refuse(
                fmt::format("The file has no column {}; its first line must name the columns, among them "
                            "dry_c and wet_c.",
                            pairFieldName(needed)));
        }
    }
    auto results = resultHeader();
    std::erase_if(results, [](const std::string& name) {
        return std::any_of(kGiven.begin(), kGiven.end(),
                           [&](PairField field) { return pairFieldName(field) == name; });
    });
    for (const std::string& name : results) {
        if (columns.hasName(name)) {
            return refuse(
                fmt::format("The file has a column {} already, which is a name of the results; rename or "
                            "remove it and try again.",
                            name));
        }
    }
    for (const PairField field : kAll) {
        const std::string_view name = pairFieldName(field);
        if (std::count(columns.names_.begin(), columns.names_.end(), name) > 1) {
            return refuse(
                fmt::format("The file has two columns {}; rename or remove one and try again.", name));
        }
    }
    columns.over_.resize(columns.count(), nullptr);
    for (const ResultColumn& result : resultColumns()) {
        const auto found = std::find(columns.names_.begin(), columns.names_.end(), result.name);
        if (found == columns.names_.end()) {
            columns.behind_.push_back(&result);
        } else {
            columns.over_[static_cast<std::size_t>(found - columns.names_.begin())] = &result;
        }
    }
    return columns;
}

std::string_view PairFileColumns::cell(const std::vector<std::string>& row, PairField field) const {
    const auto place = at(field);
    return place && *place < row.size() ? withoutMargin(row[*place]) : std::string_view{};
}

std::vector<std::string> PairFileColumns::outHeader() const {
    std::vector<std::string> header = header_;
    for (const ResultColumn* column : behind_) {
        header.emplace_back(column->name);
    }
    header.emplace_back(kFindingsColumn);
    return header;
}

void PairFileColumns::appendOutRow(std::string& line, const std::vector<std::string>& row,
                                   const PairResult& result) const {
    for (std::size_t i = 0; i < count(); ++i) {
        if (i > 0) {
            line.push_back(',');
        }
        // A cell that could not be used stays as it stood: the finding speaks of it.
        const std::size_t before = line.size();
        if (over_[i] != nullptr) {
            appendCellText(line, over_[i]->cell(result));
        }
        if (line.size() == before && i < row.size()) {
            exchange::appendCsvCell(line, row[i]);
        }
    }
    for (const ResultColumn* column : behind_) {
        line.push_back(',');
        appendCellText(line, column->cell(result)); // numbers and words of ours need no quotes
    }
    line.push_back(',');
    for (const checks::Finding& finding : result.findings) {
        line += line.back() == ',' ? "" : ";";
        line += finding.code;
    }
}

} // namespace wickbook::cli
