// SPDX-License-Identifier: GPL-3.0-or-later
// The chain as it stands recorded, for telling books apart and comparing them.
#include "core/store/connection.h"
#include "core/store/facts_body.h"
#include "core/store/revision_log.h"

#include <fmt/format.h>

#include <algorithm>

namespace wickbook::store {

namespace {

Checksum checksumFromColumn(const Connection& connection, const SQLite::Column& column) {
    const std::string bytes = column.getString();
    Checksum checksum{};
    if (bytes.size() != checksum.size())
        throw Refusal{connection.error(StoreErrorKind::Damaged, "a checksum is not 32 bytes long")};
    std::ranges::transform(bytes, checksum.begin(), [](char c) { return static_cast<std::uint8_t>(c); });
    return checksum;
}

std::vector<RevisionBrief> briefs(const Connection& connection, const char* where, std::int64_t sequence) {
    // Everything but the body, whose place readRow() expects something at.
    SQLite::Statement query(
        connection.db(),
        fmt::format("SELECT r.sequence, r.id, r.kind, r.subject, r.recorded_at, r.who, r.why, '' "
                    "FROM revision r WHERE r.sequence > ?1{} ORDER BY r.sequence",
                    where));
    query.bind(1, sequence);
    std::vector<RevisionBrief> found;
    while (query.executeStep()) {
        RevisionRow row = readRow(query);
        found.push_back({stampOf(row), std::move(row.kind)});
    }
    return found;
}

} // namespace

Result<ChainMark> Book::chainMark() const {
    return guarded(*state_, [&]() -> Result<ChainMark> {
        SQLite::Statement query(state_->db(), "SELECT c.head, c.count, r.checksum FROM chain c "
                                              "LEFT JOIN revision r ON r.sequence = 1");
        if (!query.executeStep())
            return tl::unexpected(
                state_->error(StoreErrorKind::Damaged, "the end of the chain is not recorded"));
        ChainMark mark;
        mark.head = checksumFromColumn(*state_, query.getColumn(0));
        mark.count = query.getColumn(1).getInt64();
        if (!query.getColumn(2).isNull())
            mark.origin = checksumFromColumn(*state_, query.getColumn(2));
        return mark;
    });
}

Result<std::optional<Checksum>> Book::checksumAt(std::int64_t sequence) const {
    return guarded(*state_, [&]() -> Result<std::optional<Checksum>> {
        SQLite::Statement query(state_->db(), "SELECT checksum FROM revision WHERE sequence = ?");
        query.bind(1, sequence);
        if (!query.executeStep())
            return std::optional<Checksum>{};
        return checksumFromColumn(*state_, query.getColumn(0));
    });
}

Result<std::vector<RevisionBrief>> Book::revisionsAfter(std::int64_t sequence) const {
    return guarded(*state_,
                   [&]() -> Result<std::vector<RevisionBrief>> { return briefs(*state_, "", sequence); });
}

Result<std::vector<RevisionBrief>> Book::factRevisionsAfter(std::int64_t sequence) const {
    return guarded(*state_, [&]() -> Result<std::vector<RevisionBrief>> {
        return briefs(*state_, " AND r.kind <> 'observation'", sequence);
    });
}

} // namespace wickbook::store
