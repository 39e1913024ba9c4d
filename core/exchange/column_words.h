// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"

#include <span>
#include <string>
#include <string_view>

/// The names that people and programs put at the head of a register's columns, in English, German and French,
/// as one table. Common practice, no source.

namespace wickbook::exchange {

struct FieldWord {
    std::string_view name; ///< as plainHeader gives it
    ImportField field;
};

/// Of two columns for one field the name that stands first in the table has it.
std::span<const FieldWord> columnWords();

/// "Dry bulb [°C]" → "dry_bulb_c", "Thermomètre mouillé" → "thermometre_mouille": letters and digits, accents
/// taken off, one '_' between words.
std::string plainHeader(std::string_view header);

} // namespace wickbook::exchange
