// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/book_access.h"
#include "app/cli/console.h"
#include "app/cli/headless.h"
#include "app/cli/paper_options.h"
#include "app/cli/verb_table.h"
#include "core/record/clock.h"
#include "ui/print/deputy_card.h"

#include <fmt/format.h>

#include <memory>

namespace wickbook::cli {

namespace {

struct CardOptions {
    std::string book, out;
    PaperOptions pages;
};

Outcome<ExitCode> card(const CardOptions& options) {
    const auto made = options.pages.read();
    if (!made) {
        return tl::unexpected(made.error());
    }
    if (!options.out.ends_with(".pdf")) {
        return refuse(fmt::format("--out {}: the card is a PDF; name a file ending in .pdf.", options.out));
    }
    const auto opened = openToRead(options.book);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    const record::SystemClock clock;
    const record::Instant now = clock.now();
    const auto today = date::floor<date::days>(opened->station.periodAt(now).zone.localAt(now));
    const HeadlessApplication application(made->locale);
    if (const auto written =
            writeSheet(ui::deputyCardSheet(opened->station, today, made->locale), options.out);
        !written) {
        return tl::unexpected(written.error());
    }
    say(fmt::format("The card is written to {}.", options.out));
    return ExitCode::Done;
}

} // namespace

VerbAction declareCard(OptionList command) {
    auto options = std::make_shared<CardOptions>();
    command.needed("--book", options->book, "The book, for its station");
    command.needed("--out", options->out, "A file ending in .pdf, A5");
    command.text("--language", options->pages.language, "Language of the card, such as de (English)");
    return [options] { return card(*options); };
}

} // namespace wickbook::cli
