// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/salvage.h"

#include "core/store/book_header.h"
#include "core/store/connection.h"
#include "core/store/placement.h"
#include "core/store/salvage_book.h"
#include "core/store/salvage_journal.h"
#include "core/store/salvage_judge.h"
#include "core/store/salvage_reader.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

namespace wickbook::store {

namespace {

/// Less than any row of "revision" takes.
constexpr std::uint64_t kShortestRow = 60;
/// Thousandths of the whole work that are done when each part of it is.
constexpr std::int64_t kWhole = 1000;
constexpr std::int64_t kRead = 450;
constexpr std::int64_t kWritten = 800;

/// One way of reading the file, and what the chain says of it.
struct Reading {
    FoundRows rows;
    Judgement judgement;
};

class SalvageReading {
public:
    SalvageReading(const ByteSource& file, const ByteSource* takenBack, const Progress& progress)
        : file_(file), takenBack_(takenBack), progress_(progress) {}

    /// None: stopped.
    std::optional<Reading> run() {
        auto reading = best(takenBack_ != nullptr ? *takenBack_ : file_);
        if (!reading || takenBack_ == nullptr || reading->judgement.whole())
            return reading;
        // Pages that the journal did not keep, or kept of something else, may be sound in the file itself.
        auto raw = best(file_);
        if (!raw)
            return raw;
        return together(std::move(*reading), std::move(*raw));
    }

private:
    std::optional<Reading> best(const ByteSource& source) const {
        std::optional<Reading> best;
        for (const PageLayout& layout : layoutsOf(source)) {
            Reading reading;
            reading.rows = rowsIn(source, layout, [&](std::uint64_t page, std::uint64_t pages) {
                return !progress_ ||
                       progress_(static_cast<std::int64_t>(kRead * page / std::max<std::uint64_t>(pages, 1)),
                                 kWhole);
            });
            if (reading.rows.stopped)
                return std::nullopt;
            judgeRows(reading, source);
            if (!best || returned(reading) > returned(*best))
                best = std::move(reading);
            if (best->judgement.whole())
                break;
        }
        return best;
    }

    static std::pair<std::int64_t, std::size_t> returned(const Reading& reading) {
        return {reading.judgement.count(Standing::Proved), reading.judgement.rows.size()};
    }

    void judgeRows(Reading& reading, const ByteSource& source) const {
        const PageLayout layout = reading.rows.layout;
        reading.judgement =
            judge(reading.rows.revisions, reading.rows.ends,
                  static_cast<std::int64_t>(file_.size() / kShortestRow) + 1, [&](std::uint64_t number) {
                      std::string page;
                      return readPage(source, layout, number, page) ? page : std::string{};
                  });
    }

    /// What the write that was taken back had begun stays out: that is what taking back means. Where the end
    /// is not proved, the journal may be another file's, and nothing is left out.
    Reading together(Reading taken, Reading raw) const {
        const bool endProved = taken.judgement.head.has_value() && !taken.judgement.rows.empty();
        const std::int64_t last = taken.judgement.expected;
        for (FoundRevision& revision : raw.rows.revisions) {
            if (!endProved || revision.row.sequence <= last)
                taken.rows.revisions.push_back(std::move(revision));
        }
        if (!endProved)
            std::ranges::move(raw.rows.ends, std::back_inserter(taken.rows.ends));
        judgeRows(taken, *takenBack_);
        return taken;
    }

