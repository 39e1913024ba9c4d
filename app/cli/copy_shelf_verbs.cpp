// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/copy_shelf_verbs.h"

#include "app/cli/console.h"
#include "app/cli/output.h"
#include "core/store/copy_shelf.h"
#include "ui/text/copy_words.h"
#include "ui/text/difference_words.h"
#include "ui/text/error_words.h"

#include <fmt/format.h>

namespace wickbook::cli {

namespace {

/// Differences that are listed; totals are exact however many there are.
constexpr std::size_t kLinesListed = 200;

std::string fileNameOf(const std::filesystem::path& path) {
    return path.filename().string();
}

tl::unexpected<Refusal> refuseCopy(const store::StoreError& error, const std::string& folder) {
    return refuse(ui::copyTroubleWords(error, folder).toStdString(), ExitCode::BookTrouble);
}

} // namespace

Outcome<ExitCode> keepOnShelf(const std::string& book, const std::string& folder) {
    const auto source = store::Book::open(book, store::OpenMode::ReadOnly);
    if (!source) {
        return refuse(source.error());
    }
    const record::Instant now = record::SystemClock().now();
    const auto kept = store::keepCopy(*source, {folder, false}, store::CopyReason::ByHand, now);
    if (!kept) {
        return refuseCopy(kept.error(), folder);
    }
    say(fmt::format("kept {}: verified, {} in {} revisions.", fileNameOf(kept->path),
                    ui::readingCountWords(QLocale::c(), kept->readings).toStdString(), kept->chain.count));
    const auto rotation = store::rotateCopies(*source, folder, kept->path, now);
    if (!rotation) {
        return refuse(rotation.error());
    }
    for (const std::filesystem::path& dropped : rotation->dropped) {
        say(fmt::format("dropped {}: newer copies of its day, week and month are there.",
                        fileNameOf(dropped)));
    }
    for (const store::StoreError& stuck : rotation->stuck) {
        say(ui::stuckCopyWords(stuck));
    }
    say(fmt::format("{} of this book in the folder.",
                    ui::copyCountWords(QLocale::c(), rotation->left).toStdString()));
    return ExitCode::Done;
}

Outcome<ExitCode> listShelf(const std::string& folder) {
    std::error_code ignored;
    if (!std::filesystem::is_directory(folder, ignored)) {
        return refuse(
            fmt::format("--list {}: this is not a folder that can be read; name the folder that the "
                        "copies are kept in.",
                        folder),
            ExitCode::BookTrouble);
    }
    const auto copies = store::copiesIn(folder);
    if (!copies) {
        return refuse(copies.error());
    }
    auto output = Output::open("-");
    output->csv({"file", "time_utc", "reason", "readings", "revisions", "bytes", "trouble"});
    for (const store::KeptCopy& copy : *copies) {
        const bool known = !copy.trouble;
        output->csv({fileNameOf(copy.path), record::instantText(copy.name.moment),
                     std::string{store::copyReasonCode(copy.name.reason)},
                     known ? std::to_string(copy.readings) : std::string{},
                     known ? std::to_string(copy.chain.count) : std::string{}, std::to_string(copy.bytes),
                     known ? std::string{} : ui::unreadableCopyWords(*copy.trouble).toStdString()});
    }
    if (auto finished = output->finish(); !finished) {
        return tl::unexpected(finished.error());
    }
    if (copies->empty()) {
        say(std::string_view{"There are no copies in this folder."});
    }
    return ExitCode::Done;
}

Outcome<ExitCode> printDifference(const std::string& restored, const std::string& other) {
    const auto first = store::Book::open(restored, store::OpenMode::ReadOnly);
    if (!first) {
        return refuse(first.error());
    }
    const auto second = store::Book::open(other, store::OpenMode::ReadOnly);
    if (!second) {
        return refuse(second.error());
    }
    const auto difference = [&] {
        ProgressLine progress("comparing");
        return store::differenceBetween(*first, *second, kLinesListed,
                                        [&](std::int64_t done, std::int64_t total) {
                                            progress.show(done, total);
                                            return true;
                                        });
    }();
    if (!difference) {
        return refuse(difference.error());
    }
    const ui::BookNames names{QString::fromStdString(fileNameOf(restored)),
                              QString::fromStdString(fileNameOf(other))};
    auto output = Output::open("-");
    for (const QString& line : ui::differenceLines(QLocale::c(), *difference, names)) {
        output->text(line.toStdString() + "\n");
    }
    if (auto finished = output->finish(); !finished) {
        return tl::unexpected(finished.error());
    }
    for (const QString& sentence : ui::differenceSentences(QLocale::c(), *difference, names)) {
        say(sentence);
    }
    return ExitCode::Done;
}

} // namespace wickbook::cli
