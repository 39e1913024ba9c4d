// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/clock.h"
#include "core/record/revision.h"
#include "core/record/station_record.h"
#include "core/store/sha256.h"
#include "core/store/store_error.h"

#include <tl/expected.hpp>

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

/// The book: one SQLite file for one station. What it promises:
/// - a write that has returned is on the disk (rollback journal, synchronous EXTRA);
/// - a write that has failed has changed nothing;
/// - nothing is updated in place: every change appends a revision, chained by SHA-256 to the one before;
/// - a file that is not a book, is damaged or newer is never written to.
/// One Book is used by one thread; several programs may hold the same file at once.

namespace wickbook::store {

template <typename T>
using Result = tl::expected<T, StoreError>;

enum class OpenMode { ReadWrite, ReadOnly };

/// One change to one observation.
struct ObservationChange {
    record::Uuid revision =
        record::Uuid::random(); ///< the same id again is the same save: it is not stored twice
    record::Uuid subject = record::Uuid::random(); ///< a new one for a new observation
    std::optional<std::int64_t> replaces; ///< sequence of the revision seen as newest; none: don't ask
    record::Observation values;
    record::Author author;
    /// When it was written down, where that is known from elsewhere (the sample's history, another book being
    /// salvaged); none: now, as for everything a person enters.
    std::optional<record::Instant> recordedAt;
};

/// What was stored: the stamp as it now stands in the book.
using Receipt = record::RevisionStamp;

/// Where the chain of revisions begins and ends: tells whether two files are of one book, and whether it
/// grew.
struct ChainMark {
    Checksum origin{}; ///< of the first revision: shared by all that grew out of one book
    Checksum head{};   ///< of the last
    std::int64_t count = 0;
    bool operator==(const ChainMark&) const = default;
};

/// A revision without its values: enough to compare two books.
struct RevisionBrief {
    record::RevisionStamp stamp;
    std::string kind; ///< "observation", or a fact's, as in resources/schema/0001_book.sql
};

/// Asked between rows of a long work; false stops it, and nothing of it stays.
using Progress = std::function<bool(std::int64_t done, std::int64_t total)>;

/// What verify found; empty: the book is sound.
struct VerifyProblem {
    std::string code;   ///< "pages", "chain", "head", "count", "index", "schema", "body", "stopped"
    std::string detail; ///< where, in plain words
    std::optional<std::int64_t> sequence;
};
struct VerifyReport {
    std::vector<VerifyProblem> problems;
    std::int64_t revisions = 0;
    std::int64_t observations = 0;
    [[nodiscard]] bool sound() const { return problems.empty(); }
};

/// Where live observations stand; each list in order.
struct LivePlaces {
    std::vector<record::ObservingHour> hours;
    std::vector<record::Instant> extras; ///< moments of those without an hour
};

class BulkAppend;

class Book {
public:
    /// A new book; error AlreadyThere over any existing path. Facts are stored as the first revisions.
    static Result<Book>
    create(const std::filesystem::path& path, const record::StationFacts& facts, const record::Author& author,
           std::shared_ptr<const record::Clock> clock = std::make_shared<record::SystemClock>());

    /// Opens a book. An older one is copied aside and migrated; a newer one or one that can't be written
    /// opens read-only (see readOnlyBecause). Errors: NoSuchFile, NotABook, Damaged, CannotOpen, Busy.
    static Result<Book>
    open(const std::filesystem::path& path, OpenMode mode = OpenMode::ReadWrite,
         std::shared_ptr<const record::Clock> clock = std::make_shared<record::SystemClock>());

    Book(Book&&) noexcept;
    Book& operator=(Book&&) noexcept;
    ~Book();

    [[nodiscard]] const std::filesystem::path& path() const;
    /// Why the book can't be written (NewerBook, ReadOnly), none when it can.
    [[nodiscard]] std::optional<StoreError> readOnlyBecause() const;

    // --- the station's facts -------------------------------------------------------------------
    [[nodiscard]] Result<record::StationRecord> station() const;
    /// Stores what differs between the facts in the book and these: each changed or new fact appends a
    /// revision. A fact missing from the new value is stored as withdrawn. One transaction.
    Result<std::vector<Receipt>> reviseFacts(const record::StationFacts& facts, const record::Author& author);
    /// Every revision of the checks' limits, oldest first.
    [[nodiscard]] Result<std::vector<record::LimitRevision>> limitHistory() const;

