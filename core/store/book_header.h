// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/store_error.h"

#include <tl/expected.hpp>

#include <cstdint>
#include <filesystem>

/// Whether a file is a book, told from its first bytes before SQLite opens it: an empty file opens as a sound
/// empty database, and another program's database would be written to.
/// The bytes are read through SQLite's own file layer: closing a file by other means would drop the locks
/// that this very process holds on it (POSIX).

namespace wickbook::store {

inline constexpr std::int32_t kApplicationId = 0x57424B31; ///< "WBK1"

struct BookHeader {
    std::int32_t userVersion = 0;
    bool journalBeside = false; ///< an unfinished write, by another program now or by one that was stopped
};

/// Errors: NoSuchFile, CannotOpen (directory, permission, not a plain file), NotABook, Damaged (cut short).
/// Where a journal lies beside that holds the first page, that page decides: it is what SQLite will restore.
/// Pre: path is absolute and has no symbolic link left in it.
tl::expected<BookHeader, StoreError> readBookHeader(const std::filesystem::path& path);

/// "book.wbk-journal" for "book.wbk".
std::filesystem::path journalOf(const std::filesystem::path& path);

} // namespace wickbook::store
