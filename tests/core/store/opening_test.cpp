// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/book_header.h"
#include "tests/core/store/book_testing.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sqlite3.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <unistd.h>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

namespace {

void sql(const std::filesystem::path& path, const char* text) {
    sqlite3* handle = nullptr;
    ASSERT_EQ(sqlite3_open(path.c_str(), &handle), SQLITE_OK);
    char* message = nullptr;
    EXPECT_EQ(sqlite3_exec(handle, text, nullptr, nullptr, &message), SQLITE_OK) << message;
    sqlite3_free(message);
    sqlite3_close(handle);
}

/// Opens in both modes, expects this error and that not a byte in the folder changed.
void expectRefused(const TempFolder& folder, const std::string& name, StoreErrorKind kind) {
    const auto before = contentsOf(folder.path());
    for (const OpenMode mode : {OpenMode::ReadWrite, OpenMode::ReadOnly}) {
        const auto book = Book::open(folder / name, mode);
        ASSERT_FALSE(book) << name;
        EXPECT_EQ(book.error().kind, kind) << name << ": " << book.error().detail;
        EXPECT_EQ(book.error().path, (folder / name).string());
        EXPECT_FALSE(book.error().detail.empty());
    }
    EXPECT_TRUE(contentsOf(folder.path()) == before) << name << " or its folder was written to";
}

} // namespace

TEST(ANewBook, HoldsItsFactsAndIsSoundAndAloneInItsFolder) {
    const TempFolder folder;
    {
        const Book book = newBook(folder / "station.wbk");
        EXPECT_EQ(book.path(), folder / "station.wbk");
        EXPECT_FALSE(book.readOnlyBecause());
        const auto station = book.station();
        ASSERT_TRUE(station);
        EXPECT_EQ(station->facts(), inventedStation());
        EXPECT_EQ(problemsOf(book), "");
        EXPECT_EQ(book.observationCount(), 0);
        EXPECT_FALSE(book.span()->has_value());
    }
    EXPECT_THAT(contentsOf(folder.path()), ::testing::SizeIs(1)) << "one file at rest";
    const auto again = Book::open(folder / "station.wbk");
    ASSERT_TRUE(again);
    EXPECT_EQ(again->station()->facts(), inventedStation());
}

TEST(ANewBook, MadeTwiceFromTheSameFactsAtTheSameMomentIsTheSame) {
    const TempFolder folder;
    newBook(folder / "a.wbk");
    newBook(folder / "b.wbk");
    EXPECT_TRUE(bytesAt(folder / "a.wbk") == bytesAt(folder / "b.wbk"));
}

TEST(ANewBook, NeverStandsWhereSomethingIs) {
    const TempFolder folder;
    newBook(folder / "book.wbk");
    writeBytes(folder / "empty.wbk", "");
    writeBytes(folder / "text.wbk", "dear diary");
    std::filesystem::create_directory(folder / "folder.wbk");
    std::filesystem::create_symlink(folder / "nowhere", folder / "broken-link.wbk");
    writeBytes(folder / "orphan.wbk-journal", "left behind");
    const auto before = contentsOf(folder.path());
    for (const char* name :
         {"book.wbk", "empty.wbk", "text.wbk", "folder.wbk", "broken-link.wbk", "orphan.wbk"}) {
        const auto book = Book::create(folder / name, inventedStation(), kAuthor);
        ASSERT_FALSE(book) << name;
        EXPECT_EQ(book.error().kind, StoreErrorKind::AlreadyThere) << name << ": " << book.error().detail;
    }
    EXPECT_TRUE(contentsOf(folder.path()) == before);
}

TEST(ANewBook, NeedsAFolderAndANameThatTheDiskTakes) {
    const TempFolder folder;
    for (const std::filesystem::path& path :
         {folder / "no/such/folder.wbk", folder / (std::string(300, 'n') + ".wbk"),
          std::filesystem::path{}}) {
        const auto book = Book::create(path, inventedStation(), kAuthor);
        ASSERT_FALSE(book) << path;
        EXPECT_EQ(book.error().kind, StoreErrorKind::CannotOpen) << book.error().detail;
    }
    EXPECT_TRUE(contentsOf(folder.path()).empty()) << "nothing half-made stays behind";
}

TEST(ANewBook, WithFactsThatCantBeKeptIsNotMade) {
    const TempFolder folder;
    record::StationFacts facts = inventedStation();
    facts.name = "\xff";
    const auto book = Book::create(folder / "a.wbk", facts, kAuthor);
    ASSERT_FALSE(book);
    EXPECT_EQ(book.error().kind, StoreErrorKind::Internal);
    EXPECT_TRUE(contentsOf(folder.path()).empty());
}