    // --- observations --------------------------------------------------------------------------
    /// Appends one change, durable when it returns. Errors: HourTaken, ChangedMeanwhile, NoSuchReading,
    /// storage errors.
    Result<Receipt> append(const ObservationChange& change);
    /// All or nothing, in one transaction. Stopped by progress: an empty vector, nothing stored.
    Result<std::vector<Receipt>> appendAll(std::span<const ObservationChange> changes,
                                           const Progress& progress = {});

    /// Begins a long work of appending in one transaction, part by part (bulk_append.h): nobody else writes
    /// meanwhile. Errors: what keeps the book from being written.
    Result<BulkAppend> bulkAppend();

    /// The hours and moments that are taken: little memory, whatever the length of the register.
    [[nodiscard]] Result<LivePlaces> livePlaces() const;
    /// Live observations (not withdrawn) with from ≤ instant < to, in time order.
    [[nodiscard]] Result<std::vector<record::StoredObservation>>
    observationsBetween(record::Instant from, record::Instant to) const;
    /// Live observations filed under the dates [from, to], in time order. An observation is filed under its
    /// hour's date, an extra reading under its local date.
    [[nodiscard]] Result<std::vector<record::StoredObservation>> observationsOn(record::StationDate from,
                                                                                record::StationDate to) const;
    /// Up to so many live observations before (instant < at) and from at on, in time order: work in
    /// proportion to the count asked for.
    [[nodiscard]] Result<std::vector<record::StoredObservation>> neighbours(record::Instant at, int before,
                                                                            int after) const;
    [[nodiscard]] Result<std::optional<record::StoredObservation>>
    observation(const record::Uuid& subject) const;
    [[nodiscard]] Result<std::optional<record::StoredObservation>>
    atHour(const record::ObservingHour& hour) const;
    /// Live observation read at exactly this moment, the one with an hour first.
    [[nodiscard]] Result<std::optional<record::StoredObservation>> atInstant(record::Instant instant) const;
    /// The observation withdrawn last of those read at exactly this moment or, where one is given, kept under
    /// this hour. For its history: a withdrawn reading takes no hour and counts nowhere.
    [[nodiscard]] Result<std::optional<record::StoredObservation>>
    withdrawnAt(record::Instant instant, const std::optional<record::ObservingHour>& hour) const;
    /// Every revision of one observation, oldest first.
    [[nodiscard]] Result<std::vector<record::ObservationRevision>> history(const record::Uuid& subject) const;
    /// Moments of the first and last live observation; none in an empty book.
    [[nodiscard]] Result<std::optional<std::pair<record::Instant, record::Instant>>> span() const;
    [[nodiscard]] Result<std::int64_t> observationCount() const;

    // --- the chain, for comparing books ---------------------------------------------------------
    /// As the book records it; only verify proves it. Zeros and no rows for a book without revisions.
    [[nodiscard]] Result<ChainMark> chainMark() const;
    /// The stored checksum of one revision; none where there is no such revision.
    [[nodiscard]] Result<std::optional<Checksum>> checksumAt(std::int64_t sequence) const;
    /// Revisions with a greater sequence, oldest first.
    [[nodiscard]] Result<std::vector<RevisionBrief>> revisionsAfter(std::int64_t sequence) const;
    /// Revisions of the station's facts with a greater sequence, oldest first.
    [[nodiscard]] Result<std::vector<RevisionBrief>> factRevisionsAfter(std::int64_t sequence) const;

    // --- the file ------------------------------------------------------------------------------
    /// Changes whenever another program has written to the book since.
    [[nodiscard]] Result<std::int64_t> externalVersion() const;
    /// Reads every page, the schema, the whole chain and the index over it.
    [[nodiscard]] Result<VerifyReport> verify(const Progress& progress = {}) const;
    /// A verified copy by the SQLite backup API, written beside, synced and renamed. Error AlreadyThere over
    /// an existing path.
    Result<void> backupTo(const std::filesystem::path& path) const;

private:
    friend class BulkAppend;
    struct State;
    explicit Book(std::unique_ptr<State> state);
    std::unique_ptr<State> state_;
};

} // namespace wickbook::store
