// SPDX-License-Identifier: GPL-3.0-or-later
// What the values of a column look like. Only what leaves little doubt is taken: the person sees the proposal
// and the first rows together.
#include "core/exchange/cell_text.h"
#include "core/exchange/column_guess.h"
#include "core/exchange/date_guess.h"

#include <algorithm>

namespace wickbook::exchange {

namespace {

using Rows = std::vector<std::vector<std::string>>;

/// Fewer cells than this tell nothing.
constexpr std::size_t kFewestCells = 2;
/// A dry bulb may be misread below the wet one now and then.
constexpr double kShareDryAbove = 0.9;

/// The cells of a column that are not marks for missing.
std::vector<std::string_view> cellsOf(const Rows& rows, std::size_t column) {
    std::vector<std::string_view> cells;
    for (const auto& row : rows) {
        if (column < row.size() && !isMissingWord(row[column])) {
            cells.push_back(trimmedCell(row[column]));
        }
    }
    return cells;
}

bool isDate(std::string_view text) {
    return readDate(text, DateOrder::DayFirst) || readDate(text, DateOrder::MonthFirst);
}

bool isTime(std::string_view text) {
    if (record::parseTime(text)) {
        return true;
    }
    const auto split = splitDate(text);
    return split && isDate(split->date) && record::parseHour(split->rest);
}

/// "9:00", "09.00": a mark is needed, for 900 may be anything.
bool isClock(std::string_view text) {
    return text.find(':') != std::string_view::npos && record::parseHour(text).has_value();
}

bool isWick(std::string_view text) {
    const auto word = loweredAscii(text);
    return word == "w" || word == "i" || word == "water" || word == "ice";
}

std::optional<double> number(std::string_view text) {
    const auto value = units::parseDecimal(text);
    return value ? std::optional{value->toDouble()} : std::nullopt;
}

bool isStationPressure(std::string_view text) {
    const auto value = number(text);
    return value && *value >= 700 && *value <= 1085;
}

/// A number with a decimal mark that a thermometer can show, °C or °F.
bool looksLikeTemperature(std::string_view text) {
    const auto value = number(text);
    return value && *value >= -60 && *value <= 140;
}

template <typename Looks>
bool all(const std::vector<std::string_view>& cells, const Looks& looks) {
    return cells.size() >= kFewestCells && std::all_of(cells.begin(), cells.end(), looks);
}

/// Gives a field to the first free column that looks like it.
template <typename Looks>
void giveFirst(std::vector<GuessedColumn>& columns, const Rows& rows, ImportField field, const Looks& looks) {
    if (carries(columns, field)) {
        return;
    }
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (!columns[i].field && all(cellsOf(rows, i), looks)) {
            columns[i].field = field;
            return;
        }
    }
}

/// Share of rows where the first of two columns stands at or above the second; none where a row has no pair.
double shareAbove(const Rows& rows, std::size_t first, std::size_t second) {
    double pairs = 0;
    double above = 0;
    for (const auto& row : rows) {
        if (second >= row.size()) {
            continue;
        }
        const auto one = number(row[first]);
        const auto two = number(row[second]);
        if (one && two) {
            pairs += 1;
            above += *one >= *two ? 1 : 0;
        }
    }
    return pairs == 0 ? 0 : above / pairs;
}

void giveBulbs(std::vector<GuessedColumn>& columns, const Rows& rows) {
    if (carriesBulb(columns)) {
        return;
    }
    for (std::size_t i = 0; i + 1 < columns.size(); ++i) {
        if (!columns[i].field && !columns[i + 1].field && all(cellsOf(rows, i), looksLikeTemperature) &&
            all(cellsOf(rows, i + 1), looksLikeTemperature) && shareAbove(rows, i, i + 1) >= kShareDryAbove) {
            columns[i].field = ImportField::Dry;
            columns[i + 1].field = ImportField::Wet;
            return;
        }
    }
}

} // namespace

void guessByValues(std::vector<GuessedColumn>& columns, const Rows& rows) {
    if (!carriesTime(columns)) {
        if (!carries(columns, ImportField::Date)) {
            giveFirst(columns, rows, ImportField::Time, isTime);
        }
        if (!carriesTime(columns)) {
            giveFirst(columns, rows, ImportField::Date, isDate);
            if (!carries(columns, ImportField::Hour)) {
                giveFirst(columns, rows, ImportField::Clock, isClock);
            }
        }
    }
    giveFirst(columns, rows, ImportField::Wick, isWick);
    giveFirst(columns, rows, ImportField::Pressure, isStationPressure);
    giveBulbs(columns, rows);
}

} // namespace wickbook::exchange
