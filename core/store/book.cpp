// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/book.h"

#include "core/store/book_header.h"
#include "core/store/connection.h"
#include "core/store/facts_body.h"
#include "core/store/placement.h"
#include "core/store/revision_log.h"
#include "core/store/schema.h"

#include <fmt/format.h>
#include <sqlite3.h>
#include <unistd.h>

#include <cerrno>

namespace wickbook::store {

namespace {

Connection connect(const std::filesystem::path& path, const std::filesystem::path& file, int flags,
                   std::shared_ptr<const record::Clock> clock) {
    Connection connection;
    connection.path = path;
    connection.clock = std::move(clock);
    connection.database = std::make_unique<SQLite::Database>(file.string(), flags, kPatienceMilliseconds);
    setUp(connection.db());
    return connection;
}

/// Why the file can't be written by this person; none where it can.
std::optional<StoreError> whyNotWritable(const std::filesystem::path& path,
                                         const std::filesystem::path& file) {
    const auto answer = [&](const char* what) {
        return StoreError{StoreErrorKind::ReadOnly, path.string(),
                          std::string{what} + ": " + std::generic_category().message(errno)};
    };
    if (::access(file.c_str(), W_OK) != 0)
        return answer("the file can't be written");
    // The rollback journal is a new file beside the book.
    if (::access(file.parent_path().c_str(), W_OK | X_OK) != 0)
        return answer("the folder can't be written");
    return std::nullopt;
}

/// Errors of a file that is known to be a book by its header: what SQLite takes for no database is damage.
StoreError judged(StoreError error, bool journalBeside, bool writing) {
    if (error.kind == StoreErrorKind::NotABook)
        error.kind = StoreErrorKind::Damaged;
    if (journalBeside && !writing &&
        (error.kind == StoreErrorKind::ReadOnly || error.kind == StoreErrorKind::CannotOpen)) {
        error.kind = StoreErrorKind::CannotOpen;
        error.detail += " (a write was interrupted and must be taken back first: open the book once where it "
                        "can be written)";
    }
    return error;
}

/// SQLite reads what is missing of a last page as zeros.
void checkWhole(const Connection& connection, const std::filesystem::path& file) {
    const ReadGuard nobodyWrites(connection.db());
    const std::int64_t pages = connection.db().execAndGet("PRAGMA page_count").getInt64();
    const std::int64_t pageSize = connection.db().execAndGet("PRAGMA page_size").getInt64();
    const auto size = static_cast<std::int64_t>(std::filesystem::file_size(file));
    if (size < pages * pageSize)
        throw Refusal{connection.error(
            StoreErrorKind::Damaged,
            fmt::format("the file is cut short: {} of {} bytes are there", size, pages * pageSize))};
}

void checkSchema(const Connection& connection) {
    for (const std::string& difference : schemaDifferences(connection.db(), migrations())) {
        // What somebody added for themselves does no harm, except a trigger, which would run with our writes.
        const bool added = difference.ends_with("does not belong there");
        if (!added || difference.starts_with("the trigger"))
            throw Refusal{connection.error(StoreErrorKind::Damaged, difference)};
    }
}

} // namespace

Book::Book(std::unique_ptr<State> state) : state_(std::move(state)) {}
Book::Book(Book&&) noexcept = default;
Book& Book::operator=(Book&&) noexcept = default;
Book::~Book() = default;

const std::filesystem::path& Book::path() const {
    return state_->path;
}

std::optional<StoreError> Book::readOnlyBecause() const {
    return state_->readOnlyBecause;
}

Result<Book> Book::create(const std::filesystem::path& path, const record::StationFacts& facts,
                          const record::Author& author, std::shared_ptr<const record::Clock> clock) {
    const auto created = guarded(path, nullptr, [&]() -> Result<void> {
        if (auto free = checkNameIsFree(path); !free)
            return free;
        const std::vector<FactRow> rows = factRows(facts);
        FileBeside beside(path);
        if (auto made = beside.make(); !made)
            return made;
        std::unique_ptr<Connection> connection;
        auto written = guarded(path, nullptr, [&]() -> Result<void> {
            connection =
                std::make_unique<Connection>(connect(path, beside.path(), SQLite::OPEN_READWRITE, clock));
            return guarded(*connection, [&]() -> Result<void> {
                connection->db().exec("PRAGMA journal_mode=DELETE");
                connection->db().exec(fmt::format("PRAGMA application_id={}", kApplicationId).c_str());
                migrate(connection->db(), path, migrations());
                WriteGuard guard(connection->db());
                RevisionLog log(*connection);
                for (const FactRow& row : rows)
                    log.append(log.nextId(row.kind, row.subject, row.body), row.kind, row.subject, author,
                               row.body);
                log.finish();
                guard.commit();
                return {};
            });
        });
        connection.reset();
        if (!written)
            return written;
        return beside.place();
    });
    if (!created)
        return tl::unexpected(created.error());
    return open(path, OpenMode::ReadWrite, std::move(clock));
}

Result<Book> Book::open(const std::filesystem::path& path, OpenMode mode,
                        std::shared_ptr<const record::Clock> clock) {
    return guarded(path, nullptr, [&]() -> Result<Book> {
        std::error_code missing;
        std::filesystem::path file = std::filesystem::canonical(path, missing);
        if (missing)
            file = std::filesystem::absolute(path); // the header check says what is wrong
        const auto header = readBookHeader(file);
        if (!header) {
            StoreError error = header.error();
            error.path = path.string();
            return tl::unexpected(error);
        }
        std::optional<StoreError> readOnly;
        if (mode == OpenMode::ReadOnly)
            readOnly = StoreError{StoreErrorKind::ReadOnly, path.string(), "opened for reading only"};
        else
            readOnly = whyNotWritable(path, file);
        const auto newerBook = [&](int version) {
            return StoreError{
                StoreErrorKind::NewerBook, path.string(),
                fmt::format("the book has schema {}, this program knows {}", version, currentSchema())};
        };
        if (!readOnly && header->userVersion > currentSchema() && !header->journalBeside)
            readOnly = newerBook(header->userVersion);

        auto state = std::make_unique<State>();
        auto opened = guarded(path, nullptr, [&]() -> Result<void> {
            static_cast<Connection&>(*state) =
                connect(path, file, readOnly ? SQLite::OPEN_READONLY : SQLite::OPEN_READWRITE, clock);
            return guarded(*state, [&]() -> Result<void> {
                // The first read: SQLite takes an interrupted write back here.
                checkWhole(*state, file);
                const int version = state->db().execAndGet("PRAGMA user_version").getInt();
                if (!readOnly && sqlite3_db_readonly(state->db().getHandle(), "main") != 0)
                    readOnly =
                        StoreError{StoreErrorKind::ReadOnly, path.string(), "the file can't be written"};
                if (version > currentSchema()) {
                    readOnly = newerBook(version);
                    static_cast<Connection&>(*state) = connect(path, file, SQLite::OPEN_READONLY, clock);
                    state->newer = true;
                } else if (version < 1) {
                    return tl::unexpected(state->error(StoreErrorKind::Damaged,
                                                       fmt::format("schema {} was never a book's", version)));
                } else if (version < currentSchema()) {
                    if (readOnly)
                        return tl::unexpected(state->error(
                            StoreErrorKind::CannotOpen,
                            fmt::format(
                                "the book has schema {} and must be brought to {} first: open it once "
                                "where it can be written",
                                version, currentSchema())));
                    copyAndMigrate(state->db(), file, migrations(), clock->now());
                }
                if (!readOnly)
                    state->db().exec("PRAGMA journal_mode=DELETE");
                if (!state->newer)
                    checkSchema(*state);
                return {};
            });
        });
        if (!opened)
            return tl::unexpected(judged(opened.error(), header->journalBeside, !readOnly));
        state->readOnlyBecause = readOnly;
        return Book{std::move(state)};
    });
}

} // namespace wickbook::store
