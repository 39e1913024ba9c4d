// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

/// Numbers for data (CSV, JSON, the command line): '.' as the mark, no groups, no locale.
/// What people read is printed in ui/text in their own locale.

namespace wickbook::units {

/// Fixed decimals, never "-0.00". Pre: value is finite.
std::string fixedText(double value, int decimals);
/// The same behind what stands there already.
void appendFixed(std::string& to, double value, int decimals);

/// The shortest plain decimal text that reads back as the same double (6.66e-4 is 0.000666, never an
/// exponent): for coefficients and pressures that a person gave. Pre: value is finite.
std::string exactText(double value);
void appendExact(std::string& to, double value);

/// Decimals of a derived value in data columns.
inline constexpr int kDataDecimals = 6;
/// As many decimals for a derived value in data columns; empty text for a missing one.
std::string dataText(const std::optional<double>& value);

} // namespace wickbook::units
