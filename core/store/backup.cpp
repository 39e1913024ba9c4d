// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup.h"

#include "core/store/connection.h"
#include "core/store/placement.h"

#include <SQLiteCpp/Backup.h>
#include <sqlite3.h>

#include <chrono>
#include <thread>

namespace wickbook::store {

void copyPages(SQLite::Database& source, const std::filesystem::path& target) {
    std::unique_ptr<SQLite::Database> copy;
    try {
        copy = std::make_unique<SQLite::Database>(target.string(), SQLite::OPEN_READWRITE,
                                                  kPatienceMilliseconds);
        sqlite3_extended_result_codes(copy->getHandle(), 1);
        // Whoever puts the file under its name syncs it once, whole. A sync here would hold the book against
        // other writers for as long as a slow disk takes.
        copy->exec("PRAGMA synchronous=OFF");
        SQLite::Backup backup(*copy, source);
        // All pages in one step, so that no other program's write can begin the copy again and again.
        const auto deadline =
            std::chrono::steady_clock::now() + std::chrono::milliseconds(kPatienceMilliseconds);
        int result = SQLITE_OK;
        while ((result = backup.executeStep(-1)) != SQLITE_DONE) {
            if ((result == SQLITE_BUSY || result == SQLITE_LOCKED) &&
                std::chrono::steady_clock::now() > deadline)
                throw SQLite::Exception("another program holds the book", result);
            std::this_thread::sleep_for(std::chrono::milliseconds(20));
        }
    } catch (const SQLite::Exception& exception) {
        // The error is the new file's, not the open book's: a full disk there is not one here.
        throw Refusal{errorFrom(exception, copy ? copy->getHandle() : nullptr, target)};
    }
}

Result<void> Book::backupTo(const std::filesystem::path& path) const {
    return guarded(*state_, [&]() -> Result<void> {
        if (auto free = checkNameIsFree(path); !free)
            return free;
        FileBeside beside(path);
        if (auto made = beside.make(); !made)
            return made;
        copyPages(state_->db(), beside.path());
        {
            auto copy = Book::open(beside.path(), OpenMode::ReadOnly, state_->clock);
            if (!copy)
                return tl::unexpected(copy.error());
            const auto report = copy->verify();
            if (!report)
                return tl::unexpected(report.error());
            if (!report->sound())
                return tl::unexpected(state_->error(
                    StoreErrorKind::Damaged, "the copy did not pass: " + report->problems.front().detail));
        }
        return beside.place();
    });
}

} // namespace wickbook::store
