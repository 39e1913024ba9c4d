// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/month_report.h"
#include "ui/print/humidity_table_sheet.h"
#include "ui/print/paper_sheet.h"

#include <QLocale>

#include <array>
#include <optional>

/// A year of the station bound: cover, contents, the year in numbers and charts, twelve months, and the hut's
/// own humidity table. Months without a reading, and those still to come, have their page and say so.

namespace wickbook::ui {

struct YearBook {
    date::year year{};
    std::vector<report::MonthReport> months; ///< twelve, January first
    std::optional<HumidityTableSheet> table; ///< none where the station has no coefficient
};

PaperSheet yearBookSheet(YearBook book, const QLocale& locale, Paper paper);

} // namespace wickbook::ui
