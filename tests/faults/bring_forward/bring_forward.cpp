// SPDX-License-Identifier: GPL-3.0-or-later
// Brings a book to an invented next schema as the program will bring it to a real one: bring_forward BOOK.
// Meant to be killed, and to run on failing disks.
#include "core/store/connection.h"
#include "tests/faults/invented_schema.h"

#include <cstdio>

using namespace wickbook;
using namespace wickbook::store;

int main(int argc, char** argv) {
    if (argc != 2) {
        std::fputs("usage: bring_forward BOOK\n", stderr);
        return 2;
    }
    const std::filesystem::path path = argv[1];
    const auto steps = store::testing::schemasWithAnInventedNext();
    const auto brought = guarded(path, nullptr, [&]() -> Result<void> {
        SQLite::Database database(path.string(), SQLite::OPEN_READWRITE, kPatienceMilliseconds);
        setUp(database);
        if (database.execAndGet("PRAGMA user_version").getInt() < steps.back().number)
            copyAndMigrate(database, path, steps, record::SystemClock().now());
        return {};
    });
    if (!brought) {
        std::fprintf(stderr, "%d %s\n", static_cast<int>(brought.error().kind),
                     brought.error().detail.c_str());
        return 3;
    }
    return 0;
}
