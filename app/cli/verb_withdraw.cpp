// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/register_changes.h"
#include "app/cli/verb_table.h"

#include <memory>

namespace wickbook::cli {

namespace {

struct WithdrawOptions {
    WhichReadings which;
    HowToChange how;
};

Outcome<ExitCode> withdraw(const WithdrawOptions& options) {
    if (auto reason = options.how.hasReason(); !reason) {
        return tl::unexpected(reason.error());
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
        changes.back().after.withdrawn = true;
    }
    return storeChanges(*opened, std::move(changes), options.how, {});
}

} // namespace

VerbAction declareWithdraw(OptionList command) {
    auto options = std::make_shared<WithdrawOptions>();
    options->which.declare(command, true);
    options->how.declare(command, "Reason, kept with the change; needed");
    return [options] { return withdraw(*options); };
}

} // namespace wickbook::cli
