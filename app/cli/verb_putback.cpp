// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/find_reading.h"
#include "app/cli/options.h"
#include "app/cli/register_changes.h"
#include "app/cli/verb_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <limits>
#include <memory>

namespace wickbook::cli {

namespace {

struct PutbackOptions {
    std::string book, at, revision;
    HowToChange how;
};

Outcome<ExitCode> putback(const PutbackOptions& options) {
    const auto number =
        wholeNumberFrom("--revision", options.revision, 1, std::numeric_limits<std::int32_t>::max());
    if (!number) {
        return tl::unexpected(number.error());
    }
    auto opened = options.how.dryRun ? openToRead(options.book) : openToWrite(options.book);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    const auto reading = findReading(*opened, options.at);
    if (!reading) {
        return tl::unexpected(reading.error());
    }
    const auto history = opened->book.history(reading->id());
    if (!history) {
        return refuse(history.error());
    }
    const auto wanted = std::find_if(history->begin(), history->end(), [&](const auto& revision) {
        return revision.stamp.sequence == *number;
    });
    if (wanted == history->end()) {
        std::string known;
        for (const record::ObservationRevision& revision : *history) {
            known += (known.empty() ? "" : ", ") + std::to_string(revision.stamp.sequence);
        }
        return refuse(
            fmt::format("The reading of {} has no revision {}; it has {}.", options.at, *number, known));
    }
    return storeChanges(*opened, {{*reading, wanted->values}}, options.how,
                        fmt::format("put back as revision {}", *number));
}

} // namespace

VerbAction declarePutback(OptionList command) {
    auto options = std::make_shared<PutbackOptions>();
    command.needed("--book", options->book, "The book");
    command.needed(
        "--at", options->at,
        "When it was read, or its observing hour: 2025-03-01T09:00 by the station's clock, or with Z "
        "or an offset; a withdrawn reading too");
    command.needed("--revision", options->revision,
                   "Number of the revision whose values are to stand again, as history gives it");
    options->how.declare(command, "Reason (put back as revision …)");
    return [options] { return putback(*options); };
}

} // namespace wickbook::cli
