// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/data/books/fixture_contents.h"

#include <gtest/gtest.h>

#include <map>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

namespace {

const std::filesystem::path kKept =
    std::filesystem::path{WICKBOOK_TEST_DATA} / "data" / "books" / "schema_0001.wbk";

void expectFixture(const Book& book) {
    EXPECT_EQ(problemsOf(book), "");
    EXPECT_EQ(book.station()->facts(), fixtureFacts());
    std::map<record::Uuid, std::vector<ObservationChange>> bySubject;
    for (const ObservationChange& one : fixtureChanges())
        bySubject[one.subject].push_back(one);
    for (const auto& [subject, changes] : bySubject) {
        const auto history = book.history(subject);
        ASSERT_TRUE(history) << history.error().detail;
        ASSERT_EQ(history->size(), changes.size());
        for (std::size_t i = 0; i < changes.size(); ++i) {
            EXPECT_EQ((*history)[i].values, changes[i].values);
            EXPECT_EQ((*history)[i].stamp.id, changes[i].revision);
            EXPECT_EQ((*history)[i].stamp.author, changes[i].author);
        }
    }
    EXPECT_EQ(book.observationCount(), static_cast<std::int64_t>(bySubject.size()) - 1) << "one is withdrawn";
}

} // namespace

TEST(TheKeptBookOfSchemaOne, StillMeansWhatItMeant) {
    ASSERT_TRUE(std::filesystem::exists(kKept)) << kKept;
    const std::string before = bytesAt(kKept);
    {
        const auto book = Book::open(kKept, OpenMode::ReadOnly);
        ASSERT_TRUE(book) << book.error().detail;
        expectFixture(*book);
    }
    EXPECT_TRUE(bytesAt(kKept) == before);
}

TEST(TheKeptBookOfSchemaOne, CanBeGoneOnWith) {
    const TempFolder folder;
    writeBytes(folder / "book", bytesAt(kKept));
    auto book = Book::open(folder / "book");
    ASSERT_TRUE(book) << book.error().detail;
    ASSERT_FALSE(book->readOnlyBecause());
    expectFixture(*book);
    ASSERT_TRUE(book->append(change(reading(20), 20)));
    EXPECT_EQ(problemsOf(*book), "");
}
