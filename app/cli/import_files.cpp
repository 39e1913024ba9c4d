// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/import_files.h"

#include "app/cli/book_access.h"
#include "app/cli/console.h"
#include "app/cli/input.h"
#include "app/cli/output.h"
#include "core/desk/checked_range.h"
#include "core/exchange/file_head.h"
#include "core/exchange/sef_join.h"
#include "ui/text/error_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <map>
#include <tuple>

namespace wickbook::cli {

namespace {

/// Rejected lines told one by one; the rest is in the rejects file.
constexpr std::size_t kMostToldLines = 20;

/// What came of all files together.
struct ImportTally {
    std::int64_t lines = 0;
    std::int64_t incomplete = 0;
    std::int64_t added = 0;
    std::int64_t revised = 0;
    std::int64_t kept = 0;
    std::int64_t same = 0;
    std::vector<exchange::RejectedLine> rejected;
    std::vector<store::ObservationChange> changes;
};

bool isIncomplete(const record::Observation& values) {
    return values.dry.given() != values.wet.given();
}

Outcome<exchange::TakenReadings> readingsOf(const store::Book& book) {
    exchange::TakenReadings taken;
    const auto span = book.span();
    if (!span) {
        return refuse(span.error());
    }
    if (*span) {
        auto stored = book.observationsBetween((*span)->first, (*span)->second + std::chrono::seconds{1});
        if (!stored) {
            return refuse(stored.error());
        }
        for (record::StoredObservation& reading : *stored) {
            taken.add(std::move(reading));
        }
    }
    return taken;
}

/// What each column was taken for, so that a wrong guess is seen.
void tellColumns(const std::string& name, const exchange::ImportPlan& plan) {
    std::string used;
    std::string aside;
    for (const exchange::GuessedColumn& column : plan.columns) {
        if (column.field) {
            used += fmt::format("{}{} as {}", used.empty() ? "" : ", ", column.header,
                                exchange::fieldName(*column.field));
        } else {
            aside += fmt::format("{}{}", aside.empty() ? "" : ", ", column.header);
        }
    }
    say(fmt::format("{} ({}): {}{}.", name, plan.format.encoding, used,
                    aside.empty() ? std::string{} : "; left aside: " + aside));
}

Outcome<void> refuseFile(const std::string& name, exchange::ImportError error) {
    using Kind = exchange::ImportErrorKind;
    if (error.kind == Kind::EmptyFile || error.kind == Kind::NotReadable || error.kind == Kind::NoLines ||
        error.kind == Kind::BinaryFile) {
        error.detail = "the file"; // its name stands in front already
    }
    return refuse(fmt::format("{}: {}", name, ui::importErrorWords(error).toStdString()));
}

/// Holds a plan against the book and adds what comes of it to the tally.
void takePlan(exchange::ImportPlan plan, const std::string& name, const ImportRequest& request,
              exchange::TakenReadings& taken, ImportTally& tally) {
    auto decision = exchange::decideConflicts(plan, name, taken, request.onConflict);
    tally.lines += plan.lines;
    tally.added += decision.added;
    tally.revised += decision.revised;
    tally.kept += decision.kept;
    tally.same += decision.same;
    const auto moveInto = [&](std::vector<exchange::RejectedLine>& lines) {
        std::move(lines.begin(), lines.end(), std::back_inserter(tally.rejected));
    };
    const auto firstOfFile = static_cast<std::ptrdiff_t>(tally.rejected.size());
    moveInto(plan.rejected);
    moveInto(decision.rejected);
    std::stable_sort(
        tally.rejected.begin() + firstOfFile, tally.rejected.end(),
        [](const auto& a, const auto& b) { return std::tie(a.file, a.line) < std::tie(b.file, b.line); });
    for (exchange::PlannedChange& planned : decision.changes) {
        store::ObservationChange change;
        change.author = {planned.values.observer.empty() ? accountName() : planned.values.observer,
                         fmt::format("imported from {}, line {}", planned.file.empty() ? name : planned.file,
                                     planned.line)};
        if (planned.replaces) {
            change.subject = planned.replaces->id();
            change.replaces = planned.replaces->stamp.sequence;
        }
        tally.incomplete += isIncomplete(planned.values) ? 1 : 0;
        change.values = std::move(planned.values);
        tally.changes.push_back(std::move(change));
    }
}

/// The files of a request: CSV files are planned one by one, SEF files are kept until all are read.
class Planning {
public:
    Planning(const ImportRequest& request, const OpenedBook& opened, exchange::TakenReadings& taken,
             ImportTally& tally)
        : request_(request), opened_(opened), taken_(taken), tally_(tally) {}

    Outcome<void> take(const std::string& path) {
        auto input = Input::open(path);
        if (!input) {
            return tl::unexpected(input.error());
        }
        ProgressLine progress("reading");
        const auto show = [&](std::int64_t bytes) {
            progress.show(bytes, input->size());
            return true;
        };
        const auto kind = exchange::fileKindOf(input->head());
        if (kind == exchange::FileKind::Binary) {
            return refuseFile(input->name(), {exchange::ImportErrorKind::BinaryFile, {}});
        }
        if (kind == exchange::FileKind::Sef) {
            auto file = exchange::readSef(input->stream(), input->name(), show);
            if (!file) {
                return refuseFile(input->name(), std::move(file.error()));
            }
            sef_.push_back(std::move(*file));
            return {};
        }
        auto plan =
            exchange::planCsvImport(input->stream(), input->name(), opened_.station, request_.options, show);
        if (!plan) {
            return refuseFile(input->name(), std::move(plan.error()));
        }
        tellColumns(input->name(), *plan);
        takePlan(std::move(*plan), input->name(), request_, taken_, tally_);
        return {};
    }

