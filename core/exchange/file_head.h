// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/csv.h"
#include "core/exchange/sef_reader.h"

#include <filesystem>
#include <istream>
#include <string_view>
#include <vector>

/// The beginning of a file, enough to say what it is and to show it to a person. Nothing is planned here.

namespace wickbook::exchange {

enum class FileKind { Csv, Sef, Binary, Empty };

/// Bytes that are enough for fileKindOf.
inline constexpr std::size_t kHeadBytes = 4096;
/// By the first bytes. Binary: control characters that no text has, and no mark of UTF-16.
FileKind fileKindOf(std::string_view head);

/// Whether a file is there and is a database, as every book is: data that go out are never written over one.
bool isDatabase(const std::filesystem::path& file);

/// The first rows as cells, the header (if there is one) among them; rows that can't be read are passed over.
struct FileHead {
    CsvFormat format;
    std::vector<std::vector<std::string>> rows;
    std::size_t columns = 0; ///< of the first row
};
FileHead readFileHead(std::istream& input, std::size_t mostRows, std::optional<char> separator = {});

/// Whether the first row looks like a reading rather than like names: it has a time or a number and no name
/// that a column is known by.
bool looksHeadless(const std::vector<std::vector<std::string>>& rows);

} // namespace wickbook::exchange
