// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/copy_book.h"

#include "app/cli/console.h"
#include "core/record/instant.h"
#include "core/store/book.h"
#include "ui/text/error_words.h"

#include <fmt/format.h>

namespace wickbook::cli {

namespace {

/// What a sound book holds; a refusal for one that is not.
Outcome<store::VerifyReport> soundReport(const store::Book& book, const std::string& path) {
    ProgressLine progress("verifying");
    auto report = book.verify([&](std::int64_t done, std::int64_t total) {
        progress.show(done, total);
        return true;
    });
    if (!report) {
        return refuse(report.error());
    }
    if (!report->sound()) {
        return refuse(fmt::format("{} is damaged ({}); verify it, and use another copy.", path,
                                  ui::verifyProblemWords(report->problems.front()).toStdString()),
                      ExitCode::BookTrouble);
    }
    return *report;
}

Outcome<std::string> spanText(const store::Book& book) {
    const auto span = book.span();
    if (!span) {
        return refuse(span.error());
    }
    return *span ? fmt::format(", from {} to {}", record::instantText((*span)->first),
                               record::instantText((*span)->second))
                 : std::string{};
}

} // namespace

Outcome<ExitCode> copyBook(const std::string& from, const std::string& to) {
    const auto source = store::Book::open(from, store::OpenMode::ReadOnly);
    if (!source) {
        return refuse(source.error());
    }
    if (const auto sound = soundReport(*source, from); !sound) {
        return tl::unexpected(sound.error());
    }
    if (const auto copied = source->backupTo(to); !copied) {
        return refuse(copied.error());
    }
    const auto copy = store::Book::open(to, store::OpenMode::ReadOnly);
    if (!copy) {
        return refuse(copy.error());
    }
    const auto report = soundReport(*copy, to);
    if (!report) {
        return tl::unexpected(report.error());
    }
    const auto span = spanText(*copy);
    if (!span) {
        return tl::unexpected(span.error());
    }
    say(fmt::format("{} is written and sound: {} observations in {} revisions{}.", to, report->observations,
                    report->revisions, *span));
    return ExitCode::Done;
}

} // namespace wickbook::cli
