// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/salvage.h"
#include "core/store/salvage_reader.h"
#include "tests/core/store/book_testing.h"

#include <sqlite3.h>

#include <algorithm>
#include <set>
#include <string>
#include <tuple>
#include <vector>

/// What the cases of the salvage share: SQLite's own answer to what a file holds, read through its C
/// interface past every part of the store, and a salvage with words made up here.

namespace wickbook::store::testing {

/// A row of a table as SQLite hands it out: every value with its type, as text.
using PlainRow = std::vector<std::string>;

/// What SQLite says is in a file; "error" rows where it can't.
inline std::vector<PlainRow> askSqlite(const std::filesystem::path& path, const std::string& question) {
    std::vector<PlainRow> rows;
    sqlite3* handle = nullptr;
    sqlite3_stmt* statement = nullptr;
    int result =
        sqlite3_open_v2(path.c_str(), &handle, SQLITE_OPEN_READONLY | SQLITE_OPEN_EXRESCODE, nullptr);
    if (result == SQLITE_OK)
        result = sqlite3_prepare_v2(handle, question.c_str(), -1, &statement, nullptr);
    while (result == SQLITE_OK || result == SQLITE_ROW) {
        result = sqlite3_step(statement);
        if (result != SQLITE_ROW)
            break;
        PlainRow row;
        for (int i = 0; i < sqlite3_column_count(statement); ++i) {
            const auto* bytes = static_cast<const char*>(sqlite3_column_blob(statement, i));
            const auto length = static_cast<std::size_t>(sqlite3_column_bytes(statement, i));
            row.push_back(std::to_string(sqlite3_column_type(statement, i)) + ":" +
                          (bytes == nullptr ? std::string{} : std::string{bytes, length}));
        }
        rows.push_back(std::move(row));
    }
    if (result != SQLITE_DONE)
        rows.push_back({"error"});
    sqlite3_finalize(statement);
    sqlite3_close(handle);
    return rows;
}

inline constexpr const char* kAllRevisions = "SELECT sequence, id, kind, subject, recorded_at, who, why, "
                                             "body, checksum FROM revision ORDER BY sequence";

/// The same rows from the salvage's own reader, in the same form; copies taken together.
inline std::set<PlainRow> foundIn(const std::string& bytes) {
    std::set<PlainRow> rows;
    for (const FoundRevision& found : revisionsIn(bytes)) {
        const RevisionRow& row = found.row;
        rows.insert({"1:" + std::to_string(row.sequence), "4:" + row.id, "3:" + row.kind, "4:" + row.subject,
                     "1:" + std::to_string(row.recordedAt), "3:" + row.who, "3:" + row.why, "3:" + row.body,
                     "4:" + found.checksum});
    }
    return rows;
}

inline std::set<PlainRow> asSet(const std::vector<PlainRow>& rows) {
    return {rows.begin(), rows.end()};
}

inline const SalvageWords kSalvageWords{{"cd", "salvaged"}, "bytes changed", "hour claimed twice", "Unnamed"};

inline Result<SalvageReport> salvaged(const std::filesystem::path& from, const std::filesystem::path& to,
                                      const Progress& progress = {}) {
    return salvage(from, to, kSalvageWords, std::make_shared<StandingClock>(at(kMarch2025 + 30 * 86400)),
                   progress);
}

inline std::string rangesText(const std::vector<SequenceRange>& ranges) {
    std::string text;
    for (const SequenceRange& range : ranges)
        text += std::to_string(range.first) + "-" + std::to_string(range.last) + " ";
    return text;
}

/// Runs SQL on a file past the store.
inline void runSql(const std::filesystem::path& path, const std::string& sql) {
    sqlite3* handle = nullptr;
    sqlite3_open(path.c_str(), &handle);
    char* message = nullptr;
    const int result = sqlite3_exec(handle, sql.c_str(), nullptr, nullptr, &message);
    EXPECT_EQ(result, SQLITE_OK) << (message == nullptr ? "" : message);
    sqlite3_free(message);
    sqlite3_close(handle);
}

} // namespace wickbook::store::testing
