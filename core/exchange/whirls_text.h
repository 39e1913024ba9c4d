// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/observation.h"

#include <tl/expected.hpp>

#include <string>
#include <string_view>
#include <vector>

/// The whirls of one reading in one cell: "wet 14.2 c dry 16.0 c; wet 14.1 c dry 16.0 c", in the order they
/// were made, each number with its unit (c or f). A bulb not read is left out, a whirl without either is
/// "empty". With words, since a spreadsheet makes a date of 14/16 and a sum of -0.5/0.1.

namespace wickbook::exchange {

std::string whirlsText(const std::vector<record::Repeat>& whirls);

/// Empty text: no whirls. The error is the part that can't be read.
tl::expected<std::vector<record::Repeat>, std::string> parseWhirls(std::string_view text,
                                                                   units::DecimalMark mark);

/// "c", "f"; also "°C", "deg F", "celsius" in any case.
std::optional<units::TemperatureUnit> temperatureUnitFromText(std::string_view text);
std::string_view temperatureUnitText(units::TemperatureUnit unit);

} // namespace wickbook::exchange
