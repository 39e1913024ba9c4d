// SPDX-License-Identifier: GPL-3.0-or-later
// What is asked of a book. Every question about observations goes through the table "observation"; the values
// always come out of the revision it points to.
#include "core/store/book_queries.h"
#include "core/store/connection.h"
#include "core/store/facts_body.h"
#include "core/store/observation_body.h"
#include "core/store/revision_log.h"

#include <fmt/format.h>

#include <algorithm>

namespace wickbook::store {

namespace {

using Observations = std::vector<record::StoredObservation>;

std::int64_t secondsOf(record::Instant instant) {
    return instant.time_since_epoch().count();
}

/// The values of a row, with its place in the book in the message where they can't be read.
record::Observation valuesOf(const RevisionRow& row) {
    try {
        return observationFromBody(row.body);
    } catch (const MalformedBody& malformed) {
        throw MalformedBody(fmt::format("revision {}: {}", row.sequence, malformed.what()));
    }
}

record::StoredObservation stored(SQLite::Statement& query) {
    const RevisionRow row = readRow(query);
    record::StoredObservation observation;
    observation.stamp = stampOf(row);
    observation.values = valuesOf(row);
    observation.revisionCount = query.getColumn(8).getInt();
    return observation;
}

Observations all(SQLite::Statement& query) {
    Observations observations;
    while (query.executeStep())
        observations.push_back(stored(query));
    return observations;
}

std::optional<record::StoredObservation> first(SQLite::Statement& query) {
    if (!query.executeStep())
        return std::nullopt;
    return stored(query);
}

} // namespace

Result<Observations> Book::observationsBetween(record::Instant from, record::Instant to) const {
    return guarded(*state_, [&]() -> Result<Observations> {
        SQLite::Statement query(state_->db(), queries::between());
        query.bind(1, secondsOf(from));
        query.bind(2, secondsOf(to));
        return all(query);
    });
}

Result<Observations> Book::observationsOn(record::StationDate from, record::StationDate to) const {
    return guarded(*state_, [&]() -> Result<Observations> {
        SQLite::Statement query(state_->db(), queries::filedOn());
        query.bind(1, from.time_since_epoch().count());
        query.bind(2, to.time_since_epoch().count());
        return all(query);
    });
}

Result<Observations> Book::neighbours(record::Instant at, int before, int after) const {
    return guarded(*state_, [&]() -> Result<Observations> {
        const ReadGuard oneState(state_->db());
        SQLite::Statement earlier(state_->db(), queries::earlier());
        earlier.bind(1, secondsOf(at));
        // SQLite takes a negative limit for none at all.
        earlier.bind(2, std::max(before, 0));
        Observations observations = all(earlier);
        std::ranges::reverse(observations);
        SQLite::Statement later(state_->db(), queries::later());
        later.bind(1, secondsOf(at));
        later.bind(2, std::max(after, 0));
        std::ranges::move(all(later), std::back_inserter(observations));
        return observations;
    });
}

Result<std::optional<record::StoredObservation>> Book::observation(const record::Uuid& subject) const {
    return guarded(*state_, [&]() -> Result<std::optional<record::StoredObservation>> {
        SQLite::Statement query(state_->db(), queries::bySubject());
        bindBytes(query, 1, bytesOf(subject));
        return first(query);
    });
}

Result<std::optional<record::StoredObservation>> Book::atHour(const record::ObservingHour& hour) const {
    return guarded(*state_, [&]() -> Result<std::optional<record::StoredObservation>> {
        SQLite::Statement query(state_->db(), queries::atHour());
        query.bind(1, hour.date.time_since_epoch().count());
        query.bind(2, static_cast<std::int64_t>(hour.hour.count()));
        return first(query);
    });
}

Result<std::optional<record::StoredObservation>> Book::atInstant(record::Instant instant) const {
    return guarded(*state_, [&]() -> Result<std::optional<record::StoredObservation>> {
        SQLite::Statement query(state_->db(), queries::atInstant());
        query.bind(1, secondsOf(instant));
        return first(query);
    });
}

Result<std::optional<record::StoredObservation>>
Book::withdrawnAt(record::Instant instant, const std::optional<record::ObservingHour>& hour) const {
    return guarded(*state_, [&]() -> Result<std::optional<record::StoredObservation>> {
        SQLite::Statement query(state_->db(), queries::withdrawnAt());
        query.bind(1, secondsOf(instant));
        if (hour) { // unbound is NULL, which equals nothing
            query.bind(2, static_cast<std::int64_t>(hour->date.time_since_epoch().count()));
            query.bind(3, static_cast<std::int64_t>(hour->hour.count()));
        }
        return first(query);
    });
}

Result<std::vector<record::ObservationRevision>> Book::history(const record::Uuid& subject) const {
    return guarded(*state_, [&]() -> Result<std::vector<record::ObservationRevision>> {
        SQLite::Statement query(state_->db(), queries::history());
        bindBytes(query, 1, bytesOf(subject));
        std::vector<record::ObservationRevision> revisions;
        while (query.executeStep()) {
            const RevisionRow row = readRow(query);
            revisions.push_back({stampOf(row), valuesOf(row)});
        }
        return revisions;
    });
}

Result<std::optional<std::pair<record::Instant, record::Instant>>> Book::span() const {
    using Span = std::optional<std::pair<record::Instant, record::Instant>>;
    return guarded(*state_, [&]() -> Result<Span> {
        SQLite::Statement query(state_->db(), "SELECT (SELECT min(instant) FROM observation WHERE live = 1), "
                                              "(SELECT max(instant) FROM observation WHERE live = 1)");
        if (!query.executeStep() || query.getColumn(0).isNull())
            return Span{};
        return Span{std::in_place, record::Instant{std::chrono::seconds{query.getColumn(0).getInt64()}},
                    record::Instant{std::chrono::seconds{query.getColumn(1).getInt64()}}};
    });
}

Result<std::int64_t> Book::observationCount() const {
    return guarded(*state_, [&]() -> Result<std::int64_t> {
        return state_->db().execAndGet("SELECT count(*) FROM observation WHERE live = 1").getInt64();
    });
}

Result<std::int64_t> Book::externalVersion() const {
    return guarded(*state_, [&]() -> Result<std::int64_t> {
        return state_->db().execAndGet("PRAGMA data_version").getInt64();
    });
}

} // namespace wickbook::store
