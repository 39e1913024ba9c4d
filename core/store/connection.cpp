// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/connection.h"

#include <sqlite3.h>

namespace wickbook::store {

void setUp(SQLite::Database& database) {
    sqlite3_extended_result_codes(database.getHandle(), 1);
    database.setBusyTimeout(kPatienceMilliseconds);
    // A book that comes from somewhere else may carry a schema made to harm: nothing in it is trusted.
    sqlite3_db_config(database.getHandle(), SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
    database.exec("PRAGMA trusted_schema=OFF");
    database.exec("PRAGMA cell_size_check=ON");
    database.exec("PRAGMA foreign_keys=ON");
    database.exec("PRAGMA synchronous=EXTRA");
    // What a statement would have to take back alone is kept in memory and not in a file of its own.
    database.exec("PRAGMA temp_store=MEMORY");
}

WriteGuard::WriteGuard(SQLite::Database& database) : database_(database) {
    database_.exec("BEGIN IMMEDIATE");
}

WriteGuard::~WriteGuard() {
    // SQLite has already rolled back by itself after some errors.
    if (sqlite3_get_autocommit(database_.getHandle()) == 0)
        database_.tryExec("ROLLBACK");
}

void WriteGuard::commit() {
    database_.exec("COMMIT");
}

ReadGuard::ReadGuard(SQLite::Database& database) : database_(database) {
    if (sqlite3_get_autocommit(database_.getHandle()) != 0) {
        database_.exec("BEGIN");
        began_ = true;
    }
}

ReadGuard::~ReadGuard() {
    if (began_ && sqlite3_get_autocommit(database_.getHandle()) == 0)
        database_.tryExec("ROLLBACK");
}

} // namespace wickbook::store
