// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/book_access.h"
#include "app/cli/console.h"
#include "app/cli/headless.h"
#include "app/cli/options.h"
#include "app/cli/paper_options.h"
#include "app/cli/verb_table.h"
#include "core/desk/own_years.h"
#include "ui/print/year_book.h"

#include <fmt/format.h>

#include <memory>

namespace wickbook::cli {

namespace {

struct YearBookOptions {
    std::string book, year, out;
    PaperOptions pages;
};

Outcome<ui::YearBook> gather(const OpenedBook& opened, date::year year) {
    const record::SystemClock clock;
    const auto model = desk::stationModel(opened.book, opened.station);
    if (!model) {
        return refuse(model.error());
    }
    const auto monthly = [&](date::year_month month) -> desk::Result<report::MonthReport> {
        auto report =
            desk::monthReport(opened.book, opened.station, month, clock.now(), std::nullopt, &*model);
        if (report) {
            auto others = desk::ownYears(opened.book, opened.station, month, clock.now(), &*model);
            if (!others) {
                return tl::unexpected(others.error());
            }
            report->ownYears = std::move(*others);
        }
        return report;
    };
    auto book = ui::gatherYearBook(opened.station, year, monthly);
    if (!book) {
        return refuse(book.error());
    }
    return std::move(*book);
}

Outcome<ExitCode> yearBook(const YearBookOptions& options) {
    const auto month = monthFrom(options.year + "-01");
    if (!month) {
        return refuse(fmt::format("--year {}: write a year with four figures, such as 2025.", options.year));
    }
    const auto made = options.pages.read();
    if (!made) {
        return tl::unexpected(made.error());
    }
    if (!options.out.ends_with(".pdf")) {
        return refuse(
            fmt::format("--out {}: the year book is a PDF; name a file ending in .pdf.", options.out));
    }
    const auto opened = openToRead(options.book);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    const HeadlessApplication application(made->locale);
    auto book = gather(*opened, month->year());
    if (!book) {
        return tl::unexpected(book.error());
    }
    std::size_t readings = 0;
    for (const report::MonthReport& monthly : book->months) {
        readings += monthly.readings.size();
    }
    if (const auto written =
            writeSheet(ui::yearBookSheet(std::move(*book), made->locale, made->paper), options.out);
        !written) {
        return tl::unexpected(written.error());
    }
    say(readings == 0 ? fmt::format("There is no reading in {}; the year book in {} says so.", options.year,
                                    options.out)
                      : fmt::format("The year book of {} readings is written to {}.", readings, options.out));
    return ExitCode::Done;
}

} // namespace

VerbAction declareYearBook(OptionList command) {
    auto options = std::make_shared<YearBookOptions>();
    command.needed("--book", options->book, "The book");
    command.needed("--year", options->year, "The year, 2025");
    command.needed("--out", options->out, "A file ending in .pdf");
    options->pages.declare(command);
    return [options] { return yearBook(*options); };
}

} // namespace wickbook::cli
