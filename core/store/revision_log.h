// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/chain.h"
#include "core/store/connection.h"

#include <optional>
#include <string>

/// Appends to the table "revision" and its chain. Lives inside one write transaction: it reads the end of the
/// chain when it is made and writes the new one in finish().

namespace wickbook::store {

/// Columns of a revision in the order that readRow() expects, from a table or alias r.
inline constexpr const char* kRowColumns =
    "r.sequence, r.id, r.kind, r.subject, r.recorded_at, r.who, r.why, r.body";

RevisionRow readRow(SQLite::Statement& query);
/// Throws MalformedBody where an identity is not 16 bytes long or a name not UTF-8.
record::RevisionStamp stampOf(const RevisionRow& row);

void bindBytes(SQLite::Statement& statement, int index, const std::string& bytes);

class RevisionLog {
public:
    /// Throws Refusal(Damaged) where the end of the chain is not what the last revision says: nothing is
    /// built upon a broken chain.
    explicit RevisionLog(const Connection& connection);

    /// The revision with this id, if it is stored.
    [[nodiscard]] std::optional<RevisionRow> find(const record::Uuid& id);

    /// Throws UnkeepableValue where the author is not UTF-8.
    Receipt append(const record::Uuid& id, std::string_view kind, const record::Uuid& subject,
                   const record::Author& author, std::string body,
                   std::optional<record::Instant> recordedAt = {});

    /// An id that follows from the chain and the contents, for revisions that no caller names: a book made
    /// twice from the same facts at the same moment is the same book.
    [[nodiscard]] record::Uuid nextId(std::string_view kind, const record::Uuid& subject,
                                      std::string_view body) const;

    void finish();

private:
    std::int64_t count_ = 0;
    Checksum head_{};
    record::Instant now_{};
    SQLite::Statement insert_;
    SQLite::Statement find_;
    SQLite::Statement update_;
};

} // namespace wickbook::store