    const ByteSource& file_;
    const ByteSource* takenBack_;
    const Progress& progress_;
};

std::vector<SequenceRange> rangesOf(const Judgement& judgement, Standing standing) {
    std::vector<SequenceRange> ranges;
    for (const JudgedRevision& revision : judgement.rows) {
        if (revision.standing == standing)
            ranges.push_back({revision.row.sequence, revision.row.sequence});
    }
    return ranges;
}

SalvageReport reportOf(const Reading& reading) {
    SalvageReport report;
    const Judgement& judgement = reading.judgement;
    report.expected = judgement.expected;
    report.proved = judgement.count(Standing::Proved);
    report.unproven = judgement.count(Standing::Unproven);
    report.altered = judgement.count(Standing::Altered);
    report.unprovenAt = rangesOf(judgement, Standing::Unproven);
    report.alteredAt = rangesOf(judgement, Standing::Altered);
    report.lostAt = judgement.lost;
    for (const SequenceRange& range : judgement.lost)
        report.lost += range.count();
    report.pages = reading.rows.pages;
    report.pagesUnread = reading.rows.unreadPages.size();
    report.chainKept = judgement.whole();
    return report;
}

/// Nothing is written without a revision to write.
StoreError nothingToRead(const std::filesystem::path& path) {
    const auto header = readBookHeader(std::filesystem::absolute(path));
    const bool isABook = header || header.error().kind == StoreErrorKind::Damaged;
    return {isABook ? StoreErrorKind::Damaged : StoreErrorKind::NotABook, path.string(),
            "no revision can be read in it"};
}

} // namespace

Result<SalvageReport> salvage(const std::filesystem::path& damaged, const std::filesystem::path& path,
                              const SalvageWords& words, std::shared_ptr<const record::Clock> clock,
                              const Progress& progress) {
    return guarded(path, nullptr, [&]() -> Result<SalvageReport> {
        if (auto free = checkNameIsFree(path); !free)
            return tl::unexpected(free.error());
        std::optional<Reading> reading;
        bool takenBack = false;
        {
            const auto file = LockedFile::open(damaged);
            if (!file)
                return tl::unexpected(file.error());
            std::error_code ignored;
            const auto journal =
                (*file)->beingWritten()
                    ? nullptr
                    : PlainFile::open(journalOf(std::filesystem::canonical(damaged, ignored)));
            const auto before = journal ? TakenBack::over(**file, *journal) : nullptr;
            takenBack = before != nullptr;
            reading = SalvageReading(**file, before.get(), progress).run();
        }
        if (!reading) {
            SalvageReport stopped;
            stopped.stopped = true;
            return stopped;
        }
        if (reading->judgement.rows.empty())
            return tl::unexpected(nothingToRead(damaged));
        SalvageReport report = reportOf(*reading);
        report.writeTakenBack = takenBack;
        const Judgement judgement = std::move(reading->judgement);
        reading.reset(); // the rows as found are no longer needed

        FileBeside beside(path);
        if (auto made = beside.make(); !made)
            return tl::unexpected(made.error());
        const auto part = [&](std::int64_t from, std::int64_t to) {
            return [&, from, to](std::int64_t done, std::int64_t total) {
                return !progress ||
                       progress(from + (to - from) * done / std::max<std::int64_t>(total, 1), kWhole);
            };
        };
        const auto written =
            createSalvaged(path, beside.path(), judgement, words, clock, report, part(kRead, kWritten));
        if (!written)
            return tl::unexpected(written.error());
        if (report.stopped)
            return report;
        report.unprovenAt = joined(std::move(report.unprovenAt));
        report.alteredAt = joined(std::move(report.alteredAt));
        report.lostAt = joined(std::move(report.lostAt));
        {
            const auto book = Book::open(beside.path(), OpenMode::ReadOnly, clock);
            if (!book)
                return tl::unexpected(book.error());
            const auto verified = book->verify(part(kWritten, kWhole));
            if (!verified)
                return tl::unexpected(verified.error());
            if (!verified->sound()) {
                report.stopped = verified->problems.back().code == "stopped";
                if (report.stopped)
                    return report;
                return tl::unexpected(
                    StoreError{StoreErrorKind::Internal, path.string(),
                               "the new book did not pass: " + verified->problems.front().detail});
            }
        }
        if (auto placed = beside.place(); !placed)
            return tl::unexpected(placed.error());
        return report;
    });
}

} // namespace wickbook::store
