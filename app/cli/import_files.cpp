// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/import_files.h"

#include "app/cli/book_access.h"
#include "app/cli/console.h"
#include "app/cli/import_tally.h"
#include "app/cli/input.h"
#include "app/cli/interrupt.h"
#include "app/cli/output.h"
#include "core/desk/checked_range.h"
#include "core/exchange/file_head.h"
#include "core/exchange/sef_join.h"
#include "core/store/bulk_append.h"
#include "ui/text/error_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <future>
#include <tuple>

namespace wickbook::cli {

namespace {

/// Days checked at once where --strict asks for findings.
constexpr date::days kDaysCheckedAtOnce{366};

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

tl::unexpected<Refusal> refuseFile(const std::string& name, exchange::ImportError error) {
    using Kind = exchange::ImportErrorKind;
    if (error.kind == Kind::EmptyFile || error.kind == Kind::NotReadable || error.kind == Kind::NoLines ||
        error.kind == Kind::BinaryFile) {
        error.detail = "the file"; // its name stands in front already
    }
    return refuse(fmt::format("{}: {}", name, ui::importErrorWords(error).toStdString()));
}

/// Whether the book holds a live reading at this hour or moment, told from lists so that few are read.
class PlacesOfBook {
public:
    explicit PlacesOfBook(store::LivePlaces places) : places_(std::move(places)) {}
    [[nodiscard]] bool has(const record::Observation& values) const {
        return values.hour ? std::binary_search(places_.hours.begin(), places_.hours.end(), *values.hour)
                           : std::binary_search(places_.extras.begin(), places_.extras.end(), values.instant);
    }

private:
    store::LivePlaces places_;
};

/// The live reading at the hour or, for an extra reading, at the moment.
store::Result<std::optional<record::StoredObservation>> readingAt(const store::Book& book,
                                                                  const record::Observation& values) {
    if (values.hour) {
        return book.atHour(*values.hour);
    }
    auto there = book.observationsBetween(values.instant, values.instant + std::chrono::seconds{1});
    if (!there) {
        return tl::unexpected(there.error());
    }
    const auto extra =
        std::find_if(there->begin(), there->end(), [](const auto& one) { return !one.values.hour; });
    return extra == there->end() ? std::nullopt : std::optional{std::move(*extra)};
}

/// One import: files are planned part by part, each part is held against the book and appended, and all of it
/// becomes true in one commit. The book is nobody else's from the first part on.
class Importing {
public:
    Importing(const ImportRequest& request, OpenedBook& opened) : request_(request), opened_(opened) {
        if (request.files.size() == 1) {
            taken_.forgetLines();
        }
    }

    Outcome<void> openRejects() {
        if (request_.rejects.empty()) {
            return {};
        }
        auto output = Output::open(request_.rejects);
        if (!output) {
            return tl::unexpected(output.error());
        }
        rejects_ = std::move(*output);
        rejects_->csv(exchange::rejectsHeader());
        return {};
    }

    Outcome<void> take(const std::string& path);
    /// Joins the SEF files on time, and makes everything true.
    Outcome<void> finish();
    [[nodiscard]] const ImportTally& tally() const { return tally_; }

private:
    /// The part before is written while the next is read and planned; who asks the book waits for it.
    Outcome<void> waitForPart();

    using Observations = std::vector<exchange::PlannedObservation>;
    using Rejected = std::vector<exchange::RejectedLine>;

    /// Reads the book's places, once, and holds the book from then on.
    Outcome<void> begin();
    Outcome<void> takePart(Observations& observations, Rejected& rejected, const std::string& name);
    Outcome<void> append(std::vector<exchange::PlannedChange>& changes, const std::string& name);
    static tl::unexpected<Refusal> interrupted() {
        return refuse("Stopped: nothing was imported, and nothing was changed.", ExitCode::Interrupted);
    }

