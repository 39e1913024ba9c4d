// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/class_pairs.h"

#include "app/cli/input.h"
#include "core/exchange/csv.h"
#include "core/record/observation.h"
#include "core/units/blanks.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace wickbook::cli {

namespace {

enum class PairColumn { Number, Dry, Wet, Wick };

Outcome<std::vector<PairColumn>> pairColumnsFrom(const std::string& name,
                                                 const std::vector<std::string>& header) {
    std::vector<PairColumn> columns;
    std::set<PairColumn> seen;
    for (const std::string& cell : header) {
        const std::string text{units::withoutBlanks(cell)};
        PairColumn column = PairColumn::Number;
        if (text == "number") {
            column = PairColumn::Number;
        } else if (text == "dry") {
            column = PairColumn::Dry;
        } else if (text == "wet") {
            column = PairColumn::Wet;
        } else if (text == "wick") {
            column = PairColumn::Wick;
        } else {
            return refuse(fmt::format("{}: the column {} is not for a class round; keep number, dry, wet and "
                                      "perhaps wick: pupils are numbers here, not names.",
                                      name, text.empty() ? "without a name" : text));
        }
        if (!seen.insert(column).second) {
            return refuse(fmt::format("{} has two columns {}; rename or remove one.", name, text));
        }
        columns.push_back(column);
    }
    if (!seen.contains(PairColumn::Dry) || !seen.contains(PairColumn::Wet)) {
        return refuse(fmt::format(
            "{} has no columns dry and wet; its first line must name number, dry and wet.", name));
    }
    return columns;
}

Outcome<void> take(comparison::PupilPair& pair, PairColumn column, const std::string& text,
                   const std::string& where, units::TemperatureUnit unit) {
    if (text.empty()) {
        return {};
    }
    if (column == PairColumn::Wick) {
        const auto wick = record::wickFromName(text);
        if (!wick) {
            return refuse(
                fmt::format("{}: the wick can be water, ice or empty; \"{}\" is none of them.", where, text));
        }
        pair.wick = *wick;
        return {};
    }
    const auto number = units::parseDecimal(text);
    if (!number) {
        return refuse(fmt::format("{}: \"{}\" is not a number; write it as 16.4.", where, text));
    }
    if (column == PairColumn::Number) {
        if (number->decimals != 0 || number->mantissa < 0 || number->mantissa > 99999) {
            return refuse(
                fmt::format("{}: the pupil's number {} is no whole number; write it like 7.", where, text));
        }
        pair.number = static_cast<int>(number->mantissa);
    } else if (column == PairColumn::Dry) {
        pair.dry = units::ReadTemperature{*number, unit};
    } else {
        pair.wet = units::ReadTemperature{*number, unit};
    }
    return {};
}

} // namespace

Outcome<std::vector<comparison::PupilPair>> readClassPairs(const std::string& path,
                                                           units::TemperatureUnit unit) {
    auto input = Input::open(path);
    if (!input) {
        return tl::unexpected(input.error());
    }
    exchange::CsvReader reader(input->stream());
    const auto first = reader.next();
    if (!first || !*first) {
        return refuse(fmt::format("{} is empty or no CSV; its first line must name number, dry and wet.",
                                  input->name()));
    }
    const auto columns = pairColumnsFrom(input->name(), (*first)->cells);
    if (!columns) {
        return tl::unexpected(columns.error());
    }
    std::vector<comparison::PupilPair> pairs;
    while (true) {
        const auto line = reader.next();
        if (!line) {
            return refuse(
                fmt::format("{}, line {}: this can't be read as CSV, look at its quotation marks: {}",
                            input->name(), line.error().line, line.error().text));
        }
        if (!*line) {
            break;
        }
        const std::string where = fmt::format("{}, line {}", input->name(), (*line)->line);
        if ((*line)->cells.size() != columns->size()) {
            return refuse(
                fmt::format("{}: {} cells where the first line names {}; look for a stray separator.", where,
                            (*line)->cells.size(), columns->size()));
        }
        comparison::PupilPair pair;
        pair.number = static_cast<int>(pairs.size()) + 1;
        for (std::size_t i = 0; i < columns->size(); ++i) {
            if (auto taken = take(pair, (*columns)[i], std::string{units::withoutBlanks((*line)->cells[i])},
                                  where, unit);
                !taken) {
                return tl::unexpected(taken.error());
            }
        }
        pairs.push_back(pair);
    }
    return pairs;
}

double coarsestStep(const std::vector<comparison::PupilPair>& pairs) {
    int decimals = pairs.empty() ? 1 : 0;
    bool halves = true;
    for (const comparison::PupilPair& pair : pairs) {
        for (const auto& bulb : {pair.dry, pair.wet}) {
            if (!bulb) {
                continue;
            }
            decimals = std::max(decimals, bulb->value.decimals);
            if (bulb->value.decimals == 1 && bulb->value.mantissa % 5 != 0) {
                halves = false;
            }
        }
    }
    if (decimals == 0) {
        return 1;
    }
    return decimals == 1 && halves && !pairs.empty() ? 0.5 : 0.1;
}

} // namespace wickbook::cli