TEST(AFileThatIsNoBook, IsToldByKindAndNeverWrittenTo) {
    const TempFolder folder;
    writeBytes(folder / "empty", "");
    writeBytes(folder / "text", "date,dry,wet\n2025-03-01,16.0,14.0\n");
    writeBytes(folder / "long", std::string(10'000, 'x'));
    writeBytes(folder / "short", "SQLite format 3");
    sql(folder / "foreign", "CREATE TABLE readings(dry REAL); INSERT INTO readings VALUES (16.0)");
    expectRefused(folder, "empty", StoreErrorKind::NotABook);
    expectRefused(folder, "text", StoreErrorKind::NotABook);
    expectRefused(folder, "long", StoreErrorKind::NotABook);
    expectRefused(folder, "short", StoreErrorKind::NotABook);
    expectRefused(folder, "foreign", StoreErrorKind::NotABook);
    expectRefused(folder, "missing", StoreErrorKind::NoSuchFile);
    expectRefused(folder, "empty/below", StoreErrorKind::NoSuchFile);
    expectRefused(folder, std::string(300, 'n'), StoreErrorKind::CannotOpen);
    std::filesystem::create_directory(folder / "folder");
    expectRefused(folder, "folder", StoreErrorKind::CannotOpen);
    ASSERT_EQ(::mkfifo((folder / "pipe").c_str(), 0644), 0);
    for (const OpenMode mode : {OpenMode::ReadWrite, OpenMode::ReadOnly}) {
        const auto book = Book::open(folder / "pipe", mode);
        ASSERT_FALSE(book);
        EXPECT_EQ(book.error().kind, StoreErrorKind::CannotOpen);
    }
}

TEST(ADamagedBook, CutShortOrOverwrittenIsToldAndNeverWrittenTo) {
    const TempFolder folder;
    newBook(folder / "book");
    const std::string whole = bytesAt(folder / "book");
    for (const std::size_t length : {std::size_t{50}, std::size_t{100}, std::size_t{512}, std::size_t{4096},
                                     whole.size() - 4096, whole.size() - 1}) {
        const TempFolder here;
        writeBytes(here / "cut", whole.substr(0, length));
        expectRefused(here, "cut", StoreErrorKind::Damaged);
    }
    const TempFolder here;
    std::string overwritten = whole;
    overwritten.replace(100, 4000, std::string(4000, '\xa5'));
    writeBytes(here / "first-page", overwritten);
    expectRefused(here, "first-page", StoreErrorKind::Damaged);
    overwritten = whole;
    overwritten.replace(0, 16, 16, 'x');
    const TempFolder there;
    writeBytes(there / "no-magic", overwritten);
    expectRefused(there, "no-magic", StoreErrorKind::NotABook);
}

TEST(ABookWithAMeddledSchema, IsRefusedWhereItsOwnPartsDifferOrATriggerWasAdded) {
    const TempFolder folder;
    newBook(folder / "index");
    sql(folder / "index", "DROP INDEX observation_by_hour");
    expectRefused(folder, "index", StoreErrorKind::Damaged);
    newBook(folder / "trigger");
    sql(folder / "trigger", "CREATE TRIGGER spy AFTER INSERT ON revision BEGIN DELETE FROM observation; END");
    expectRefused(folder, "trigger", StoreErrorKind::Damaged);
    newBook(folder / "zero");
    sql(folder / "zero", "PRAGMA user_version=0");
    expectRefused(folder, "zero", StoreErrorKind::Damaged);
    newBook(folder / "wal");
    sql(folder / "wal", "PRAGMA journal_mode=WAL");
    expectRefused(folder, "wal", StoreErrorKind::Damaged);

    newBook(folder / "view");
    sql(folder / "view", "CREATE VIEW mine AS SELECT 1");
    const auto book = Book::open(folder / "view");
    ASSERT_TRUE(book) << "a view of one's own does no harm";
    EXPECT_THAT(problemsOf(*book), ::testing::HasSubstr("schema: the view \"mine\" does not belong there"));
}

TEST(ANewerBook, OpensForReadingOnlyAndIsNotWrittenTo) {
    const TempFolder folder;
    {
        Book book = newBook(folder / "book");
        ASSERT_TRUE(book.append(change(reading(0), 0)));
    }
    sql(folder / "book", "PRAGMA user_version=2; CREATE TABLE rain(mm REAL)");
    const auto before = contentsOf(folder.path());
    {
        auto book = Book::open(folder / "book");
        ASSERT_TRUE(book) << book.error().detail;
        ASSERT_TRUE(book->readOnlyBecause());
        EXPECT_EQ(book->readOnlyBecause()->kind, StoreErrorKind::NewerBook);
        EXPECT_EQ(book->observation(change(reading(0), 0).subject)->value().values, reading(0));
        EXPECT_EQ(book->station()->facts(), inventedStation());
        const auto refused = book->append(change(reading(1), 1));
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().kind, StoreErrorKind::NewerBook);
        EXPECT_FALSE(book->reviseFacts({}, kAuthor));
        EXPECT_EQ(problemsOf(*book), "");
    }
    EXPECT_TRUE(contentsOf(folder.path()) == before);
}

TEST(ABookOpenedForReading, IsReadAndLeavesNoFileBeside) {
    const TempFolder folder;
    {
        Book book = newBook(folder / "book");
        ASSERT_TRUE(book.append(change(reading(0), 0)));
    }
    const auto before = contentsOf(folder.path());
    auto book = Book::open(folder / "book", OpenMode::ReadOnly);
    ASSERT_TRUE(book);
    EXPECT_EQ(book->readOnlyBecause()->kind, StoreErrorKind::ReadOnly);
    EXPECT_EQ(book->observationCount(), 1);
    EXPECT_EQ(problemsOf(*book), "");
    EXPECT_EQ(book->append(change(reading(1), 1)).error().kind, StoreErrorKind::ReadOnly);
    EXPECT_TRUE(contentsOf(folder.path()) == before);
}

TEST(ABook, IsFoundThroughALinkAndItsHeaderSaysWhatItIs) {
    const TempFolder folder;
    newBook(folder / "book");
    std::filesystem::create_symlink("book", folder / "link");
    auto book = Book::open(folder / "link");
    ASSERT_TRUE(book);
    ASSERT_TRUE(book->append(change(reading(0), 0)));
    EXPECT_EQ(Book::open(folder / "book")->observationCount(), 1);
    // SQLite's documented offsets of user_version (60) and application_id (68).
    const std::string bytes = bytesAt(folder / "book");
    EXPECT_EQ(bytes.substr(60, 4), std::string("\0\0\0\1", 4));
    EXPECT_EQ(bytes.substr(68, 4), "WBK1");
}
