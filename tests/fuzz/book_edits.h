// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/fuzz/targets.h"

#include <filesystem>
#include <string>
#include <string_view>

/// A sound book and what can be done to it. An input is a row of small edits, so that a few bytes reach every
/// page, and a kept input stays small. The forms of an edit:
///
///   'o' at at at n bytes…   these bytes there          'x' at at at byte   one byte exclusive-or
///   't' at at at            cut there                  'p' from to         one page over another
///   'a' n bytes…            behind the end             'f' page byte       a page filled
///   'h' field v v v v       a field of the header      'j' n bytes…        a journal beside the file
///   'c' column row n text…  a cell set through SQLite  'k'                 the chain made whole again
///   's' number              a change of the schema
///
/// at is taken by the file's length, so every edit fits every book. What is cut off by the input's end is
/// left out.

namespace wickbook::fuzz {

/// One of everything that a book keeps, made once: the file's bytes.
const std::string& soundBook();

struct EditedBook {
    std::string bytes;
    std::string journal; ///< empty: none
    /// Only the file's bytes were touched: what SHA-256 keeps, nobody has forged.
    bool forged = false;
};
/// folder: where a file may be made to let SQLite do the forging.
EditedBook editedBook(std::string_view edits, const std::filesystem::path& folder);

} // namespace wickbook::fuzz
