// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/spreadsheet_text.h"

#include "core/exchange/byte_decoder.h"
#include "core/units/decimal.h"

#include <algorithm>
#include <array>

namespace wickbook::exchange {

namespace {

/// Whether a spreadsheet might compute what begins like this.
bool beginsLikeFormula(std::string_view text) {
    static constexpr std::array<std::string_view, 11> kBeginnings{
        "=", "+", "-", "@", "\t", "\r", "\n", "\uFF1D", "\uFF0B", "\uFF0D", "\uFF20"};
    static constexpr std::array<std::string_view, 2> kBlanks{" ", "\u00A0"};
    for (bool more = true; more;) {
        more = false;
        for (const std::string_view blank : kBlanks) {
            if (text.starts_with(blank)) {
                text.remove_prefix(blank.size());
                more = true;
            }
        }
    }
    return std::any_of(kBeginnings.begin(), kBeginnings.end(),
                       [text](std::string_view beginning) { return text.starts_with(beginning); });
}

std::string_view behindApostrophes(std::string_view text) {
    return text.substr(std::min(text.find_first_not_of('\''), text.size()));
}

} // namespace

std::string spreadsheetText(std::string_view text) {
    static constexpr std::string_view kSymbolForNull = "\u2400";
    std::string cell = isUtf8(text) ? std::string(text) : latin1ToUtf8(text);
    for (auto at = cell.find('\0'); at != std::string::npos; at = cell.find('\0', at)) {
        cell.replace(at, 1, kSymbolForNull);
    }
    if (beginsLikeFormula(behindApostrophes(cell))) {
        cell.insert(0, 1, '\'');
    }
    return cell;
}

std::string spreadsheetCell(std::string_view text) {
    return units::parseDecimal(text, units::DecimalMark::Point) ? std::string(text) : spreadsheetText(text);
}

std::string fromSpreadsheetText(std::string_view cell) {
    if (cell.starts_with('\'') && beginsLikeFormula(behindApostrophes(cell))) {
        cell.remove_prefix(1);
    }
    return std::string(cell);
}

} // namespace wickbook::exchange
