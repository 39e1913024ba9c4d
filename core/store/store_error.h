// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace wickbook::store {

enum class StoreErrorKind {
    NoSuchFile,   ///< nothing at that path
    AlreadyThere, ///< a new book would stand where a file is
    NotABook,     ///< an ordinary file or another program's database
    Damaged,      ///< SQLite or the chain says so
    NewerBook,    ///< written by a later version: may be read, not written
    ReadOnly,     ///< the file, folder or disk can't be written
    Busy,         ///< another program held the book longer than the patience allows
    DiskFull,
    CannotOpen,       ///< permission, directory, name too long
    InputOutput,      ///< read or write failed below SQLite
    HourTaken,        ///< another live reading stands at that observing hour
    ChangedMeanwhile, ///< the revision to be replaced is no longer the newest
    NoSuchReading,
    OutOfMemory,
    Internal ///< a constraint or a bug; the message tells
};

/// What went wrong, where, and the cause as the system told it (with SQLite's extended code), for the
/// sentence and the log. A failed write has left the book as it was.
struct StoreError {
    StoreErrorKind kind = StoreErrorKind::Internal;
    std::string path;
    std::string detail;
};

} // namespace wickbook::store
