// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/book_access.h"
#include "app/cli/console.h"
#include "app/cli/headless.h"
#include "app/cli/options.h"
#include "app/cli/output.h"
#include "app/cli/paper_options.h"
#include "app/cli/verb_table.h"
#include "ui/print/month_form.h"

#include <fmt/format.h>

#include <memory>

namespace wickbook::cli {

namespace {

struct FormOptions {
    std::string book, month, out;
    PaperOptions pages;
};

Outcome<ExitCode> tableToFill(const report::BlankMonth& blank, const std::string& out) {
    auto output = Output::open(out);
    if (!output) {
        return tl::unexpected(output.error());
    }
    output->csv(report::blankMonthHeader());
    for (const auto& row : report::blankMonthRows(blank)) {
        output->csv(row);
    }
    if (auto finished = output->finish(); !finished) {
        return tl::unexpected(finished.error());
    }
    return ExitCode::Done;
}

Outcome<ExitCode> form(const FormOptions& options) {
    const auto month = monthFrom(options.month);
    if (!month) {
        return tl::unexpected(month.error());
    }
    const auto made = options.pages.read();
    if (!made) {
        return tl::unexpected(made.error());
    }
    const auto opened = openToRead(options.book);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    report::BlankMonth blank = report::blankMonth(opened->station, *month);
    if (!options.out.ends_with(".pdf")) {
        return tableToFill(blank, options.out);
    }
    const auto lines = blank.lines.size();
    const HeadlessApplication application(made->locale);
    if (const auto written =
            writeSheet(ui::monthFormSheet(std::move(blank), made->locale, made->paper), options.out);
        !written) {
        return tl::unexpected(written.error());
    }
    say(fmt::format("A form of {} lines is written to {}.", lines, options.out));
    return ExitCode::Done;
}

} // namespace

VerbAction declareForm(OptionList command) {
    auto options = std::make_shared<FormOptions>();
    command.needed("--book", options->book, "The book, for its hours and thermometers");
    command.needed("--month", options->month, "The month, 2025-03");
    command.needed("--out", options->out,
                   "A file ending in .pdf, else CSV to fill in; - for standard output");
    options->pages.declare(command);
    return [options] { return form(*options); };
}

} // namespace wickbook::cli
