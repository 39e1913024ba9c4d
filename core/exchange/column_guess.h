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

/// Names for the columns of a file without a header: "1", "2", …
std::vector<std::string> numberedHeader(std::size_t count);

/// Whether these are the columns of our own export: time_utc, utc_offset, dry_read, wet_read, missing_reason
/// and read_back among them. Elsewhere "zone" and "utc_offset" may mean anything and are left aside.
bool isExportHeader(const std::vector<std::string>& header);

bool carries(const std::vector<GuessedColumn>& columns, ImportField field);
/// A time, or a date with an hour or a clock time.
bool carriesTime(const std::vector<GuessedColumn>& columns);
bool carriesBulb(const std::vector<GuessedColumn>& columns);

/// Takes columns that no header named for what their values look like: dates, times, hours of the day, water
/// and ice, pressures; two columns of numbers that stand beside each other and where the first is the higher,
/// for the bulbs, where neither is known. Never takes a field that a header has named.
void guessByValues(std::vector<GuessedColumn>& columns, const std::vector<std::vector<std::string>>& rows);

/// The proposal for a person to look at: by header, then by values; may lack a time or a bulb.
std::vector<GuessedColumn> proposedColumns(const std::vector<std::string>& header,
                                           const std::vector<std::vector<std::string>>& rows);

/// Errors: UnknownMappedColumn, FieldTwice, NoTimeColumn, NoDryOrWetColumn.
tl::expected<std::vector<GuessedColumn>, ImportError> guessColumns(const std::vector<std::string>& header,
                                                                   const ImportOptions& options);

} // namespace wickbook::exchange
