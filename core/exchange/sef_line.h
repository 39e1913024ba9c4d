// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/sef_reader.h"

/// One line of a SEF file as an observation of its variable. The rules stand in sef_reader.h.

namespace wickbook::exchange {

enum class SefUnit { Celsius, Fahrenheit, Kelvin, Hectopascal, Pascal, Kilopascal };
/// none: a unit that is not ours.
std::optional<SefUnit> sefUnit(std::string_view text, SefVariable variable);

/// The cells between tabs.
std::vector<std::string_view> tabCells(std::string_view line);

/// Errors: RaggedRow, NoTime, BadTime, BadNumber, BadWord; line and text are the caller's to fill.
tl::expected<SefRow, RejectedLine> readSefLine(std::string_view line, SefVariable variable, SefUnit unit);

} // namespace wickbook::exchange
