// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/book_testing.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sqlite3.h>

#include <algorithm>
#include <fstream>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;
using ::testing::HasSubstr;

namespace {

/// What an ill hand could do with a SQLite shell: the triggers are taken away, the deed is done, they are put
/// back as they were.
void meddle(const std::filesystem::path& path, const std::string& deed) {
    sqlite3* handle = nullptr;
    ASSERT_EQ(sqlite3_open(path.c_str(), &handle), SQLITE_OK);
    std::vector<std::string> triggers;
    sqlite3_stmt* statement = nullptr;
    sqlite3_prepare_v2(handle, "SELECT sql, name FROM sqlite_schema WHERE type = 'trigger'", -1, &statement,
                       nullptr);
    std::string script = "BEGIN;";
    while (sqlite3_step(statement) == SQLITE_ROW) {
        triggers.emplace_back(static_cast<const char*>(sqlite3_column_blob(statement, 0)),
                              static_cast<std::size_t>(sqlite3_column_bytes(statement, 0)));
        script += "DROP TRIGGER " +
                  std::string{static_cast<const char*>(sqlite3_column_blob(statement, 1)),
                              static_cast<std::size_t>(sqlite3_column_bytes(statement, 1))} +
                  ";";
    }
    sqlite3_finalize(statement);
    script += deed + ";";
    for (const std::string& trigger : triggers)
        script += trigger + ";";
    script += "COMMIT;";
    char* message = nullptr;
    EXPECT_EQ(sqlite3_exec(handle, script.c_str(), nullptr, nullptr, &message), SQLITE_OK) << message;
    sqlite3_free(message);
    sqlite3_close(handle);
}

/// What SQLite says to a plain statement.
std::string answerTo(const std::filesystem::path& path, const char* statement) {
    sqlite3* handle = nullptr;
    sqlite3_open(path.c_str(), &handle);
    char* message = nullptr;
    sqlite3_exec(handle, statement, nullptr, nullptr, &message);
    const std::string answer = message == nullptr ? "" : message;
    sqlite3_free(message);
    sqlite3_close(handle);
    return answer;
}

class AMeddledBook : public ::testing::Test {
protected:
    TempFolder folder;
    std::filesystem::path path = folder / "book";
    std::int64_t first = 0; ///< sequence of the first reading
    void SetUp() override {
        Book book = newBook(path);
        for (int i = 0; i < 6; ++i) {
            const auto receipt = book.append(change(reading(i), static_cast<std::uint64_t>(i)));
            ASSERT_TRUE(receipt);
            if (i == 0)
                first = receipt->sequence;
        }
    }
    VerifyReport verified() {
        const auto book = Book::open(path);
        if (!book) {
            ADD_FAILURE() << book.error().detail;
            return {};
        }
        return book->verify().value();
    }
    std::string said() {
        const auto book = Book::open(path);
        return book ? problemsOf(*book) : "can't be opened: " + book.error().detail;
    }
    std::string row(int n) { return std::to_string(first + n); }
};

} // namespace

TEST_F(AMeddledBook, RefusesToChangeOrDeleteARevisionInPlace) {
    EXPECT_EQ(answerTo(path, "UPDATE revision SET who = 'x'"), "a revision is never changed");
    EXPECT_EQ(answerTo(path, "DELETE FROM revision"), "a revision is never deleted");
    EXPECT_EQ(answerTo(path, "DELETE FROM chain"), "the chain is never deleted");
    EXPECT_EQ(answerTo(path, "INSERT OR REPLACE INTO revision SELECT * FROM revision WHERE sequence = 3"),
              "a revision is appended after the last one");
    EXPECT_EQ(answerTo(path,
                       "INSERT INTO revision SELECT 900, zeroblob(16), kind, subject, recorded_at, who, "
                       "why, body, checksum FROM revision WHERE sequence = 3"),
              "a revision is appended after the last one");
    EXPECT_EQ(said(), "");
}

TEST_F(AMeddledBook, NamesTheRevisionWhoseValuesWereChanged) {
    for (const char* deed :
         {"body = replace(body, '160', '150')", "who = 'xy'", "why = 'z'", "recorded_at = recorded_at + 1",
          "subject = zeroblob(16)", "id = zeroblob(16)"}) {
        const TempFolder copies;
        std::filesystem::copy(path, copies / "book");
        meddle(copies / "book", std::string{"UPDATE revision SET "} + deed + " WHERE sequence = " + row(0));
        const auto book = Book::open(copies / "book");
        ASSERT_TRUE(book) << deed;
        const auto report = book->verify();
        ASSERT_TRUE(report) << deed;
        ASSERT_FALSE(report->sound()) << deed;
        EXPECT_EQ(report->problems.front().code, "chain") << deed;
        EXPECT_EQ(report->problems.front().sequence, first) << deed;
        EXPECT_THAT(report->problems.front().detail, HasSubstr("is not as it was written"));
    }
}

