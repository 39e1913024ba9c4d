// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/cell_text.h"

#include "core/units/blanks.h"

#include <algorithm>
#include <array>

namespace wickbook::exchange {

std::string_view trimmedCell(std::string_view text) {
    return units::withoutBlanks(text);
}

std::string loweredAscii(std::string_view text) {
    std::string result{text};
    std::transform(result.begin(), result.end(), result.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return result;
}

bool isMissingWord(std::string_view text) {
    static constexpr std::array<std::string_view, 11> kWords{"",   "-",   "\u2013", "\u2014", "*",  "m",
                                                             "na", "n/a", "null",   "none",   "nan"};
    const std::string low = loweredAscii(trimmedCell(text));
    return std::find(kWords.begin(), kWords.end(), low) != kWords.end();
}

bool isMissingNumber(const units::Decimal& number) {
    static constexpr std::array<double, 4> kNumbers{-9999, -999.9, -999, -99.9};
    const double value = number.toDouble();
    return std::any_of(kNumbers.begin(), kNumbers.end(),
                       [value](double missing) { return value == missing; });
}

} // namespace wickbook::exchange
