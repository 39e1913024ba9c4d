// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/register_changes.h"
#include "app/cli/verb_table.h"

#include <fmt/format.h>

#include <memory>

namespace wickbook::cli {

namespace {

struct JudgeOptions {
    WhichReadings which;
    HowToChange how;
    std::string as;
};

Outcome<ExitCode> judge(const JudgeOptions& options) {
    const auto quality = record::qualityFromName(options.as);
    if (!quality) {
        return refuse(fmt::format(
            "--as can be sound, doubtful, erroneous or not-judged; \"{}\" is none of them.", options.as));
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
        if (before.values.origin == record::Origin::Missing) {
            if (!options.which.at.empty()) {
                return refuse(fmt::format("{} is written down as missing: there is no reading to judge.",
                                          record::instantText(before.values.instant)));
            }
            continue;
        }
        changes.push_back({before, before.values});
        changes.back().after.quality = *quality;
    }
    return storeChanges(*opened, std::move(changes), options.how, "judged " + options.as);
}

} // namespace

VerbAction declareJudge(OptionList command) {
    auto options = std::make_shared<JudgeOptions>();
    options->which.declare(command, true);
    command.needed("--as", options->as, "sound, doubtful, erroneous or not-judged");
    options->how.declare(command, "Reason (judged …)");
    return [options] { return judge(*options); };
}

} // namespace wickbook::cli
