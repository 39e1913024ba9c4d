// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/output.h"
#include "core/checks/finding.h"
#include "core/units/pressure.h"
#include "core/units/read_temperature.h"
#include "ui/text/finding_words.h"

#include <string>

/// Findings on the command line: those of the checks in the words of ui/text, and the few that only a file
/// of pairs or an assumption of derive can have.

namespace wickbook::cli {

/// derive was given neither pressure nor elevation.
checks::Finding pressureAssumed(units::Pressure pressure);
/// A cell of a file of pairs that can't be read: column, and what stood there.
checks::Finding badNumber(const std::string& column, const std::string& text);
checks::Finding badWord(const std::string& column, const std::string& text);
checks::Finding missingValue(const std::string& column);
/// A row with more or fewer cells than the header.
checks::Finding raggedRow(double cells, double columns);
/// A row that is no CSV record, such as one with an open quote.
checks::Finding unreadableRow();

/// English words with a point as decimal mark, as scripts and logs expect them.
ui::FindingWords wordsFor(const checks::Finding& finding,
                          units::TemperatureUnit unit = units::TemperatureUnit::Celsius);

/// {code, message, dry_c, wet_c, wick, relative_humidity_pct, dew_point_c, weight} for each cause.
JsonValue causesJson(const checks::Finding& finding, units::TemperatureUnit unit);

} // namespace wickbook::cli
