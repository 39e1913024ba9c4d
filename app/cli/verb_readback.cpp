// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/register_changes.h"
#include "app/cli/verb_table.h"

#include <memory>

namespace wickbook::cli {

namespace {

struct ReadbackOptions {
    WhichReadings which;
    HowToChange how;
    std::string paperBook, paperPage;
    bool off = false;
    bool placeOnly = false;
};

Outcome<ExitCode> readback(const ReadbackOptions& options) {
    const bool placed = !options.paperBook.empty() || !options.paperPage.empty();
    if (options.placeOnly && (!placed || options.off)) {
        return refuse(
            "--place-only names a place and leaves the tick: give --paper-book or --paper-page, and "
            "no --off.");
    }
    auto opened = openFor(options.which, options.how);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    const auto readings = readingsMeant(*opened, options.which);
    if (!readings) {
        return tl::unexpected(readings.error());
    }
    std::vector<ReadingChange> changes;
    for (const record::StoredObservation& before : *readings) {
        changes.push_back({before, before.values});
        record::Observation& after = changes.back().after;
        if (placed) {
            after.paper = record::PaperPlace{options.paperBook, options.paperPage};
        }
        if (!options.placeOnly) {
            after.readBack = !options.off;
        }
    }
    const char* usual = options.off         ? "not taken for read back any more"
                        : options.placeOnly ? "named its page on paper"
                                            : "read back against the paper";
    return storeChanges(*opened, std::move(changes), options.how, usual);
}

} // namespace

VerbAction declareReadback(OptionList command) {
    auto options = std::make_shared<ReadbackOptions>();
    options->which.declare(command, true);
    command.text("--paper-book", options->paperBook, "The paper register they stand in");
    command.text("--paper-page", options->paperPage, "The page of it");
    command.flag("--off", options->off, "Take the tick off again");
    command.flag("--place-only", options->placeOnly, "Only say where they stand on paper, without the tick");
    options->how.declare(command, "Reason (read back against the paper)");
    return [options] { return readback(*options); };
}

} // namespace wickbook::cli
