// SPDX-License-Identifier: GPL-3.0-or-later
// A damaged book beside which an interrupted write lies: the salvage reads it as it was before the write, as
// SQLite would leave it, and touches neither file.
#include "core/store/book_header.h"
#include "core/store/salvage_journal.h"
#include "tests/faults/salvage_case.h"

#include <gtest/gtest.h>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

namespace {

/// Rows past the store, so many of them, into the table of revisions: pages reach the file before the end.
void interruptedAppend(const std::filesystem::path& path, int rows) {
    apart([&] {
        sqlite3* handle = nullptr;
        sqlite3_open(path.c_str(), &handle);
        sqlite3_exec(handle, "PRAGMA cache_size=1; PRAGMA cache_spill=1; BEGIN IMMEDIATE;", nullptr, nullptr,
                     nullptr);
        const std::string sql =
            "INSERT INTO revision SELECT (SELECT max(sequence) FROM revision) + 1, randomblob(16), "
            "'observation', "
            "randomblob(16), 0, 'ab', '', '{' || hex(zeroblob(700)) || '}', randomblob(32);"
            "UPDATE chain SET count = count + 1;";
        for (int i = 0; i < rows; ++i)
            sqlite3_exec(handle, sql.c_str(), nullptr, nullptr, nullptr);
        return 0;
    });
}

using AnInterruptedBook = DamageCase;

} // namespace

TEST_F(AnInterruptedBook, IsReadAsSqliteWouldTakeItBackByteForByte) {
    make(60);
    int hot = 0;
    for (int rows = 1; rows < 120; rows += 9) {
        const TempFolder here;
        writeBytes(here / "damaged", sound);
        interruptedAppend(here / "damaged", rows);
        if (!std::filesystem::exists(journalOf(here / "damaged")))
            continue;
        const std::string file = bytesAt(here / "damaged");
        const std::string journal = bytesAt(journalOf(here / "damaged"));
        std::string mine = file;
        {
            const MemorySource fileBytes(file);
            const MemorySource journalBytes(journal);
            if (const auto taken = TakenBack::over(fileBytes, journalBytes)) {
                ASSERT_TRUE(taken->read(0, static_cast<std::size_t>(taken->size()), mine));
                ++hot;
            }
        }
        const auto outcome = salvageAt(here, std::to_string(rows) + " rows interrupted");
        ASSERT_TRUE(outcome.made);
        EXPECT_TRUE(outcome.report.chainKept);
        // Now SQLite may.
        const TempFolder there;
        writeBytes(there / "damaged", file);
        writeBytes(journalOf(there / "damaged"), journal);
        ASSERT_NE(askSqlite(there / "damaged", "SELECT 1 FROM chain"), std::vector<PlainRow>{});
        runSql(there / "damaged", "SELECT count(*) FROM chain");
        EXPECT_TRUE(bytesAt(there / "damaged") == mine) << rows;
    }
    EXPECT_GT(hot, 5) << "too few interrupted writes: this proved little";
}

TEST_F(AnInterruptedBook, LosesNothingWhereTheFileIsDamagedToo) {
    make(60);
    const TempFolder here;
    writeBytes(here / "damaged", sound);
    interruptedAppend(here / "damaged", 60);
    ASSERT_TRUE(std::filesystem::exists(journalOf(here / "damaged")));
    // The first page is torn; the journal holds it as it was.
    std::string torn = bytesAt(here / "damaged");
    torn.replace(0, 4096, std::string(4096, '\xa5'));
    writeBytes(here / "damaged", torn);
    const auto outcome = salvageAt(here, "torn first page");
    ASSERT_TRUE(outcome.made);
    EXPECT_TRUE(outcome.report.chainKept);
    EXPECT_TRUE(outcome.report.writeTakenBack);
}

TEST_F(AnInterruptedBook, IsNotMistakenByAnotherBooksJournal) {
    make(60);
    const TempFolder here;
    const TempFolder other;
    {
        Book book = newBook(other / "other");
        for (int i = 0; i < 150; ++i)
            ASSERT_TRUE(book.append(change(reading(200 + i), static_cast<std::uint64_t>(5000 + i))));
    }
    interruptedAppend(other / "other", 60);
    ASSERT_TRUE(std::filesystem::exists(journalOf(other / "other")));
    writeBytes(here / "damaged", sound);
    std::filesystem::copy_file(journalOf(other / "other"), journalOf(here / "damaged"));
    const auto outcome = salvageAt(here, "another book's journal");
    ASSERT_TRUE(outcome.made);
    EXPECT_EQ(outcome.missing, 0);
}

TEST_F(AnInterruptedBook, IsBoundedByWhateverTheJournalSays) {
    make(20);
    const TempFolder here;
    writeBytes(here / "damaged", sound);
    interruptedAppend(here / "damaged", 60);
    const std::string journal = bytesAt(journalOf(here / "damaged"));
    ASSERT_GT(journal.size(), 4096U);
    std::mt19937_64 random(20250323);
    for (int round = 0; round < trialCount(20, 400); ++round) {
        std::string hurt = journal;
        for (int i = 0; i <= round % 8; ++i)
            hurt[random() % (round % 2 == 0 ? 40 : hurt.size())] = static_cast<char>(random());
        if (round % 5 == 0)
            hurt.resize(random() % hurt.size());
        writeBytes(journalOf(here / "damaged"), hurt);
        std::filesystem::remove(here / "fresh");
        const auto report = salvaged(here / "damaged", here / "fresh");
        EXPECT_TRUE(report) << round;
        EXPECT_TRUE(bytesAt(journalOf(here / "damaged")) == hurt);
    }
}

TEST_F(AnInterruptedBook, IsReadBesideAWriterWhoseJournalIsItsOwn) {
    make(20);
    const TempFolder here;
    writeBytes(here / "damaged", sound);
    sqlite3* writer = nullptr;
    ASSERT_EQ(sqlite3_open((here / "damaged").c_str(), &writer), SQLITE_OK);
    ASSERT_EQ(sqlite3_exec(writer, "BEGIN IMMEDIATE; UPDATE chain SET count = 3;", nullptr, nullptr, nullptr),
              SQLITE_OK);
    const auto outcome = salvageAt(here, "beside a writer");
    ASSERT_TRUE(outcome.made);
    EXPECT_TRUE(outcome.report.chainKept);
    EXPECT_FALSE(outcome.report.writeTakenBack);
    sqlite3_exec(writer, "ROLLBACK", nullptr, nullptr, nullptr);
    sqlite3_close(writer);
}
