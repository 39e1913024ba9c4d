// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/schema.h"

#include "core/store/backup.h"
#include "core/store/connection.h"
#include "core/store/placement.h"

#include <fmt/format.h>
#include <sqlite3.h>

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <utility>

namespace wickbook::store {

namespace {

using SchemaObjects = std::map<std::pair<std::string, std::string>, std::string>;

SchemaObjects schemaObjects(SQLite::Database& database) {
    SchemaObjects objects;
    SQLite::Statement query(database, "SELECT type, name, tbl_name || char(10) || coalesce(sql, '') "
                                      "FROM sqlite_schema WHERE name NOT LIKE 'sqlite_stat%'");
    while (query.executeStep())
        objects[{query.getColumn(0).getString(), query.getColumn(1).getString()}] =
            query.getColumn(2).getString();
    return objects;
}

int userVersion(SQLite::Database& database) {
    return database.execAndGet("PRAGMA user_version").getInt();
}

std::string compactTime(record::Instant instant) {
    return date::format("%Y%m%dT%H%M%SZ", instant);
}

/// "station before schema 2, 20250301T090000Z.wbk"; with "2", "3" … behind the time where a copy of the same
/// second is there already, of a program that was stopped and started again.
std::filesystem::path freeCopyName(const std::filesystem::path& path, int schema, record::Instant now) {
    constexpr int kMostTries = 100;
    for (int attempt = 1;; ++attempt) {
        const std::filesystem::path copy =
            path.parent_path() /
            fmt::format("{} before schema {}, {}{}{}", path.stem().string(), schema, compactTime(now),
                        attempt == 1 ? "" : fmt::format(" {}", attempt), path.extension().string());
        const auto free = checkNameIsFree(copy);
        if (free)
            return copy;
        if (free.error().kind != StoreErrorKind::AlreadyThere || attempt == kMostTries)
            throw Refusal{free.error()};
    }
}

/// SQLite's integrity check passes over a list of free pages that begins nowhere and yet is said to hold some
/// (seen with 3.40.1), and the next page that is wanted then is "damage" (file format, header bytes 32 to
/// 39).
std::optional<std::string> freeListProblem(SQLite::Database& database) {
    sqlite3_file* file = nullptr;
    std::array<unsigned char, 8> bytes{};
    if (sqlite3_file_control(database.getHandle(), "main", SQLITE_FCNTL_FILE_POINTER, &file) != SQLITE_OK ||
        file == nullptr || file->pMethods == nullptr ||
        file->pMethods->xRead(file, bytes.data(), static_cast<int>(bytes.size()), 32) != SQLITE_OK)
        return std::nullopt; // a file that can't be read is told by the check itself
    const auto isZero = [&](std::size_t from) {
        return std::all_of(&bytes.at(from), &bytes.at(from) + 4,
                           [](unsigned char byte) { return byte == 0; });
    };
    if (isZero(0) == isZero(4))
        return std::nullopt;
    return fmt::format("the list of free pages is said to hold {} and {}",
                       database.execAndGet("PRAGMA freelist_count").getInt64(),
                       isZero(0) ? "begins nowhere" : "begins somewhere");
}

} // namespace

int currentSchema() {
    return migrations().back().number;
}

void migrate(SQLite::Database& database, const std::filesystem::path& path,
             std::span<const Migration> steps) {
    for (const Migration& step : steps) {
        WriteGuard guard(database);
        // Asked under the lock: another program may have done it meanwhile.
        if (userVersion(database) >= step.number)
            continue;
        database.exec(std::string{step.sql}.c_str());
        database.exec(fmt::format("PRAGMA user_version={}", step.number).c_str());
        const std::string answer = database.execAndGet("PRAGMA quick_check(1)").getString();
        if (answer != "ok")
            throw Refusal{{StoreErrorKind::Damaged, path.string(),
                           fmt::format("after the change to schema {}: {}", step.number, answer)}};
        guard.commit();
    }
}

std::filesystem::path copyAndMigrate(SQLite::Database& database, const std::filesystem::path& path,
                                     std::span<const Migration> steps, record::Instant now) {
    const std::filesystem::path copy = freeCopyName(path, steps.back().number, now);
    FileBeside beside(copy);
    if (auto made = beside.make(); !made)
        throw Refusal{made.error()};
    copyPages(database, beside.path());
    {
        SQLite::Database copied(beside.path().string(), SQLite::OPEN_READONLY, kPatienceMilliseconds);
        if (const auto problems = pageProblems(copied); !problems.empty())
            throw Refusal{{StoreErrorKind::Damaged, path.string(), problems.front()}};
    }
    if (auto placed = beside.place(); !placed)
        throw Refusal{placed.error()};
    migrate(database, path, steps);
    return copy;
}

std::vector<std::string> schemaDifferences(SQLite::Database& database, std::span<const Migration> steps) {
    SQLite::Database model(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    for (const Migration& step : steps)
        model.exec(std::string{step.sql}.c_str());
    const SchemaObjects expected = schemaObjects(model);
    const SchemaObjects found = schemaObjects(database);
    std::vector<std::string> differences;
    for (const auto& [key, sql] : expected) {
        const auto it = found.find(key);
        if (it == found.end())
            differences.push_back(fmt::format("the {} \"{}\" is missing", key.first, key.second));
        else if (it->second != sql)
            differences.push_back(fmt::format("the {} \"{}\" is not as it should be", key.first, key.second));
    }
    for (const auto& [key, sql] : found) {
        if (!expected.contains(key))
            differences.push_back(fmt::format("the {} \"{}\" does not belong there", key.first, key.second));
    }
    return differences;
}

std::vector<std::string> pageProblems(SQLite::Database& database) {
    std::vector<std::string> problems;
    SQLite::Statement query(database, "PRAGMA integrity_check(100)");
    while (query.executeStep()) {
        std::string line = query.getColumn(0).getString();
        if (line != "ok")
            problems.push_back(std::move(line));
    }
    if (auto list = freeListProblem(database); list && problems.empty())
        problems.push_back(std::move(*list));
    return problems;
}

} // namespace wickbook::store
