// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/station/restore_work.h"

#include "core/store/book_difference.h"
#include "ui/text/copy_words.h"
#include "ui/text/difference_words.h"
#include "ui/text/error_words.h"

#include <QCoreApplication>

namespace wickbook::ui {

namespace {

struct RestoreText {
    Q_DECLARE_TR_FUNCTIONS(RestoreText)
};

/// Differences that are listed; totals are exact however many there are.
constexpr std::size_t kDifferencesListed = 200;

QString fileNameWords(const std::filesystem::path& path) {
    return QStringLiteral("“%1”").arg(QString::fromStdString(path.filename().string()));
}

VerifiedCopy verifyBook(const store::Book& copy, const QLocale& locale, WorkWatch& watch) {
    const auto report =
        copy.verify([&](std::int64_t done, std::int64_t total) { return watch.go(done, total); });
    if (!report) {
        return {false, storeErrorWords(report.error())};
    }
    if (watch.stop) {
        return {};
    }
    if (!report->sound()) {
        return {false, RestoreText::tr("%1 does not verify: choose another copy. (%2)")
                           .arg(fileNameWords(copy.path()), verifyProblemWords(report->problems.front()))};
    }
    return {true, RestoreText::tr("%1 is sound: %2 in %3 revisions.")
                      .arg(fileNameWords(copy.path()), readingCountWords(locale, report->observations),
                           locale.toString(static_cast<qlonglong>(report->revisions)))};
}

void compare(const RestoreJob& job, WorkWatch& watch, Restored& restored) {
    const auto fresh = store::Book::open(job.newBook, store::OpenMode::ReadOnly);
    const auto other = store::Book::open(job.compareWith, store::OpenMode::ReadOnly);
    if (!fresh || !other) {
        restored.totals << RestoreText::tr("It could not be held against the other book. %1")
                               .arg(storeErrorWords(fresh ? other.error() : fresh.error()));
        return;
    }
    const auto difference = store::differenceBetween(
        *fresh, *other, kDifferencesListed,
        [&](std::int64_t done, std::int64_t total) { return watch.go(done, total); });
    if (!difference) {
        restored.totals << (watch.stop ? RestoreText::tr("It was not held against the other book to the end.")
                                       : RestoreText::tr("It could not be held against the other book. %1")
                                             .arg(storeErrorWords(difference.error())));
        return;
    }
    const BookNames names{fileNameWords(job.newBook), fileNameWords(job.compareWith)};
    restored.totals = differenceSentences(job.locale, *difference, names);
    restored.lines = differenceLines(job.locale, *difference, names);
}

} // namespace

FoundCopies findCopies(const std::filesystem::path& folder) {
    auto copies = store::copiesIn(folder);
    if (!copies) {
        return {{}, storeErrorWords(copies.error())};
    }
    return {std::move(*copies), {}};
}

VerifiedCopy verifyCopy(const std::filesystem::path& copy, const QLocale& locale, WorkWatch& watch) {
    const auto book = store::Book::open(copy, store::OpenMode::ReadOnly);
    return book ? verifyBook(*book, locale, watch) : VerifiedCopy{false, storeErrorWords(book.error())};
}

Restored restoreCopy(const RestoreJob& job, WorkWatch& watch) {
    Restored restored;
    const auto copy = store::Book::open(job.copy, store::OpenMode::ReadOnly);
    if (!copy) {
        restored.sentence = storeErrorWords(copy.error());
        return restored;
    }
    const VerifiedCopy verified = verifyBook(*copy, job.locale, watch);
    if (!verified.sound) {
        restored.sentence = verified.sentence;
        return restored;
    }
    // Verified once more after it is written, before it gets its name.
    if (const auto made = copy->backupTo(job.newBook); !made) {
        restored.sentence = storeErrorWords(made.error());
        return restored;
    }
    restored.done = true;
    const auto readings = copy->observationCount();
    restored.sentence =
        RestoreText::tr("Restored and verified: %1, %2.")
            .arg(fileNameWords(job.newBook), readingCountWords(job.locale, readings.value_or(0)));
    if (!job.compareWith.empty()) {
        compare(job, watch, restored);
    }
    return restored;
}

} // namespace wickbook::ui
