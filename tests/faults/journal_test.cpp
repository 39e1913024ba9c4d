// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/book_header.h"
#include "tests/faults/processes.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sqlite3.h>

#include <chrono>
#include <thread>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

namespace {

sqlite3* opened(const std::filesystem::path& path) {
    sqlite3* handle = nullptr;
    sqlite3_open(path.c_str(), &handle);
    return handle;
}

/// A write that reached the file and was cut off before its end: pages written, journal left beside.
void interruptedWrite(const std::filesystem::path& path, const char* writing) {
    apart([&] {
        sqlite3* handle = opened(path);
        // With next to no cache the changed pages go to the file before the transaction ends.
        sqlite3_exec(handle, "PRAGMA cache_size=1; PRAGMA cache_spill=1; BEGIN IMMEDIATE;", nullptr, nullptr,
                     nullptr);
        sqlite3_exec(handle, writing, nullptr, nullptr, nullptr);
        return 0;
    });
}

constexpr const char* kWriteOverEverything =
    "PRAGMA user_version=9; UPDATE chain SET count = 0; UPDATE observation SET instant = 0, filed_day = 0;"
    "CREATE TABLE ballast (x); INSERT INTO ballast WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 "
    "FROM n "
    "WHERE i < 500) SELECT randomblob(1000) FROM n;";

class ABookWithAnInterruptedWrite : public ::testing::Test {
protected:
    TempFolder folder;
    std::filesystem::path path = folder / "book";
    std::string before;
    void SetUp() override {
        {
            Book book = newBook(path);
            for (int i = 0; i < 40; ++i)
                ASSERT_TRUE(book.append(change(reading(i), static_cast<std::uint64_t>(i))));
        }
        before = bytesAt(path);
        interruptedWrite(path, kWriteOverEverything);
        ASSERT_TRUE(std::filesystem::exists(journalOf(path))) << "no journal: nothing to test";
        ASSERT_NE(bytesAt(path), before) << "nothing written: nothing to test";
    }
};

} // namespace

TEST_F(ABookWithAnInterruptedWrite, IsTakenBackToWhatItWas) {
    const auto book = Book::open(path);
    ASSERT_TRUE(book) << book.error().detail;
    EXPECT_FALSE(book->readOnlyBecause());
    EXPECT_EQ(problemsOf(*book), "");
    EXPECT_EQ(book->observationCount(), 40);
    EXPECT_FALSE(std::filesystem::exists(journalOf(path)));
    EXPECT_TRUE(bytesAt(path) == before);
}

TEST_F(ABookWithAnInterruptedWrite, IsTakenBackEvenWhereItsFirstPageIsTorn) {
    std::string torn = bytesAt(path);
    torn.replace(16, 84, std::string(84, '\xa5'));
    writeBytes(path, torn);
    const auto book = Book::open(path);
    ASSERT_TRUE(book) << book.error().detail;
    EXPECT_EQ(problemsOf(*book), "");
    EXPECT_TRUE(bytesAt(path) == before);
}

TEST_F(ABookWithAnInterruptedWrite, IsNotTouchedWhenOnlyReadingIsAsked) {
    const auto contents = contentsOf(folder.path());
    const auto book = Book::open(path, OpenMode::ReadOnly);
    ASSERT_FALSE(book);
    EXPECT_EQ(book.error().kind, StoreErrorKind::CannotOpen);
    EXPECT_THAT(book.error().detail, ::testing::HasSubstr("a write was interrupted"));
    EXPECT_TRUE(contentsOf(folder.path()) == contents);
}

TEST(ABookBesideAForeignJournal, IsNotWrittenTo) {
    const TempFolder folder;
    newBook(folder / "book");
    {
        sqlite3* handle = opened(folder / "foreign");
        sqlite3_exec(handle, "PRAGMA user_version=1; CREATE TABLE t (x); INSERT INTO t VALUES (1)", nullptr,
                     nullptr, nullptr);
        sqlite3_close(handle);
    }
    interruptedWrite(
        folder / "foreign",
        "PRAGMA user_version=2; INSERT INTO t WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 "
        "FROM n WHERE i < 500) SELECT randomblob(1000) FROM n;");
    ASSERT_TRUE(std::filesystem::exists(folder / "foreign-journal"));
    std::filesystem::rename(folder / "foreign-journal", folder / "book-journal");
    const auto contents = contentsOf(folder.path());
    const auto book = Book::open(folder / "book");
    ASSERT_FALSE(book);
    EXPECT_EQ(book.error().kind, StoreErrorKind::Damaged);
    EXPECT_TRUE(contentsOf(folder.path()) == contents);
}

TEST(ATextBesideABooksJournal, IsNotMadeABook) {
    const TempFolder folder;
    newBook(folder / "book");
    interruptedWrite(folder / "book", kWriteOverEverything);
    std::filesystem::rename(folder / "book-journal", folder / "text-journal");
    writeBytes(folder / "text", "dear diary");
    const auto contents = contentsOf(folder.path());
    const auto book = Book::open(folder / "text");
    ASSERT_FALSE(book);
    EXPECT_EQ(book.error().kind, StoreErrorKind::NotABook);
    EXPECT_TRUE(contentsOf(folder.path()) == contents);
}

TEST(ABookThatAnotherProgramHolds, IsWaitedForAndThenToldBusy) {
    const TempFolder folder;
    Book book = newBook(folder / "book");
    sqlite3* other = opened(folder / "book");
    ASSERT_EQ(sqlite3_exec(other, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr), SQLITE_OK);
    std::thread letGo([&] {
        std::this_thread::sleep_for(std::chrono::milliseconds(700));
        sqlite3_exec(other, "COMMIT", nullptr, nullptr, nullptr);
    });
    EXPECT_TRUE(book.append(change(reading(0), 0))) << "patience";
    letGo.join();

    ASSERT_EQ(sqlite3_exec(other, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr), SQLITE_OK);
    const auto began = std::chrono::steady_clock::now();
    const auto refused = book.append(change(reading(1), 1));
    const auto waited = std::chrono::steady_clock::now() - began;
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, StoreErrorKind::Busy) << refused.error().detail;
    EXPECT_GE(waited, std::chrono::seconds(9));
    EXPECT_EQ(book.observationCount(), 1) << "reading goes on meanwhile";
    sqlite3_exec(other, "COMMIT", nullptr, nullptr, nullptr);
    sqlite3_close(other);
    EXPECT_TRUE(book.append(change(reading(1), 1)));
}

TEST(OpeningABookASecondTime, DoesNotDropTheLockOfAWriteInTheSameProgram) {
    const TempFolder folder;
    newBook(folder / "book");
    sqlite3* writer = opened(folder / "book");
    ASSERT_EQ(sqlite3_exec(writer, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr), SQLITE_OK);
    ASSERT_TRUE(Book::open(folder / "book", OpenMode::ReadOnly));
    EXPECT_FALSE(Book::open(folder / "no such book"));
    // Seen from another process, the lock must still stand.
    const int result = apart([&] {
        sqlite3* other = opened(folder / "book");
        return sqlite3_exec(other, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr);
    });
    EXPECT_EQ(result, SQLITE_BUSY);
    sqlite3_close(writer);
}