    /// Joins the SEF files on time.
    Outcome<void> finish() {
        if (sef_.empty()) {
            return {};
        }
        std::string names;
        for (const exchange::SefFile& file : sef_) {
            names += (names.empty() ? "" : ", ") + file.name;
        }
        auto plan = exchange::joinSef(sef_, opened_.station);
        if (!plan) {
            return refuseFile(names, std::move(plan.error()));
        }
        for (const exchange::AsideFile& aside : plan->aside) {
            say(fmt::format("{}: {}", aside.file, ui::asideFileWords(aside).toStdString()));
        }
        takePlan(std::move(*plan), names, request_, taken_, tally_);
        return {};
    }

private:
    const ImportRequest& request_;
    const OpenedBook& opened_;
    exchange::TakenReadings& taken_;
    ImportTally& tally_;
    std::vector<exchange::SefFile> sef_;
};

Outcome<void> writeRejects(const std::string& path, const ImportTally& tally) {
    auto output = Output::open(path);
    if (!output) {
        return tl::unexpected(output.error());
    }
    output->csv(exchange::rejectsHeader());
    for (const exchange::RejectedLine& line : tally.rejected) {
        output->csv(exchange::rejectsRow(line));
    }
    return output->finish();
}

void tellRejected(const ImportRequest& request, const ImportTally& tally) {
    const std::size_t told = std::min(tally.rejected.size(), kMostToldLines);
    for (std::size_t i = 0; i < told; ++i) {
        const exchange::RejectedLine& line = tally.rejected[i];
        say(fmt::format("{}, line {}: rejected: {}.", line.file, line.line,
                        ui::rejectWords(line).toStdString()));
    }
    if (told < tally.rejected.size()) {
        say(fmt::format("… and {} more{}.", tally.rejected.size() - told,
                        request.rejects.empty() ? "; name a file with --rejects to have them all"
                                                : ", all in the rejects file"));
    }
}

void tellSummary(const ImportRequest& request, const ImportTally& tally) {
    say(fmt::format(
        "{}Lines read: {}. Imported: {}, of these incomplete: {}. Revised: {}. Kept as in the book: {}. "
        "There already: {}. Rejected: {}.",
        request.dryRun ? "Dry run, nothing was stored. " : "", tally.lines, tally.added, tally.incomplete,
        tally.revised, tally.kept, tally.same, tally.rejected.size()));
    std::map<std::string, std::int64_t> reasons;
    for (const exchange::RejectedLine& line : tally.rejected) {
        ++reasons[exchange::rejectsRow(line).at(2)];
    }
    if (!reasons.empty()) {
        std::string text;
        for (const auto& [reason, count] : reasons) {
            text += fmt::format("{}{} {}", text.empty() ? "" : ", ", reason, count);
        }
        say(fmt::format("Reasons: {}.", text));
    }
}

/// Whether anything that came in has a finding: asked only where --strict makes a difference.
Outcome<bool> anyFinding(const OpenedBook& opened, const ImportTally& tally) {
    if (tally.changes.empty()) {
        return false;
    }
    const auto [first, last] =
        std::minmax_element(tally.changes.begin(), tally.changes.end(), [](const auto& a, const auto& b) {
            return record::filedDate(a.values) < record::filedDate(b.values);
        });
    const record::SystemClock clock;
    ProgressLine progress("checking");
    const auto checked = desk::checkedOn(
        opened.book, opened.station, record::filedDate(first->values), record::filedDate(last->values),
        clock.now(), nullptr, [&](std::size_t done, std::size_t total) {
            progress.show(static_cast<std::int64_t>(done), static_cast<std::int64_t>(total));
            return true;
        });
    if (!checked) {
        return refuse(checked.error());
    }
    return std::any_of(checked->begin(), checked->end(),
                       [](const checks::CheckedReading& reading) { return !reading.findings.empty(); });
}

} // namespace

Outcome<ExitCode> importFiles(const ImportRequest& request) {
    auto opened = request.dryRun ? openToRead(request.book) : openToWrite(request.book);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    auto taken = readingsOf(opened->book);
    if (!taken) {
        return tl::unexpected(taken.error());
    }
    ImportTally tally;
    Planning planning(request, *opened, *taken, tally);
    for (const std::string& file : request.files) {
        if (auto planned = planning.take(file); !planned) {
            return tl::unexpected(planned.error());
        }
    }
    if (auto planned = planning.finish(); !planned) {
        return tl::unexpected(planned.error());
    }
    // The rejects file first: where it can't be written, nothing is stored and nothing of the lines is lost.
    if (!request.rejects.empty()) {
        if (auto written = writeRejects(request.rejects, tally); !written) {
            return tl::unexpected(written.error());
        }
    }
    if (!request.dryRun && !tally.changes.empty()) {
        ProgressLine progress("storing");
        const auto stored = opened->book.appendAll(tally.changes, [&](std::int64_t done, std::int64_t total) {
            progress.show(done, total);
            return true;
        });
        if (!stored) {
            return refuse(stored.error());
        }
    }
    tellRejected(request, tally);
    tellSummary(request, tally);
    bool found = !tally.rejected.empty();
    if (request.strict && !found && !request.dryRun) {
        const auto any = anyFinding(*opened, tally);
        if (!any) {
            return tl::unexpected(any.error());
        }
        found = *any;
    }
    return request.strict && found ? ExitCode::Found : ExitCode::Done;
}

} // namespace wickbook::cli
