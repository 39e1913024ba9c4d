// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/clock.h"
#include "core/store/body_error.h"
#include "core/store/book.h"
#include "core/store/sqlite_error.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <filesystem>
#include <memory>
#include <new>
#include <optional>
#include <utility>

/// An open book as the rest of the room sees it, the guards round its transactions, and the one place where
/// exceptions become values.

namespace wickbook::store {

/// More rows than any book can have: a number beyond it is damage, and sums with it never overflow.
inline constexpr std::int64_t kMostRowsOfABook = 1LL << 48;

inline constexpr int kPatienceMilliseconds = 10'000;

struct Connection {
    std::filesystem::path path; ///< as the person gave it
    std::unique_ptr<SQLite::Database> database;
    std::shared_ptr<const record::Clock> clock;
    std::optional<StoreError> readOnlyBecause;
    bool newer = false; ///< written by a later version: its schema is not judged

    [[nodiscard]] SQLite::Database& db() const { return *database; }
    [[nodiscard]] StoreError error(StoreErrorKind kind, std::string detail) const {
        return {kind, path.string(), std::move(detail)};
    }
};

/// The pragmas every connection to a book works under. Throws SQLite::Exception.
void setUp(SQLite::Database& database);

/// BEGIN IMMEDIATE … COMMIT; rolls back when it goes without commit(). SQLiteCpp's own Transaction begins
/// DEFERRED, where two writers can each hold a read lock and neither can go on.
class WriteGuard {
public:
    explicit WriteGuard(SQLite::Database& database);
    WriteGuard(const WriteGuard&) = delete;
    WriteGuard& operator=(const WriteGuard&) = delete;
    ~WriteGuard();
    void commit();

private:
    SQLite::Database& database_;
};

/// Holds one state of the book over several reads.
class ReadGuard {
public:
    explicit ReadGuard(SQLite::Database& database);
    ReadGuard(const ReadGuard&) = delete;
    ReadGuard& operator=(const ReadGuard&) = delete;
    ~ReadGuard();

private:
    SQLite::Database& database_;
    bool began_ = false;
};

/// Runs work that returns a Result; whatever is thrown in it becomes that Result's error.
template <typename Work>
auto guarded(const std::filesystem::path& path, sqlite3* handle, Work&& work) -> decltype(work()) {
    try {
        return std::forward<Work>(work)();
    } catch (const Refusal& refusal) {
        return tl::unexpected(refusal.error);
    } catch (const SQLite::Exception& exception) {
        return tl::unexpected(errorFrom(exception, handle, path));
    } catch (const MalformedBody& malformed) {
        return tl::unexpected(StoreError{StoreErrorKind::Damaged, path.string(), malformed.what()});
    } catch (const UnkeepableValue& unkeepable) {
        return tl::unexpected(StoreError{StoreErrorKind::Internal, path.string(), unkeepable.what()});
    } catch (const std::bad_alloc&) {
        return tl::unexpected(StoreError{StoreErrorKind::OutOfMemory, path.string(), "out of memory"});
    } catch (const std::exception& exception) {
        return tl::unexpected(StoreError{StoreErrorKind::Internal, path.string(), exception.what()});
    }
}

template <typename Work>
auto guarded(const Connection& connection, Work&& work) -> decltype(work()) {
    return guarded(connection.path, connection.db().getHandle(), std::forward<Work>(work));
}

struct Book::State : Connection {};

} // namespace wickbook::store
