// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/console.h"
#include "app/cli/output.h"
#include "app/cli/verb_table.h"
#include "core/store/book.h"
#include "ui/text/error_words.h"

#include <fmt/format.h>

#include <memory>

namespace wickbook::cli {

namespace {

constexpr std::string_view kWhatToDo = "Keep this file as it is. First restore the newest backup that "
                                       "verifies into a new book: wickbook restore "
                                       "--from BACKUP --book NEW. Where there is none, or it lacks readings, "
                                       "save what can be read of this file: "
                                       "wickbook salvage --from DAMAGED --book NEW.";

Outcome<ExitCode> verify(const std::string& path) {
    auto output = Output::open("-");
    const auto book = store::Book::open(path, store::OpenMode::ReadOnly);
    if (!book) {
        if (book.error().kind == store::StoreErrorKind::Damaged) {
            // So badly damaged that it does not open: that is what verify was asked.
            output->text(ui::storeErrorWords(book.error()).toStdString() + "\n");
            if (auto finished = output->finish(); !finished) {
                return tl::unexpected(finished.error());
            }
            say(kWhatToDo);
            return ExitCode::Found;
        }
        return refuse(book.error());
    }
    ProgressLine progress("verifying");
    const auto report = book->verify([&](std::int64_t done, std::int64_t total) {
        progress.show(done, total);
        return true;
    });
    if (!report) {
        return refuse(report.error());
    }
    for (const store::VerifyProblem& problem : report->problems) {
        output->text(fmt::format("{}: {}\n", problem.code, ui::verifyProblemWords(problem).toStdString()));
    }
    if (report->sound()) {
        output->text(
            fmt::format("sound: {} revisions, {} observations\n", report->revisions, report->observations));
    }
    if (auto finished = output->finish(); !finished) {
        return tl::unexpected(finished.error());
    }
    if (!report->sound()) {
        say(kWhatToDo);
    }
    return report->sound() ? ExitCode::Done : ExitCode::Found;
}

} // namespace

VerbAction declareVerify(OptionList command) {
    auto book = std::make_shared<std::string>();
    command.needed("--book", *book, "The book; nothing is written to it");
    return [book] { return verify(*book); };
}

} // namespace wickbook::cli
