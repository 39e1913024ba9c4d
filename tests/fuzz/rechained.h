// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <SQLiteCpp/SQLiteCpp.h>

/// The chain made whole again over whatever the revisions say: a book that somebody forged with care, so that
/// what lies behind the checksums is tried too. Throws SQLite::Exception.

namespace wickbook::fuzz {

void rechain(SQLite::Database& database);

} // namespace wickbook::fuzz
