// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/facts_body.h"
#include "core/store/observation_body.h"
#include "core/store/observation_index.h"
#include "core/store/revision_log.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

/// Appending changes to observations within one transaction: the revisions, the chain and the finding aid.
/// Whether an hour is taken is asked when the finding aid follows, so that readings may change places.

namespace wickbook::store {

/// How an observation stands after the changes so far.
struct PendingObservation {
    std::int64_t sequence = 0;
    std::int64_t revisions = 0;
    const record::Observation* values = nullptr;
};

class Appending {
public:
    explicit Appending(const Connection& connection)
        : connection_(connection)
        , log_(connection)
        , index_(connection)
        , otherKind_(connection.db(),
                     "SELECT 1 FROM revision WHERE subject = ? AND kind <> 'observation' LIMIT 1")
        , highestRevision_(highest(connection, "SELECT max(id) FROM revision"))
        , highestSubject_(highest(connection, "SELECT max(subject) FROM revision")) {}

    /// Pre: the change outlives the next follow() or finish().
    Receipt append(const ObservationChange& change) {
        std::string body = observationBody(change.values);
        // What is greater than all that is there needs not be looked for. Identities grow, so that a register
        // that is brought in goes by without a search for each.
        if (change.revision <= highestRevision_)
            if (const auto stored = log_.find(change.revision))
                return sameSave(*stored, change, body);
        const auto [sequence, revisions] = newest(change);
        if (change.replaces && *change.replaces != sequence)
            throw Refusal{connection_.error(
                StoreErrorKind::ChangedMeanwhile,
                fmt::format("revision {} was to be replaced, the newest is {}", *change.replaces, sequence))};
        Receipt receipt = log_.append(change.revision, kind::kObservation, change.subject, change.author,
                                      std::move(body), change.recordedAt);
        highestRevision_ = std::max(highestRevision_, change.revision);
        highestSubject_ = std::max(highestSubject_, change.subject);
        pending_[change.subject] = {receipt.sequence, revisions + 1, &change.values};
        return receipt;
    }

    /// Brings the finding aid up to the changes so far, whose values may be forgotten then.
    void follow() {
        for (const auto& [subject, change] : pending_)
            if (change.revisions > 1) // a new one holds no hour yet
                index_.release(subject);
        for (const auto& [subject, change] : pending_)
            index_.put(subject, *change.values, change.sequence, change.revisions);
        for (const auto& [subject, change] : pending_)
            index_.expectFound(subject, change.sequence);
        pending_.clear();
    }

    void finish() {
        follow();
        log_.finish();
    }

private:
    /// The greatest identity of a column; all zeros where there is none.
    static record::Uuid highest(const Connection& connection, const char* query) {
        SQLite::Statement statement(connection.db(), query);
        record::Uuid found;
        if (statement.executeStep() && !statement.isColumnNull(0)) {
            const std::string bytes = statement.getColumn(0).getString();
            std::copy_n(bytes.begin(), std::min(bytes.size(), found.bytes.size()), found.bytes.begin());
        }
        return found;
    }

    /// The same id again: a save that was tried twice, or a mistake that must not pass for one.
    Receipt sameSave(const RevisionRow& stored, const ObservationChange& change,
                     const std::string& body) const {
        if (stored.kind != kind::kObservation || stored.subject != bytesOf(change.subject) ||
            stored.body != body || stored.who != change.author.who || stored.why != change.author.why)
            throw Refusal{connection_.error(
                StoreErrorKind::Internal,
                fmt::format("revision {} is already stored with other contents", change.revision.toText()))};
        return stampOf(stored);
    }

    /// Newest sequence and count of revisions so far; zeros for a new observation.
    std::pair<std::int64_t, std::int64_t> newest(const ObservationChange& change) {
        if (change.subject > highestSubject_ && !change.replaces)
            return {0, 0};
        if (const auto it = pending_.find(change.subject); it != pending_.end())
            return {it->second.sequence, it->second.revisions};
        if (const auto found = index_.newest(change.subject))
            return {found->sequence, found->revisions};
        if (change.replaces)
            throw Refusal{connection_.error(StoreErrorKind::NoSuchReading, change.subject.toText())};
        otherKind_.reset();
        bindBytes(otherKind_, 1, bytesOf(change.subject));
        if (otherKind_.executeStep())
            throw Refusal{connection_.error(
                StoreErrorKind::Internal,
                fmt::format("{} is a fact of the station, not a reading", change.subject.toText()))};
        return {0, 0};
    }

    const Connection& connection_;
    RevisionLog log_;
    ObservationIndex index_;
    SQLite::Statement otherKind_;
    record::Uuid highestRevision_; ///< of the book and of what was appended since
    record::Uuid highestSubject_;
    std::map<record::Uuid, PendingObservation> pending_;
};

} // namespace wickbook::store