    const ImportRequest& request_;
    OpenedBook& opened_;
    const Interrupt interrupt_;
    exchange::TakenReadings taken_;
    ImportTally tally_;
    std::vector<exchange::SefFile> sef_;
    std::optional<Output> rejects_;
    std::optional<PlacesOfBook> places_;
    std::optional<store::BulkAppend> bulk_;
    std::future<store::Result<void>> writing_; ///< behind bulk_, so that it ends first
    std::optional<store::StoreError> readTrouble_;
    std::optional<Refusal> partTrouble_;
};

Outcome<void> Importing::begin() {
    if (places_) {
        return {};
    }
    if (!request_.dryRun) {
        auto bulk = opened_.book.bulkAppend();
        if (!bulk) {
            return refuse(bulk.error());
        }
        bulk_ = std::move(*bulk);
    }
    auto places = opened_.book.livePlaces();
    if (!places) {
        return refuse(places.error());
    }
    places_.emplace(std::move(*places));
    taken_.askBook([this](const record::Observation& values) -> std::optional<record::StoredObservation> {
        if (!places_->has(values)) {
            return std::nullopt;
        }
        if (auto written = waitForPart(); !written) {
            partTrouble_ = written.error();
            return std::nullopt;
        }
        auto reading = readingAt(opened_.book, values);
        if (!reading) {
            readTrouble_ = reading.error();
            return std::nullopt;
        }
        return std::move(*reading);
    });
    return {};
}

Outcome<void> Importing::append(std::vector<exchange::PlannedChange>& changes, const std::string& name) {
    std::vector<store::ObservationChange> part;
    part.reserve(changes.size());
    for (exchange::PlannedChange& planned : changes) {
        store::ObservationChange change;
        change.author = {planned.values.observer.empty() ? accountName() : planned.values.observer,
                         fmt::format("imported from {}, line {}", planned.file.empty() ? name : planned.file,
                                     planned.line)};
        if (planned.replaces) {
            change.subject = planned.replaces->id();
            change.replaces = planned.replaces->stamp.sequence;
        }
        tally_.takeOver(planned.values);
        change.values = std::move(planned.values);
        part.push_back(std::move(change));
    }
    if (!bulk_ || part.empty()) {
        return {};
    }
    if (auto written = waitForPart(); !written) {
        return written;
    }
    writing_ = std::async(std::launch::async, [this, part = std::move(part)] { return bulk_->append(part); });
    return {};
}

Outcome<void> Importing::waitForPart() {
    if (writing_.valid()) {
        if (const auto stored = writing_.get(); !stored) {
            return refuse(stored.error());
        }
    }
    return {};
}

Outcome<void> Importing::takePart(Observations& observations, Rejected& rejected, const std::string& name) {
    if (auto begun = begin(); !begun) {
        return begun;
    }
    exchange::ImportPlan part;
    part.observations = std::move(observations);
    auto decision = exchange::decideConflicts(part, name, taken_, request_.onConflict);
    if (readTrouble_) {
        return refuse(*readTrouble_);
    }
    if (partTrouble_) {
        return tl::unexpected(*partTrouble_);
    }
    tally_.added += decision.added;
    tally_.revised += decision.revised;
    tally_.kept += decision.kept;
    tally_.same += decision.same;
    std::move(decision.rejected.begin(), decision.rejected.end(), std::back_inserter(rejected));
    std::stable_sort(rejected.begin(), rejected.end(), [](const auto& a, const auto& b) {
        return std::tie(a.file, a.line) < std::tie(b.file, b.line);
    });
    for (const exchange::RejectedLine& line : rejected) {
        tally_.reject(line);
        if (rejects_) {
            rejects_->csv(exchange::rejectsRow(line));
        }
    }
    return append(decision.changes, name);
}

Outcome<void> Importing::take(const std::string& path) {
    auto input = Input::open(path);
    if (!input) {
        return tl::unexpected(input.error());
    }
    ProgressLine progress("importing");
    const auto show = [&](std::int64_t bytes) {
        progress.show(bytes, input->size());
        return !interrupt_.wished();
    };
    const auto kind = exchange::fileKindOf(input->head());
    if (kind == exchange::FileKind::Binary) {
        return refuseFile(input->name(), {exchange::ImportErrorKind::BinaryFile, {}});
    }
    if (kind == exchange::FileKind::Sef) {
        auto file = exchange::readSef(input->stream(), input->name(), show);
        if (!file) {
            return interrupt_.wished() ? interrupted() : refuseFile(input->name(), std::move(file.error()));
        }
        sef_.push_back(std::move(*file));
        return {};
    }
    std::optional<Refusal> trouble;
    const auto plan = exchange::planCsvInParts(
        input->stream(), input->name(), opened_.station, request_.options,
        [&](Observations& observations, Rejected& rejected) {
            if (auto taken = takePart(observations, rejected, input->name()); !taken) {
                trouble = taken.error();
            }
            return !trouble && !interrupt_.wished();
        },
        show);
    if (trouble) {
        return tl::unexpected(*trouble);
    }
    if (!plan) {
        return interrupt_.wished() ? interrupted() : refuseFile(input->name(), plan.error());
    }
    tally_.lines += plan->lines;
    tellColumns(input->name(), *plan);
    return {};
}

Outcome<void> Importing::finish() {
    if (!sef_.empty()) {
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
        tally_.lines += plan->lines;
        if (auto taken = takePart(plan->observations, plan->rejected, names); !taken) {
            return taken;
        }
    }
    if (auto written = waitForPart(); !written) {
        return written;
    }
    if (interrupt_.wished()) {
        return interrupted();
    }
    // The rejects file first: where it can't be written, nothing is stored and nothing of the lines is lost.
    if (rejects_) {
        if (auto written = rejects_->finish(); !written) {
            return written;
        }
    }
    // Where nothing came in, the book is not touched.
    if (bulk_ && tally_.added + tally_.revised > 0) {
        if (const auto stored = bulk_->commit(); !stored) {
            return refuse(stored.error());
        }
    }
    bulk_.reset();
    return {};
}

/// Whether anything in the days that something came in on has a finding: asked only where --strict makes a
/// difference.
Outcome<bool> anyFinding(const OpenedBook& opened, const ImportTally& tally) {
    if (!tally.firstDay) {
        return false;
    }
    const record::SystemClock clock;
    ProgressLine progress("checking");
    const auto all = (*tally.lastDay - *tally.firstDay).count() + 1;
    for (record::StationDate day = *tally.firstDay; day <= *tally.lastDay; day += kDaysCheckedAtOnce) {
        progress.show((day - *tally.firstDay).count(), all);
        const auto last = std::min(day + kDaysCheckedAtOnce - date::days{1}, *tally.lastDay);
        const auto checked = desk::checkedOn(opened.book, opened.station, day, last, clock.now(), nullptr);
        if (!checked) {
            return refuse(checked.error());
        }
        if (std::any_of(checked->begin(), checked->end(),
                        [](const checks::CheckedReading& reading) { return !reading.findings.empty(); })) {
            return true;
        }
    }
    return false;
}

} // namespace

Outcome<ExitCode> importFiles(const ImportRequest& request) {
    auto opened = request.dryRun ? openToRead(request.book) : openToWrite(request.book);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    Importing importing(request, *opened);
    auto done = importing.openRejects();
    for (auto file = request.files.begin(); done && file != request.files.end(); ++file) {
        done = importing.take(*file);
    }
    if (done) {
        done = importing.finish();
    }
    if (!done) {
        return tl::unexpected(done.error());
    }
    const ImportTally& tally = importing.tally();
    tellRejected(tally, request.rejects);
    tellSummary(tally, request.dryRun);
    bool found = tally.rejected > 0;
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
