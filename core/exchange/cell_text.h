// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/decimal.h"

#include <string>
#include <string_view>

/// Small questions about the text of a cell.

namespace wickbook::exchange {

/// Without blanks, tabs and no-break spaces at both ends.
std::string_view trimmedCell(std::string_view text);

/// ASCII letters only, so that no locale has a say.
std::string loweredAscii(std::string_view text);

/// One of the words and marks that stand for "nothing" in registers and files: see import_plan.h. The
/// numbers that do the same are the number columns' question.
bool isMissingWord(std::string_view text);

/// -9999, -999.9, -999 and -99.9, which files put where nothing was read.
bool isMissingNumber(const units::Decimal& number);

} // namespace wickbook::exchange
