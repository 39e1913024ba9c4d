// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/connection.h"
#include "core/store/schema.h"
#include "tests/core/store/book_testing.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

namespace {

/// The released steps and an invented next one.
std::vector<Migration> withNext(std::string_view sql) {
    std::vector<Migration> steps(migrations().begin(), migrations().end());
    steps.push_back({static_cast<int>(steps.size()) + 1, sql});
    return steps;
}

/// SQLite's header of 100 bytes counts the writes to each file for itself.
std::string pastHeader(const std::filesystem::path& path) {
    return bytesAt(path).substr(100);
}

} // namespace

TEST(ABackup, IsAVerifiedBookOfItsOwnAndNeverOverwrites) {
    const TempFolder folder;
    Book book = newBook(folder / "book");
    for (int i = 0; i < 20; ++i)
        ASSERT_TRUE(book.append(change(reading(i), static_cast<std::uint64_t>(i))));
    const auto done = book.backupTo(folder / "copy");
    ASSERT_TRUE(done) << done.error().detail;
    EXPECT_TRUE(pastHeader(folder / "copy") == pastHeader(folder / "book"));
    EXPECT_THAT(contentsOf(folder.path()), ::testing::SizeIs(2)) << "nothing half-made beside";
    const auto copy = Book::open(folder / "copy");
    EXPECT_EQ(copy->observationCount(), 20);
    EXPECT_EQ(problemsOf(*copy), "");

    ASSERT_TRUE(book.append(change(reading(20), 20)));
    const std::string before = bytesAt(folder / "copy");
    const auto again = book.backupTo(folder / "copy");
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().kind, StoreErrorKind::AlreadyThere);
    EXPECT_TRUE(bytesAt(folder / "copy") == before);
    EXPECT_EQ(book.backupTo(folder / "no/such/folder").error().kind, StoreErrorKind::CannotOpen);
}

TEST(ABackup, OfADamagedBookIsNotKept) {
    const TempFolder folder;
    {
        Book book = newBook(folder / "book");
        record::Observation o = reading(0);
        o.note = "FIND-ME";
        ASSERT_TRUE(book.append(change(o, 0)));
    }
    std::string bytes = bytesAt(folder / "book");
    bytes.replace(bytes.find("FIND-ME"), 4, "LOSE");
    writeBytes(folder / "book", bytes);
    const auto book = Book::open(folder / "book");
    ASSERT_TRUE(book);
    const auto refused = book->backupTo(folder / "copy");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, StoreErrorKind::Damaged);
    EXPECT_THAT(contentsOf(folder.path()), ::testing::SizeIs(1));
}

TEST(TheSchema, IsBuiltInAsTheFilesStand) {
    ASSERT_GE(migrations().size(), 1U);
    EXPECT_EQ(std::string{migrations()[0].sql},
              bytesAt(std::filesystem::path{WICKBOOK_SOURCE_DIR} / "resources/schema/0001_book.sql"));
    EXPECT_EQ(currentSchema(), static_cast<int>(migrations().size()));
}

TEST(AnOlderBook, IsCopiedAsideBeforeItIsBroughtUpToDate) {
    const TempFolder folder;
    {
        Book book = newBook(folder / "station.wbk");
        ASSERT_TRUE(book.append(change(reading(0), 0)));
    }
    const std::string before = bytesAt(folder / "station.wbk");
    const auto steps = withNext("CREATE TABLE absence (day INTEGER PRIMARY KEY) STRICT;");
    {
        SQLite::Database database((folder / "station.wbk").string(), SQLite::OPEN_READWRITE);
        setUp(database);
        const auto copy = copyAndMigrate(database, folder / "station.wbk", steps, at(kMarch2025));
        EXPECT_EQ(copy.filename(), "station before schema 2, 20250301T000000Z.wbk");
        EXPECT_TRUE(pastHeader(copy) == before.substr(100));
        EXPECT_EQ(database.execAndGet("PRAGMA user_version").getInt(), 2);
        EXPECT_EQ(database.execAndGet("SELECT count(*) FROM absence").getInt(), 0);
        EXPECT_THAT(schemaDifferences(database, steps), ::testing::IsEmpty());
        migrate(database, folder / "station.wbk", steps); // once more changes nothing
    }
    EXPECT_THAT(contentsOf(folder.path()), ::testing::SizeIs(2));
    // To this program the result is a newer book, whose readings it still shows.
    const auto book = Book::open(folder / "station.wbk");
    EXPECT_EQ(book->readOnlyBecause()->kind, StoreErrorKind::NewerBook);
    EXPECT_EQ(book->observationCount(), 1);
    EXPECT_EQ(problemsOf(*book), "");
}

TEST(AnOlderBook, WhoseChangeFailsStaysAsItWas) {
    const TempFolder folder;
    {
        Book book = newBook(folder / "station.wbk");
        ASSERT_TRUE(book.append(change(reading(0), 0)));
    }
    const std::string before = bytesAt(folder / "station.wbk");
    const auto steps = withNext("CREATE TABLE absence (day INTEGER PRIMARY KEY) STRICT; INSERT INTO nowhere "
                                "VALUES (1);");
    {
        SQLite::Database database((folder / "station.wbk").string(), SQLite::OPEN_READWRITE);
        setUp(database);
        EXPECT_THROW(copyAndMigrate(database, folder / "station.wbk", steps, at(kMarch2025)),
                     SQLite::Exception);
    }
    EXPECT_TRUE(bytesAt(folder / "station.wbk") == before);
    const auto book = Book::open(folder / "station.wbk");
    ASSERT_TRUE(book);
    EXPECT_FALSE(book->readOnlyBecause());
    EXPECT_EQ(problemsOf(*book), "");
}
