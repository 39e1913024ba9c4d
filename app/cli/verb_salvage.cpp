// SPDX-License-Identifier: GPL-3.0-or-later
// What can be read of a damaged book, into a new one. The table on standard output has a line for each count;
// numbers of revisions follow as ranges.
#include "app/cli/book_access.h"
#include "app/cli/console.h"
#include "app/cli/interrupt.h"
#include "app/cli/output.h"
#include "app/cli/verb_table.h"
#include "core/store/salvage.h"
#include "ui/text/salvage_words.h"

#include <fmt/format.h>

#include <memory>

namespace wickbook::cli {

namespace {

std::string rangesText(const std::vector<store::SequenceRange>& ranges) {
    std::string text;
    for (const store::SequenceRange& range : ranges) {
        text += range.first == range.last ? fmt::format(" {}", range.first)
                                          : fmt::format(" {}-{}", range.first, range.last);
    }
    return text;
}

void printSalvage(Output& output, const store::SalvageReport& report) {
    const auto line = [&](const char* what, auto count, const std::string& where = {}) {
        output.text(fmt::format("{:<13}{:>8}{}{}\n", what, count, where.empty() ? "" : " ", where));
    };
    line("revisions", report.expected);
    line("returned", report.proved + report.unproven + report.altered);
    line("proved", report.proved);
    line("altered", report.altered, rangesText(report.alteredAt));
    line("unproven", report.unproven, rangesText(report.unprovenAt));
    line("lost", report.lost, rangesText(report.lostAt));
    line("observations", report.observations);
    line("pages", report.pages);
    line("pages unread", report.pagesUnread);
}

Outcome<ExitCode> salvageBook(const std::string& from, const std::string& to) {
    auto output = Output::open("-");
    const Interrupt interrupt;
    store::Result<store::SalvageReport> report;
    {
        ProgressLine progress("salvaging");
        report = store::salvage(from, to, ui::salvageWords(QString::fromStdString(accountName())),
                                std::make_shared<record::SystemClock>(),
                                [&](std::int64_t done, std::int64_t total) {
                                    progress.show(done, total);
                                    return !interrupt.wished();
                                });
    }
    if (!report) {
        return refuse(report.error());
    }
    if (report->stopped) {
        return refuse(ui::salvageSentence(*report).toStdString(), ExitCode::Interrupted);
    }
    printSalvage(*output, *report);
    if (auto finished = output->finish(); !finished) {
        return tl::unexpected(finished.error());
    }
    say(ui::salvageSentence(*report));
    for (const QString& detail : ui::salvageDetails(*report)) {
        say(detail);
    }
    return report->chainKept ? ExitCode::Done : ExitCode::Found;
}

} // namespace

VerbAction declareSalvage(OptionList command) {
    struct Texts {
        std::string from, book;
    };
    auto texts = std::make_shared<Texts>();
    command.needed("--from", texts->from, "The damaged book; nothing is written to it");
    command.needed("--book", texts->book, "File of the new book; nothing may be there yet");
    return [texts] { return salvageBook(texts->from, texts->book); };
}

} // namespace wickbook::cli
