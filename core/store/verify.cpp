// SPDX-License-Identifier: GPL-3.0-or-later
// Everything a book promises, asked of the file itself: pages, schema, chain, bodies, and the finding aid.
#include "core/store/book_header.h"
#include "core/store/connection.h"
#include "core/store/facts_body.h"
#include "core/store/observation_body.h"
#include "core/store/observation_index.h"
#include "core/store/revision_log.h"
#include "core/store/schema.h"

#include <fmt/format.h>
#include <sqlite3.h>

#include <algorithm>
#include <map>

namespace wickbook::store {

namespace {

/// A page so full of problems that more of them tell nothing.
constexpr std::size_t kMostProblems = 1000;

class Verifying {
public:
    Verifying(const Connection& connection, const Progress& progress)
        : connection_(connection), database_(connection.db()), progress_(progress) {}

    VerifyReport run() {
        const ReadGuard oneState(database_);
        section("pages", [&] { pages(); });
        section("schema", [&] { schema(); });
        section("chain", [&] { chain(); });
        if (!stopped_)
            section("index", [&] { index(); });
        return std::move(report_);
    }

private:
    void problem(const char* code, std::string detail, std::optional<std::int64_t> sequence = {}) {
        if (report_.problems.size() < kMostProblems)
            report_.problems.push_back({code, std::move(detail), sequence});
    }

    /// Damage that stops one part must not hide what the others find; a disk that fails is another matter.
    template <typename Work>
    void section(const char* code, Work work) {
        try {
            work();
        } catch (const SQLite::Exception& exception) {
            const StoreError error = errorFrom(exception, database_.getHandle(), connection_.path);
            if (error.kind != StoreErrorKind::Damaged && error.kind != StoreErrorKind::NotABook &&
                error.kind != StoreErrorKind::Internal)
                throw;
            problem(code, error.detail);
        } catch (const MalformedBody& malformed) {
            problem(code, malformed.what());
        }
    }

    void pages() {
        for (std::string& line : pageProblems(database_))
            problem("pages", std::move(line));
    }

    void schema() {
        const int id = database_.execAndGet("PRAGMA application_id").getInt();
        if (id != kApplicationId)
            problem("schema", fmt::format("the application id is {}", id));
        if (connection_.newer)
            return;
        const int version = database_.execAndGet("PRAGMA user_version").getInt();
        if (version != currentSchema())
            problem("schema", fmt::format("the schema's number is {}, not {}", version, currentSchema()));
        for (std::string& difference : schemaDifferences(database_, migrations()))
            problem("schema", std::move(difference));
    }

    void chain() {
        std::int64_t count = 0;
        std::string head;
        SQLite::Statement end(database_, "SELECT count, head FROM chain");
        if (end.executeStep()) {
            count = end.getColumn(0).getInt64();
            head = end.getColumn(1).getString();
        } else {
            problem("head", "the end of the chain is not recorded");
        }
        SQLite::Statement query(
            database_, fmt::format("SELECT {}, r.checksum FROM revision r ORDER BY r.sequence", kRowColumns));
        std::string previous(Checksum{}.size(), '\0');
        std::int64_t expected = 1;
        while (query.executeStep()) {
            if (progress_ && !progress_(report_.revisions, count)) {
                stopped_ = true;
                problem("stopped", fmt::format("stopped after {} revisions", report_.revisions));
                return;
            }
            const RevisionRow row = readRow(query);
            if (row.sequence != expected)
                problem("chain", fmt::format("revisions {} to {} are missing", expected, row.sequence - 1),
                        row.sequence);
            std::string checksum = query.getColumn(8).getString();
            if (bytesOf(chainChecksum(checksumFrom(previous), row)) != checksum)
                problem("chain", fmt::format("revision {} is not as it was written", row.sequence),
                        row.sequence);
            checkBody(row);
            previous = std::move(checksum);
            expected = std::min(row.sequence, kMostRowsOfABook) + 1;
            ++report_.revisions;
        }
        if (head != previous)
            problem("head", "the last revision is not the one recorded as the last");
        if (count != report_.revisions)
            problem("count",
                    fmt::format("{} revisions are recorded, {} are there", count, report_.revisions));
    }

    void checkBody(const RevisionRow& row) {
        try {
            const record::Uuid subject = stampOf(row).subject;
            if (row.kind == kind::kObservation) {
                std::int64_t revisions = 1;
                if (const auto it = expected_.find(subject); it != expected_.end())
                    revisions = it->second.revisions + 1;
                expected_[subject] = indexRow(observationFromBody(row.body), row.sequence, revisions);
            } else {
                record::StationFacts facts;
                addFact(facts, {row.kind, subject, row.body});
            }
        } catch (const MalformedBody& malformed) {
            problem("body", fmt::format("revision {}: {}", row.sequence, malformed.what()), row.sequence);
        }
    }

    void index() {
        SQLite::Statement query(database_,
                                "SELECT subject, sequence, revisions, instant, filed_day, hour_day, "
                                "hour_minute, live FROM observation");
        std::size_t found = 0;
        while (query.executeStep()) {
            ++found;
            const std::string subject = query.getColumn(0).getString();
            IndexRow row;
            row.sequence = query.getColumn(1).getInt64();
            row.revisions = query.getColumn(2).getInt64();
            row.instant = query.getColumn(3).getInt64();
            row.filedDay = query.getColumn(4).getInt64();
            if (!query.getColumn(5).isNull())
                row.hourDay = query.getColumn(5).getInt64();
            if (!query.getColumn(6).isNull())
                row.hourMinute = query.getColumn(6).getInt64();
            row.live = query.getColumn(7).getInt64() == 1;
            record::Uuid id;
            if (subject.size() == id.bytes.size())
                std::ranges::transform(subject, id.bytes.begin(),
                                       [](char c) { return static_cast<std::uint8_t>(c); });
            const auto it = expected_.find(id);
            if (it == expected_.end())
                problem("index",
                        fmt::format("the index names a reading {} that no revision knows", id.toText()));
            else if (!(it->second == row))
                problem("index",
                        fmt::format("the index of reading {} is not what its revisions say", id.toText()),
                        it->second.sequence);
            if (row.live)
                ++report_.observations;
        }
        if (found != expected_.size())
            problem("index",
                    fmt::format("the index holds {} readings, the revisions {}", found, expected_.size()));
    }

    static Checksum checksumFrom(const std::string& bytes) {
        Checksum checksum{};
        // Of another length it is damaged, and the comparison after this will say so.
        for (std::size_t i = 0; i < checksum.size() && i < bytes.size(); ++i)
            checksum[i] = static_cast<std::uint8_t>(bytes[i]);
        return checksum;
    }

    const Connection& connection_;
    SQLite::Database& database_;
    const Progress& progress_;
    VerifyReport report_;
    std::map<record::Uuid, IndexRow> expected_;
    bool stopped_ = false;
};

} // namespace

Result<VerifyReport> Book::verify(const Progress& progress) const {
    return guarded(*state_, [&]() -> Result<VerifyReport> { return Verifying(*state_, progress).run(); });
}

} // namespace wickbook::store
