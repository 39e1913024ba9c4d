// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/book_access.h"
#include "app/cli/console.h"
#include "app/cli/options.h"
#include "app/cli/verb_table.h"
#include "core/desk/checked_range.h"

#include <fmt/format.h>

#include <algorithm>
#include <memory>

namespace wickbook::cli {

namespace {

struct SignOptions {
    std::string book, month, by, note, why;
    bool takeBack = false;
};

Outcome<ExitCode> takeBack(OpenedBook& opened, const report::MonthReport& monthly,
                           const SignOptions& options) {
    if (!monthly.signedOff) {
        return refuse(
            fmt::format("{} has not been signed off, so there is nothing to take back.", options.month));
    }
    if (options.why.empty()) {
        return refuse("Say with --why for what reason the signing is taken back.");
    }
    record::StationFacts after = opened.station.facts();
    std::erase_if(after.signings, [&](const record::MonthSigning& signing) {
        return signing.id == monthly.signedOff->signing.id;
    });
    const std::string who = options.by.empty() ? accountName() : options.by;
    if (const auto stored = opened.book.reviseFacts(after, {who, options.why}); !stored) {
        return refuse(stored.error());
    }
    say(fmt::format("{} is no longer signed off; that it was stays in the book.", options.month));
    return ExitCode::Done;
}

Outcome<ExitCode> signOff(const SignOptions& options) {
    const auto month = monthFrom(options.month);
    if (!month) {
        return tl::unexpected(month.error());
    }
    auto opened = openToWrite(options.book);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    const record::SystemClock clock;
    const auto model = desk::stationModel(opened->book, opened->station);
    if (!model) {
        return refuse(model.error());
    }
    const auto monthly =
        desk::monthReport(opened->book, opened->station, *month, clock.now(), std::nullopt, &*model);
    if (!monthly) {
        return refuse(monthly.error());
    }
    if (options.takeBack) {
        return takeBack(*opened, *monthly, options);
    }
    if (options.by.empty()) {
        return refuse("Say with --by who signs the month off.");
    }
    if (monthly->summary.hoursToCome > 0) {
        return refuse(
            fmt::format("{} is not over: sign it off once its last hour has passed.", options.month));
    }
    record::StationFacts after = opened->station.facts();
    after.signings.push_back(report::signingOf(*monthly, clock.now(), options.by, options.note));
    if (const auto stored = opened->book.reviseFacts(after, {options.by, "signed off"}); !stored) {
        return refuse(stored.error());
    }
    say(fmt::format("{} is signed off by {}: {} of {} readings count, {} open {}.", options.month, options.by,
                    monthly->summary.all.n, monthly->summary.all.expected, monthly->openQueries,
                    monthly->openQueries == 1 ? "query" : "queries"));
    return ExitCode::Done;
}

} // namespace

VerbAction declareSign(OptionList command) {
    auto options = std::make_shared<SignOptions>();
    command.needed("--book", options->book, "The book");
    command.needed("--month", options->month, "The month, 2025-03");
    command.text("--by", options->by, "Initials or name of who signs");
    command.text("--note", options->note, "What is to be remembered with it");
    command.flag("--take-back", options->takeBack, "Take the latest signing back");
    command.text("--why", options->why, "Reason for taking it back");
    return [options] { return signOff(*options); };
}

} // namespace wickbook::cli
