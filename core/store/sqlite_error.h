// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/store_error.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <filesystem>
#include <string>

/// What SQLite says, turned into what the program can speak of. The extended code and the system's own reason
/// stay in the detail, for the log and for whoever helps.

namespace wickbook::store {

/// Thrown inside the room to carry an error out of a depth; never leaves it.
struct Refusal {
    StoreError error;
};

/// "SQLITE_IOERR_WRITE"; the number alone for a code this table doesn't know.
std::string extendedCodeName(int code);

/// Pre: thrown by this connection just now (its system reason is asked for), or handle is nullptr.
StoreError errorFrom(const SQLite::Exception& exception, sqlite3* handle, const std::filesystem::path& path);

/// From a failed system call.
StoreError errorFromSystem(int errorNumber, const std::filesystem::path& path, const std::string& doing);

} // namespace wickbook::store
