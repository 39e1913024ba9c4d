// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/book_access.h"
#include "app/cli/club_report.h"
#include "app/cli/console.h"
#include "app/cli/headless.h"
#include "app/cli/options.h"
#include "app/cli/output.h"
#include "app/cli/paper_options.h"
#include "app/cli/verb_table.h"
#include "core/desk/own_years.h"
#include "ui/print/month_files.h"

#include <fmt/format.h>

#include <memory>

namespace wickbook::cli {

namespace {

struct ReportOptions {
    std::string book, month, out;
    std::vector<std::string> club;
    bool strict = false;
    PaperOptions pages;
};

Outcome<ExitCode> report(const ReportOptions& options) {
    if (!options.club.empty()) {
        if (!options.book.empty() || !options.month.empty()) {
            return refuse("--club is of members' files: leave --book and --month out.");
        }
        return clubReport(options.club, options.out, options.pages, options.strict);
    }
    if (options.book.empty() || options.month.empty()) {
        return refuse(
            "Name the book with --book and the month with --month, or members' months with --club.");
    }
    const auto month = monthFrom(options.month);
    if (!month) {
        return tl::unexpected(month.error());
    }
    const auto made = options.pages.read();
    if (!made) {
        return tl::unexpected(made.error());
    }
    if (options.out == "-") {
        return refuse("A report is several files: name a folder with --out.");
    }
    const auto opened = openToRead(options.book);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    const auto model = desk::stationModel(opened->book, opened->station);
    if (!model) {
        return refuse(model.error());
    }
    const record::SystemClock clock;
    auto monthly = desk::monthReport(opened->book, opened->station, *month, clock.now(), {}, &*model);
    if (!monthly) {
        return refuse(monthly.error());
    }
    const auto ownYears = desk::ownYears(opened->book, opened->station, *month, clock.now(), &*model);
    if (!ownYears) {
        return refuse(ownYears.error());
    }
    monthly->ownYears = *ownYears;
    const HeadlessApplication application(made->locale);
    const auto written =
        ui::writeMonthFiles(*monthly, {QString::fromStdString(options.out), made->paper, made->locale});
    if (!written) {
        return refuse(written.error().sentence.toStdString(), ExitCode::BookTrouble);
    }
    auto output = Output::open("-");
    for (const QString& path : *written) {
        output->text(path.toStdString() + "\n");
    }
    if (auto finished = output->finish(); !finished) {
        return tl::unexpected(finished.error());
    }
    if (monthly->readings.empty()) {
        say(fmt::format("There is no reading in {}; the report says so.", options.month));
    } else {
        say(fmt::format("{}: {} {}, {} open {}.", options.month, monthly->readings.size(),
                        monthly->readings.size() == 1 ? "reading" : "readings", monthly->openQueries,
                        monthly->openQueries == 1 ? "query" : "queries"));
    }
    return ExitCode::Done;
}

} // namespace

VerbAction declareReport(OptionList command) {
    auto options = std::make_shared<ReportOptions>();
    command.text("--book", options->book, "The book");
    command.text("--month", options->month, "The month, 2025-03");
    command.many("--club", options->club,
                 "A member's folder or month.csv, once for each: all side by side in --out, a CSV or PDF");
    command.flag("--strict", options->strict, "With --club: exit code 1 where a member's file is left out");
    command.needed(
        "--out", options->out,
        "Folder for month.csv, month.csv-metadata.json, summary.csv, report.pdf, chart.png, chart.svg "
        "and paragraph.txt; made if it is not there");
    options->pages.declare(command);
    return [options] { return report(*options); };
}

} // namespace wickbook::cli
