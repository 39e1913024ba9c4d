// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/console.h"
#include "app/cli/options.h"
#include "app/cli/verb_table.h"
#include "core/desk/sample_book.h"
#include "core/record/clock.h"

#include <fmt/format.h>

#include <memory>

namespace wickbook::cli {

namespace {

struct SampleOptions {
    std::string book, lastDay, years, seed;
};

Outcome<ExitCode> writeSample(const SampleOptions& options) {
    const auto clock = std::make_shared<record::SystemClock>();
    sample::SamplePlan plan = desk::samplePlanUntil(clock->now());
    if (!options.lastDay.empty()) {
        const auto lastDay = dateFrom("--last-day", options.lastDay);
        if (!lastDay) {
            return tl::unexpected(lastDay.error());
        }
        plan.lastDay = *lastDay;
        plan.until.reset();
    }
    if (!options.years.empty()) {
        const auto years = wholeNumberFrom("--years", options.years, 0, 200);
        if (!years) {
            return tl::unexpected(years.error());
        }
        plan.years = static_cast<int>(*years);
    }
    if (!options.seed.empty()) {
        const auto seed = wholeNumberFrom("--seed", options.seed, 0, 999'999'999'999);
        if (!seed) {
            return tl::unexpected(seed.error());
        }
        plan.seed = static_cast<std::uint64_t>(*seed);
    }

    ProgressLine progress("writing");
    const auto book =
        desk::createSampleBook(options.book, plan, clock, [&](std::int64_t done, std::int64_t total) {
            progress.show(done, total);
            return true;
        });
    if (!book) {
        return refuse(book.error());
    }
    say(fmt::format("The book of the invented sample station is written: {}.", options.book));
    return ExitCode::Done;
}

} // namespace

VerbAction declareSample(OptionList command) {
    auto options = std::make_shared<SampleOptions>();
    command.needed("--book", options->book, "File of the new book; nothing may be there yet");
    command.text("--years", options->years, "Whole years before the last five weeks (2)");
    command.text("--last-day", options->lastDay, "Date of the last readings (today, up to now)");
    command.text("--seed", options->seed, "Another seed is another station");
    return [options] { return writeSample(*options); };
}

} // namespace wickbook::cli
