// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/import_tally.h"

#include "app/cli/console.h"
#include "ui/text/error_words.h"

#include <fmt/format.h>

namespace wickbook::cli {

namespace {

/// Rejected lines told one by one; the rest is in the rejects file.
constexpr std::size_t kMostToldLines = 20;

bool isIncomplete(const record::Observation& values) {
    return values.dry.given() != values.wet.given();
}

} // namespace

void ImportTally::reject(const exchange::RejectedLine& line) {
    ++rejected;
    ++reasons[exchange::rejectsRow(line).at(2)];
    if (firstRejected.size() < kMostToldLines) {
        firstRejected.push_back(line);
    }
}

void ImportTally::takeOver(const record::Observation& values) {
    incomplete += isIncomplete(values) ? 1 : 0;
    const record::StationDate day = record::filedDate(values);
    firstDay = firstDay ? std::min(*firstDay, day) : day;
    lastDay = lastDay ? std::max(*lastDay, day) : day;
}

void tellRejected(const ImportTally& tally, const std::string& rejectsFile) {
    for (const exchange::RejectedLine& line : tally.firstRejected) {
        say(fmt::format("{}, line {}: rejected: {}.", line.file, line.line,
                        ui::rejectWords(line).toStdString()));
    }
    const auto told = static_cast<std::int64_t>(tally.firstRejected.size());
    if (told < tally.rejected) {
        say(fmt::format("… and {} more{}.", tally.rejected - told,
                        rejectsFile.empty() ? "; name a file with --rejects to have them all"
                                            : ", all in the rejects file"));
    }
}

void tellSummary(const ImportTally& tally, bool dryRun) {
    say(fmt::format(
        "{}Lines read: {}. Imported: {}, of these incomplete: {}. Revised: {}. Kept as in the book: {}. "
        "There already: {}. Rejected: {}.",
        dryRun ? "Dry run, nothing was stored. " : "", tally.lines, tally.added, tally.incomplete,
        tally.revised, tally.kept, tally.same, tally.rejected));
    if (!tally.reasons.empty()) {
        std::string text;
        for (const auto& [reason, count] : tally.reasons) {
            text += fmt::format("{}{} {}", text.empty() ? "" : ", ", reason, count);
        }
        say(fmt::format("Reasons: {}.", text));
    }
}

} // namespace wickbook::cli
