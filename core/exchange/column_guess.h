// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"

#include <string>
#include <string_view>
#include <vector>

/// What the columns of a file carry, by their headers: one table of names, case and punctuation set aside,
/// units ("_c", "[°F]", "(hPa)") taken off and understood. What was given by --map goes before any guess. A
/// column nobody can name is left aside, and so is one in a unit that is not ours (mmHg, knots): nothing is
/// converted by guess.

namespace wickbook::exchange {

/// One header by itself.
struct HeaderMeaning {
    std::optional<ImportField> field;
    int rank = 0; ///< place in the table: of two columns for one field the lower rank has it
    std::optional<units::TemperatureUnit> unit;
    bool utc = false;
};
HeaderMeaning headerMeaning(std::string_view header);

/// Errors: UnknownMappedColumn, FieldTwice, NoTimeColumn, NoDryOrWetColumn.
tl::expected<std::vector<GuessedColumn>, ImportError> guessColumns(const std::vector<std::string>& header,
                                                                   const ImportOptions& options);

} // namespace wickbook::exchange
