// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/instant.h"
#include "core/store/book.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <filesystem>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// The numbered SQL files of resources/schema, built into the program, and how a book is brought from one to
/// the next: a verified copy first, then each file whole inside one transaction that also sets user_version.

namespace wickbook::store {

struct Migration {
    int number;
    std::string_view sql;
};

/// 1, 2, … without gaps. Generated from resources/schema.
std::span<const Migration> migrations();
int currentSchema();

/// Runs every migration past the book's user_version, one transaction each. Throws SQLite::Exception or
/// Refusal, and then the failed one has left no trace.
void migrate(SQLite::Database& database, const std::filesystem::path& path, std::span<const Migration> steps);

/// Copies the book aside ("station before schema 2, 20250301T090000Z.wbk"), verifies the copy, migrates.
/// The copy stays. Returns where it stands. Throws as migrate.
std::filesystem::path copyAndMigrate(SQLite::Database& database, const std::filesystem::path& path,
                                     std::span<const Migration> steps, record::Instant now);

/// How the schema of a database differs from what the migrations make; empty: not at all. Each line names one
/// table, index, trigger or view. Throws SQLite::Exception.
std::vector<std::string> schemaDifferences(SQLite::Database& database, std::span<const Migration> steps);

/// What is wrong with the pages: lines of PRAGMA integrity_check other than "ok", and what it passes over.
/// Pre: no transaction has written. Throws SQLite::Exception.
std::vector<std::string> pageProblems(SQLite::Database& database);

} // namespace wickbook::store
