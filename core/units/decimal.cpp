// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/decimal.h"

#include "core/units/blanks.h"

#include <array>
#include <cmath>

namespace wickbook::units {

namespace {

constexpr int kMaxDecimals = 9;
constexpr int kMaxDigits = 15;

constexpr std::array<double, kMaxDecimals + 1> kPowersOfTen{1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9};

constexpr std::string_view kUnicodeMinus = "\u2212";

} // namespace

double Decimal::toDouble() const {
    return static_cast<double>(mantissa) / kPowersOfTen.at(static_cast<std::size_t>(decimals));
}

std::string Decimal::toText() const {
    const bool negative = mantissa < 0;
    std::string digits = std::to_string(negative ? -mantissa : mantissa);
    const auto places = static_cast<std::size_t>(decimals);
    if (digits.size() <= places) {
        digits.insert(0, places + 1 - digits.size(), '0');
    }
    if (places > 0) {
        digits.insert(digits.size() - places, 1, '.');
    }
    return negative ? "-" + digits : digits;
}

Decimal roundedDecimal(double value, int decimals) {
    return {std::llround(value * kPowersOfTen.at(static_cast<std::size_t>(decimals))), decimals};
}

tl::expected<Decimal, DecimalError> parseDecimal(std::string_view text, DecimalMark mark) {
    text = withoutBlanks(text);
    if (text.empty()) {
        return tl::unexpected(DecimalError::Empty);
    }
    bool negative = false;
    if (text.starts_with(kUnicodeMinus)) {
        negative = true;
        text.remove_prefix(kUnicodeMinus.size());
    } else if (text.front() == '-' || text.front() == '+') {
        negative = text.front() == '-';
        text.remove_prefix(1);
    }

    Decimal result;
    int digits = 0;
    bool seenMark = false;
    bool seenDigit = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (c >= '0' && c <= '9') {
            seenDigit = true;
            if (digits > 0 || c != '0') {
                ++digits;
            }
            if (digits > kMaxDigits || (seenMark && result.decimals == kMaxDecimals)) {
                return tl::unexpected(DecimalError::TooLong);
            }
            result.mantissa = result.mantissa * 10 + (c - '0');
            if (seenMark) {
                ++result.decimals;
            }
            continue;
        }
        const bool isPoint = c == '.' && mark != DecimalMark::Comma;
        const bool isComma = c == ',' && mark != DecimalMark::Point;
        if (isPoint || isComma) {
            if (seenMark) {
                return tl::unexpected(DecimalError::GroupedDigits);
            }
            seenMark = true;
            continue;
        }
        const bool groupLike = c == ' ' || c == '\'' || c == '.' || c == ',' ||
                               text.substr(i).starts_with("\u00A0") || text.substr(i).starts_with("\u202F");
        return tl::unexpected(seenDigit && groupLike ? DecimalError::GroupedDigits
                                                     : DecimalError::NotANumber);
    }
    if (!seenDigit) {
        return tl::unexpected(DecimalError::NotANumber);
    }
    if (negative) {
        // "-0.0" has no negative zero to keep: the mantissa is an integer.
        result.mantissa = -result.mantissa;
    }
    return result;
}

} // namespace wickbook::units
