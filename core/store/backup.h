// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <SQLiteCpp/SQLiteCpp.h>

#include <filesystem>

namespace wickbook::store {

/// Copies every page of an open book into a new file by the SQLite backup API: one state of the book, even
/// while another program writes. Pre: target is an empty file. Throws SQLite::Exception or Refusal.
void copyPages(SQLite::Database& source, const std::filesystem::path& target);

} // namespace wickbook::store
