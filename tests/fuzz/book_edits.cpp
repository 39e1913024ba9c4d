// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/book_edits.h"

#include "tests/fuzz/memory_folder.h"
#include "tests/fuzz/rechained.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>
#include <array>

namespace wickbook::fuzz {

namespace {

constexpr std::size_t kPage = 4096;

/// Fields of SQLite's header that a reader goes by ("Database File Format", section 1.3).
constexpr std::array<std::size_t, 12> kHeaderFields{16, 18, 20, 24, 28, 32, 36, 44, 52, 56, 60, 68};

constexpr std::array kColumns{"revision.body",     "revision.who",          "revision.kind",
                              "revision.subject",  "revision.recorded_at",  "revision.checksum",
                              "chain.head",        "chain.count",           "observation.instant",
                              "observation.live",  "observation.filed_day", "observation.hour_minute",
                              "revision.sequence", "revision.id",           "observation.sequence"};

constexpr std::array kSchemaChanges{
    "PRAGMA user_version=2",
    "PRAGMA user_version=0",
    "PRAGMA application_id=7",
    "DROP VIEW reading",
    "DROP INDEX observation_by_day",
    "DROP INDEX revision_by_subject",
    "CREATE TABLE mine (x)",
    "CREATE TRIGGER mine AFTER INSERT ON observation BEGIN DELETE FROM observation; END",
    "DROP TABLE observation",
    "DROP TABLE chain",
    "ALTER TABLE observation RENAME COLUMN live TO lives",
    "DELETE FROM observation",
    "INSERT INTO observation SELECT zeroblob(16), 1, 1, 0, 0, NULL, NULL, 1",
    "ANALYZE",
    "CREATE INDEX mine ON revision (who)",
    "PRAGMA auto_vacuum=2; VACUUM",
    "PRAGMA page_size=512; VACUUM",
    "PRAGMA encoding='UTF-16'",
    "PRAGMA journal_mode=WAL"};

/// The edits, taken one by one; what the input no longer holds reads as nothing.
class EditReader {
public:
    explicit EditReader(std::string_view bytes) : rest_(bytes) {}
    [[nodiscard]] bool atEnd() const { return rest_.empty(); }
    std::size_t number(std::size_t bytes) {
        std::size_t value = 0;
        for (const char c : take(bytes)) {
            value = (value << 8U) | static_cast<unsigned char>(c);
        }
        return value;
    }
    std::string_view take(std::size_t count) {
        const std::string_view taken = rest_.substr(0, count);
        rest_.remove_prefix(taken.size());
        return taken;
    }

private:
    std::string_view rest_;
};

void put(std::string& bytes, std::size_t at, std::string_view what) {
    for (std::size_t i = 0; i < what.size() && at + i < bytes.size(); ++i) {
        bytes[at + i] = what[i];
    }
}

/// Lets SQLite change the file, with every guard of the book's own schema taken off.
template <typename Work>
void throughSqlite(EditedBook& book, const std::filesystem::path& folder, Work work) {
    book.forged = true;
    const std::filesystem::path path = folder / "forged.wbk";
    writeWhole(path, book.bytes);
    try {
        SQLite::Database database(path.string(), SQLite::OPEN_READWRITE);
        database.exec("PRAGMA ignore_check_constraints=ON; PRAGMA synchronous=OFF");
        const std::string guard =
            database.execAndGet("SELECT sql FROM sqlite_schema WHERE name = 'revision_is_never_changed'")
                .getString();
        database.exec("DROP TRIGGER revision_is_never_changed");
        work(database);
        // As it stood, so that the schema is not what gives the forgery away.
        database.exec(guard);
    } catch (const SQLite::Exception&) {
        // Damaged by an earlier edit, or not to be done: whatever SQLite made of it is an input too.
    }
    book.bytes = readWhole(path);
    std::error_code ignored;
    std::filesystem::remove(path, ignored);
    std::filesystem::remove(path.string() + "-journal", ignored);
    std::filesystem::remove(path.string() + "-wal", ignored);
    std::filesystem::remove(path.string() + "-shm", ignored);
}

/// "revision.body" of the row so far down, counted round.
void setCell(SQLite::Database& database, std::string_view column, std::size_t row, std::string_view value) {
    const auto dot = column.find('.');
    const std::string table{column.substr(0, dot)};
    const std::string name{column.substr(dot + 1)};
    const std::string number{value.substr(0, value.find_first_not_of("-0123456789"))};
    const std::int64_t rows = database.execAndGet("SELECT count(*) FROM " + table).getInt64();
    if (rows == 0) {
        return;
    }
    SQLite::Statement update(database, "UPDATE " + table + " SET " + name +
                                           " = ?1 WHERE rowid = (SELECT rowid FROM " + table +
                                           " ORDER BY rowid LIMIT 1 OFFSET ?2)");
    const std::string text{value};
    if (!number.empty() && number.size() == value.size() && number.size() < 18) {
        update.bind(1, static_cast<std::int64_t>(std::strtoll(number.c_str(), nullptr, 10)));
    } else if (name == "subject" || name == "head" || name == "checksum" || name == "id") {
        update.bind(1, text.data(), static_cast<int>(text.size()));
    } else {
        update.bind(1, text);
    }
    update.bind(2, static_cast<std::int64_t>(row) % rows);
    update.exec();
}

void copyPage(std::string& bytes, std::size_t from, std::size_t to) {
    const std::size_t pages = bytes.size() / kPage;
    if (pages > 0) {
        const std::string page = bytes.substr(from % pages * kPage, kPage);
        put(bytes, to % pages * kPage, page);
    }
}

} // namespace

EditedBook editedBook(std::string_view edits, const std::filesystem::path& folder) {
    EditedBook book{soundBook(), {}, false};
    EditReader reader{edits};
    for (int forgeries = 0; !reader.atEnd();) {
        std::string& bytes = book.bytes;
        const char form = reader.take(1).front();
        const auto place = [&] { return bytes.empty() ? 0 : reader.number(3) % bytes.size(); };
        if (form == 'o') {
            const std::size_t at = place();
            put(bytes, at, reader.take(reader.number(1)));
        } else if (form == 'x') {
            const std::size_t at = place();
            const auto mask = static_cast<unsigned char>(reader.number(1));
            if (at < bytes.size()) {
                bytes[at] = static_cast<char>(static_cast<unsigned char>(bytes[at]) ^ mask);
            }
        } else if (form == 't') {
            bytes.resize(place());
        } else if (form == 'p') {
            const std::size_t from = reader.number(1);
            copyPage(bytes, from, reader.number(1));
        } else if (form == 'a') {
            bytes += reader.take(reader.number(1));
        } else if (form == 'f') {
            const std::size_t page = reader.number(1);
            const auto fill = static_cast<char>(reader.number(1));
            put(bytes, bytes.empty() ? 0 : page * kPage % bytes.size(), std::string(kPage, fill));
        } else if (form == 'h') {
            const std::size_t field = kHeaderFields.at(reader.number(1) % kHeaderFields.size());
            put(bytes, field, reader.take(field < 24 ? 2 : 4));
        } else if (form == 'j') {
            book.journal = reader.take(reader.number(1));
        } else if ((form == 'c' || form == 'k' || form == 's') && ++forgeries <= 4) {
            const std::string_view column =
                form == 'c' ? kColumns.at(reader.number(1) % kColumns.size()) : "";
            const std::size_t row = form == 'k' ? 0 : reader.number(1);
            const std::string_view value = form == 'c' ? reader.take(reader.number(1)) : "";
            throughSqlite(book, folder, [&](SQLite::Database& database) {
                if (form == 'c') {
                    setCell(database, column, row, value);
                } else if (form == 'k') {
                    rechain(database);
                } else {
                    database.exec(kSchemaChanges.at(row % kSchemaChanges.size()));
                }
            });
        }
    }
    return book;
}

} // namespace wickbook::fuzz
