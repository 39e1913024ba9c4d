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

std::vector<std::string> summaryHeader();
/// Rows by hour of day, then "all". Each as long as the header.
std::vector<std::vector<std::string>> summaryRows(const climate::MonthSummary& summary);

} // namespace wickbook::report
