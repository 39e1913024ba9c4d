// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/climate/month_summary.h"

#include <string>
#include <vector>

/// summary.csv as cells: one row per observing hour and a last one "all". The order of columns is a promise
/// to whoever reads the file. Numbers without locale, six decimals; missing is an empty cell. Times of
/// extremes are the station's date and nominal hour, "2025-03-04T09:00": the hour it is kept under, not the
/// minute it was read.

namespace wickbook::report {

/// The columns of days above and below carry the thresholds in their names, "days_at_or_above_95".
std::vector<std::string> summaryHeader(const climate::MonthOptions& options = {});
/// Rows by hour of day, then "all". Each as long as the header.
std::vector<std::vector<std::string>> summaryRows(const climate::MonthSummary& summary);

/// One cell that differs between two such tables.
struct NumberChange {
    std::string hour;   ///< "09:00" or "all"
    std::string column; ///< "mean_dew_point_c"
    std::string before, after;
    bool operator==(const NumberChange&) const = default;
};
/// What differs between two tables' rows, by hour and column name, whatever their order; a column or row that
/// one of them lacks is passed over. Cells that are numbers are compared as they would be printed, to two
/// decimals.
std::vector<NumberChange> numberChanges(const std::vector<std::vector<std::string>>& before,
                                        const std::vector<std::vector<std::string>>& after);
/// Header and rows.
std::vector<std::vector<std::string>> summaryTable(const climate::MonthSummary& summary,
                                                   const climate::MonthOptions& options);

} // namespace wickbook::report
