// SPDX-License-Identifier: GPL-3.0-or-later
// The station's facts: read by laying their newest revisions together, written by appending what differs.
#include "core/store/book_queries.h"
#include "core/store/connection.h"
#include "core/store/facts_body.h"
#include "core/store/revision_log.h"

#include <fmt/format.h>

#include <map>
#include <utility>

namespace wickbook::store {

namespace {

/// The newest row of each fact, in the order the facts first came into the book.
std::vector<FactRow> newestFacts(SQLite::Database& database) {
    std::vector<FactRow> facts;
    std::map<std::pair<std::string, record::Uuid>, std::size_t> places;
    SQLite::Statement query(database, queries::facts());
    while (query.executeStep()) {
        RevisionRow row = readRow(query);
        if (!isFactKind(row.kind))
            continue;
        const record::Uuid subject = stampOf(row).subject;
        const auto [place, isNew] = places.try_emplace({row.kind, subject}, facts.size());
        if (isNew)
            facts.push_back({row.kind, subject, std::move(row.body)});
        else
            facts[place->second].body = std::move(row.body);
    }
    return facts;
}

} // namespace

Result<record::StationRecord> Book::station() const {
    return guarded(*state_, [&]() -> Result<record::StationRecord> {
        record::StationFacts facts;
        for (const FactRow& row : newestFacts(state_->db()))
            addFact(facts, row);
        return record::StationRecord{std::move(facts)};
    });
}

Result<std::vector<record::LimitRevision>> Book::limitHistory() const {
    return guarded(*state_, [&]() -> Result<std::vector<record::LimitRevision>> {
        std::vector<record::LimitRevision> history;
        SQLite::Statement query(state_->db(), queries::facts());
        while (query.executeStep()) {
            const RevisionRow row = readRow(query);
            if (row.kind != kind::kLimit)
                continue;
            LimitBody limit = limitFrom(row.body);
            history.push_back({stampOf(row), std::move(limit.limit), limit.value, limit.withdrawn});
        }
        return history;
    });
}

Result<std::vector<Receipt>> Book::reviseFacts(const record::StationFacts& facts,
                                               const record::Author& author) {
    if (state_->readOnlyBecause)
        return tl::unexpected(*state_->readOnlyBecause);
    return guarded(*state_, [&]() -> Result<std::vector<Receipt>> {
        const std::vector<FactRow> wanted = factRows(facts);
        std::vector<Receipt> receipts;
        WriteGuard guard(state_->db());
        std::map<std::pair<std::string, record::Uuid>, std::string> present;
        for (FactRow& row : newestFacts(state_->db()))
            present.emplace(std::pair{row.kind, row.subject}, std::move(row.body));
        RevisionLog log(*state_);
        const auto append = [&](const std::string& factKind, const record::Uuid& subject,
                                const std::string& body) {
            receipts.push_back(
                log.append(log.nextId(factKind, subject, body), factKind, subject, author, body));
        };
        for (const FactRow& row : wanted) {
            const auto found = present.find({row.kind, row.subject});
            if (found == present.end() || found->second != row.body)
                append(row.kind, row.subject, row.body);
            if (found != present.end())
                present.erase(found);
        }
        for (const auto& [key, body] : present) {
            // A book is one station's: another identity is another book, not a change.
            if (key.first == kind::kStation)
                return tl::unexpected(
                    state_->error(StoreErrorKind::Internal, "these are the facts of another station"));
            if (!isWithdrawn(body))
                append(key.first, key.second, withdrawnBody(body));
        }
        if (receipts.empty())
            return receipts;
        log.finish();
        guard.commit();
        return receipts;
    });
}

} // namespace wickbook::store