TEST_F(AMeddledBook, MissesRevisionsFromTheMiddleAndFromTheEnd) {
    const TempFolder copies;
    std::filesystem::copy(path, copies / "end");
    meddle(path, "DELETE FROM observation WHERE sequence = " + row(2) +
                     "; DELETE FROM revision WHERE sequence = " + row(2));
    EXPECT_THAT(said(), HasSubstr("chain: revisions " + row(2) + " to " + row(2) + " are missing"));
    EXPECT_THAT(said(), HasSubstr("count: "));

    path = copies / "end";
    meddle(path, "DELETE FROM observation WHERE sequence = " + row(5) +
                     "; DELETE FROM revision WHERE sequence = " + row(5));
    EXPECT_THAT(said(), HasSubstr("head: "));
    EXPECT_THAT(said(), HasSubstr("count: "));
    auto book = Book::open(path);
    const auto refused = book->append(change(reading(9), 9));
    ASSERT_FALSE(refused) << "nothing is built upon a broken chain";
    EXPECT_EQ(refused.error().kind, StoreErrorKind::Damaged);
}

TEST_F(AMeddledBook, ComparesTheFindingAidWithTheRevisions) {
    for (const char* deed :
         {"UPDATE observation SET instant = instant + 1", "UPDATE observation SET live = 0",
          "UPDATE observation SET filed_day = 0", "UPDATE observation SET revisions = 9",
          "UPDATE observation SET hour_day = NULL, hour_minute = NULL", "DELETE FROM observation"}) {
        const TempFolder copies;
        std::filesystem::copy(path, copies / "book");
        meddle(copies / "book", std::string{deed} + " WHERE sequence = " + row(3));
        EXPECT_THAT(problemsOf(*Book::open(copies / "book")), HasSubstr("index: ")) << deed;
    }
}

TEST_F(AMeddledBook, NamesABodyThatCantBeRead) {
    meddle(path, "UPDATE revision SET body = '{\"dry\":\"warm\"}' WHERE sequence = " + row(1));
    const auto report = verified();
    const auto found = std::ranges::find(report.problems, "body", &VerifyProblem::code);
    ASSERT_NE(found, report.problems.end());
    EXPECT_EQ(found->sequence, first + 1);
    const auto book = Book::open(path);
    const auto read = book->observation(change(reading(1), 1).subject);
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().kind, StoreErrorKind::Damaged);
    EXPECT_THAT(read.error().detail, HasSubstr("revision " + row(1)));
    EXPECT_TRUE(book->observation(change(reading(0), 0).subject)->has_value()) << "the others can be read";
}

TEST_F(AMeddledBook, KeepsAndPassesOverKindsOfALaterVersion) {
    // Appended as a later version would, with its checksum: the book is sound, the kind unknown.
    // The checksum can't be made in SQL, so the chain reports this row, and only this row.
    meddle(
        path,
        "INSERT INTO revision SELECT max(sequence) + 1, zeroblob(16), 'ice-saints', zeroblob(16), 0, 'ab', "
        "'', '{}', zeroblob(32) FROM revision; UPDATE chain SET count = count + 1, head = zeroblob(32)");
    const auto report = verified();
    ASSERT_EQ(report.problems.size(), 1U) << said();
    EXPECT_EQ(report.problems[0].code, "chain");
    EXPECT_EQ(report.problems[0].sequence, first + 6);
    EXPECT_EQ(Book::open(path)->station()->facts(), inventedStation());
}

TEST_F(AMeddledBook, NamesAListOfFreePagesThatBeginsNowhere) {
    // Bytes 36 to 39 of the header: how many pages are free (sqlite.org, "Database File Format", 1.3).
    std::fstream file(path, std::ios::binary | std::ios::in | std::ios::out);
    file.seekp(38);
    file.put('\x40');
    file.close();
    EXPECT_THAT(said(), HasSubstr("free pages"));
}

TEST_F(AMeddledBook, TellsItsProgressAndIsNotCalledSoundWhenStopped) {
    const auto book = Book::open(path);
    std::int64_t calls = 0;
    EXPECT_TRUE(book->verify([&](std::int64_t, std::int64_t total) {
                        EXPECT_EQ(total, first + 5);
                        return ++calls > 0;
                    })
                    ->sound());
    EXPECT_EQ(calls, first + 5);
    const auto stopped = book->verify([](std::int64_t done, std::int64_t) { return done < 3; });
    EXPECT_FALSE(stopped->sound());
    EXPECT_EQ(stopped->problems.back().code, "stopped");
}
