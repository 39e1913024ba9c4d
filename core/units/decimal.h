// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <tl/expected.hpp>

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

/// A number as a person wrote it. 16.0 is not 16: the tenth says how finely the scale
/// was read, so values read are kept as integer mantissa and count of decimals and come
/// back exactly as they were written. Doubles begin where computing begins.

namespace wickbook::units {

/// value = mantissa × 10^−decimals. Invariant: 0 ≤ decimals ≤ 9 and |mantissa| < 10^15,
/// so the conversion to double is the nearest double of the written number.
struct Decimal {
    std::int64_t mantissa = 0;
    int decimals = 0;

    [[nodiscard]] double toDouble() const;
    /// As written, with '.' and a plain hyphen: "16.0", "-0.6".
    [[nodiscard]] std::string toText() const;

    /// Same digits and same decimals: 16.0 and 16 differ.
    bool operator==(const Decimal&) const = default;
};

/// Nearest Decimal with the given number of decimals (0…9); for values that come from a computation
/// or a moved column in the drawing, never for what a person wrote.
Decimal roundedDecimal(double value, int decimals);

enum class DecimalError {
    Empty,         ///< nothing but blanks
    NotANumber,    ///< something that is neither digit, sign nor decimal mark
    GroupedDigits, ///< 1.234,5 or 1 234 or two marks: thousands groups are never guessed at
    TooLong        ///< more digits than a reading can have
};

/// Which decimal marks are accepted. A live entry accepts both; a file states one.
enum class DecimalMark { Either, Point, Comma };

/// Reads "16", "16.4", "16,4", "-0.6", "−0.6" (U+2212), "+3"; blanks around it are ignored.
/// Exponents, groups, inf and nan are refused, never partly read.
tl::expected<Decimal, DecimalError> parseDecimal(std::string_view text,
                                                 DecimalMark mark = DecimalMark::Either);

} // namespace wickbook::units
