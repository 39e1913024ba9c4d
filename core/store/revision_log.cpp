// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/revision_log.h"

#include <fmt/format.h>

#include <algorithm>

namespace wickbook::store {

namespace {

record::Uuid uuidOf(const std::string& bytes) {
    record::Uuid uuid;
    if (bytes.size() != uuid.bytes.size())
        throw MalformedBody("an identity is not 16 bytes long");
    std::ranges::transform(bytes, uuid.bytes.begin(), [](char c) { return static_cast<std::uint8_t>(c); });
    return uuid;
}

} // namespace

RevisionRow readRow(SQLite::Statement& query) {
    return {query.getColumn(0).getInt64(),  query.getColumn(1).getString(), query.getColumn(2).getString(),
            query.getColumn(3).getString(), query.getColumn(4).getInt64(),  query.getColumn(5).getString(),
            query.getColumn(6).getString(), query.getColumn(7).getString()};
}

record::RevisionStamp stampOf(const RevisionRow& row) {
    if (!isUtf8(row.who) || !isUtf8(row.why))
        throw MalformedBody(fmt::format("the author of revision {} is not UTF-8", row.sequence));
    record::RevisionStamp stamp;
    stamp.sequence = row.sequence;
    stamp.id = uuidOf(row.id);
    stamp.subject = uuidOf(row.subject);
    stamp.recordedAt = record::Instant{std::chrono::seconds{row.recordedAt}};
    stamp.author = {row.who, row.why};
    return stamp;
}

void bindBytes(SQLite::Statement& statement, int index, const std::string& bytes) {
    statement.bind(index, bytes.data(), static_cast<int>(bytes.size()));
}

RevisionLog::RevisionLog(const Connection& connection)
    : now_(connection.clock->now())
    , insert_(connection.db(),
              "INSERT INTO revision (sequence, id, kind, subject, recorded_at, who, why, body, "
              "checksum) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)")
    , find_(connection.db(), fmt::format("SELECT {} FROM revision r WHERE r.id = ?", kRowColumns))
    , update_(connection.db(), "UPDATE chain SET head = ?, count = ? WHERE one = 1") {
    SQLite::Statement end(
        connection.db(),
        "SELECT c.head, c.count, coalesce(r.sequence, 0), coalesce(r.checksum, zeroblob(32)) "
        "FROM chain c LEFT JOIN revision r ON r.sequence = (SELECT max(sequence) FROM revision)");
    const bool found = end.executeStep();
    const std::string head = found ? end.getColumn(0).getString() : std::string{};
    if (!found || head.size() != head_.size() || head != end.getColumn(3).getString() ||
        end.getColumn(1).getInt64() != end.getColumn(2).getInt64() || end.getColumn(1).getInt64() < 0 ||
        end.getColumn(1).getInt64() > kMostRowsOfABook)
        throw Refusal{connection.error(StoreErrorKind::Damaged,
                                       "the end of the chain of revisions is not where it should be")};
    std::ranges::transform(head, head_.begin(), [](char c) { return static_cast<std::uint8_t>(c); });
    count_ = end.getColumn(1).getInt64();
}

std::optional<RevisionRow> RevisionLog::find(const record::Uuid& id) {
    find_.reset();
    bindBytes(find_, 1, bytesOf(id));
    if (!find_.executeStep())
        return std::nullopt;
    RevisionRow row = readRow(find_);
    find_.reset();
    return row;
}

Receipt RevisionLog::append(const record::Uuid& id, std::string_view kind, const record::Uuid& subject,
                            const record::Author& author, std::string body,
                            std::optional<record::Instant> recordedAt) {
    if (!isUtf8(author.who) || !isUtf8(author.why))
        throw UnkeepableValue("the author or the reason is not UTF-8");
    const RevisionRow row{count_ + 1,
                          bytesOf(id),
                          std::string{kind},
                          bytesOf(subject),
                          recordedAt.value_or(now_).time_since_epoch().count(),
                          author.who,
                          author.why,
                          std::move(body)};
    const Checksum checksum = chainChecksum(head_, row);
    insert_.reset();
    insert_.bind(1, row.sequence);
    bindBytes(insert_, 2, row.id);
    insert_.bind(3, row.kind);
    bindBytes(insert_, 4, row.subject);
    insert_.bind(5, row.recordedAt);
    insert_.bind(6, row.who);
    insert_.bind(7, row.why);
    insert_.bind(8, row.body);
    bindBytes(insert_, 9, bytesOf(checksum));
    insert_.exec();
    head_ = checksum;
    count_ = row.sequence;
    return {row.sequence, id, subject, recordedAt.value_or(now_), author};
}

record::Uuid RevisionLog::nextId(std::string_view kind, const record::Uuid& subject,
                                 std::string_view body) const {
    std::string text = bytesOf(head_);
    text.append(kind).append(bytesOf(subject)).append(body);
    return uuidFromText(text);
}

void RevisionLog::finish() {
    bindBytes(update_, 1, bytesOf(head_));
    update_.bind(2, count_);
    update_.exec();
}

} // namespace wickbook::store
