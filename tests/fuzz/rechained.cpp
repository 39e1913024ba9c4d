// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/rechained.h"

#include "core/store/chain.h"
#include "core/store/revision_log.h"

#include <string>

namespace wickbook::fuzz {

void rechain(SQLite::Database& database) {
    store::Checksum head{};
    std::int64_t count = 0;
    database.exec("BEGIN");
    {
        SQLite::Statement query(database, std::string{"SELECT "} + store::kRowColumns +
                                              " FROM revision r ORDER BY r.sequence LIMIT 1000");
        SQLite::Statement update(database, "UPDATE revision SET checksum = ?1 WHERE sequence = ?2");
        while (query.executeStep()) {
            const store::RevisionRow row = store::readRow(query);
            head = store::chainChecksum(head, row);
            ++count;
            store::bindBytes(update, 1, store::bytesOf(head));
            update.bind(2, row.sequence);
            update.exec();
            update.reset();
        }
    }
    SQLite::Statement end(database, "UPDATE chain SET head = ?1, count = ?2");
    store::bindBytes(end, 1, store::bytesOf(head));
    end.bind(2, count);
    end.exec();
    database.exec("COMMIT");
}

} // namespace wickbook::fuzz
