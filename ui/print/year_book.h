// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/month_report.h"
#include "ui/print/humidity_table_sheet.h"
#include "ui/print/paper_sheet.h"

#include <QLocale>

#include <optional>
#include <type_traits>

/// A year of the station bound: cover, contents, the year in numbers and charts, twelve months, and the hut's
/// own humidity table. Months without a reading, and those still to come, have their page and say so.

namespace wickbook::ui {

struct YearBook {
    date::year year{};
    std::vector<report::MonthReport> months; ///< twelve, January first
    std::optional<HumidityTableSheet> table; ///< none where the station has no coefficient
};

/// The twelve months as they are had from monthly (desk::Result of a month's report), and the hut's table at
/// the year's end; the first month that can't be had ends it.
template <typename Monthly>
auto gatherYearBook(const record::StationRecord& station, date::year year, Monthly monthly)
    -> tl::expected<YearBook, typename std::invoke_result_t<Monthly, date::year_month>::error_type> {
    YearBook book{year, {}, std::nullopt};
    for (unsigned month = 1; month <= 12; ++month) {
        auto report = monthly(year / date::month{month});
        if (!report) {
            return tl::unexpected(report.error());
        }
        book.months.push_back(std::move(*report));
    }
    book.table = hutTableOf(
        station, record::Instant{record::StationDate{year / date::December / 31}.time_since_epoch()});
    return book;
}

PaperSheet yearBookSheet(YearBook book, const QLocale& locale, Paper paper);

} // namespace wickbook::ui
