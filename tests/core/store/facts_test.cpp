// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/book_testing.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

namespace {
const record::Author kLater{"cd", "certificate came"};
}

TEST(FactsOfAStation, AreOnlyAppendedWhereTheyDiffer) {
    const TempFolder folder;
    Book book = newBook(folder / "book");
    const auto none = book.reviseFacts(inventedStation(), kLater);
    ASSERT_TRUE(none);
    EXPECT_TRUE(none->empty());

    record::StationFacts facts = inventedStation();
    facts.corrections[0].points.push_back({80, -0.1});
    facts.limits[{"very-dry.lowest-humidity"}] = 7;
    record::PeriodChange moved;
    moved.id = record::Uuid::fromSeed(9, 1);
    moved.from = at(kMarch2025 + 86400);
    moved.elevation = units::Elevation::fromMetres(130);
    facts.periods.push_back(moved);
    const auto receipts = book.reviseFacts(facts, kLater);
    ASSERT_TRUE(receipts);
    ASSERT_EQ(receipts->size(), 3U);
    EXPECT_TRUE(std::ranges::all_of(*receipts, [](const Receipt& r) { return r.author == kLater; }));
    EXPECT_EQ(book.station()->facts(), facts);
    EXPECT_EQ(book.station()->periods().size(), 3U);
    EXPECT_EQ(problemsOf(book), "");
    EXPECT_EQ(Book::open(folder / "book")->station()->facts(), facts);
}

TEST(FactsOfAStation, ThatAreLeftOutAreWithdrawnAndComeBackWhenGivenAgain) {
    const TempFolder folder;
    Book book = newBook(folder / "book");
    record::StationFacts fewer = inventedStation();
    fewer.corrections.clear();
    fewer.periods.pop_back();
    fewer.limits.clear();
    EXPECT_EQ(book.reviseFacts(fewer, kLater)->size(), 3U);
    EXPECT_EQ(book.station()->facts(), fewer);
    EXPECT_TRUE(book.reviseFacts(fewer, kLater)->empty()) << "withdrawn once is enough";
    EXPECT_EQ(book.reviseFacts(inventedStation(), kLater)->size(), 3U);
    EXPECT_EQ(book.station()->facts(), inventedStation());

    record::StationFacts marked = inventedStation();
    marked.fittings[0].withdrawn = true;
    EXPECT_EQ(book.reviseFacts(marked, kLater)->size(), 1U);
    EXPECT_TRUE(book.station()->facts().fittings.empty());
    EXPECT_EQ(problemsOf(book), "");
}

TEST(FactsOfAnotherStation, AreRefusedWhole) {
    const TempFolder folder;
    Book book = newBook(folder / "book");
    record::StationFacts other = inventedStation();
    other.id = record::Uuid::fromSeed(9, 2);
    other.name = "elsewhere";
    const auto refused = book.reviseFacts(other, kLater);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, StoreErrorKind::Internal);
    EXPECT_EQ(book.station()->facts(), inventedStation());
    EXPECT_TRUE(book.append(change(reading(0), 0))) << "and the book goes on";
}

TEST(LimitsOfAStation, HoldFromAMomentAndKeepTheirHistory) {
    const TempFolder folder;
    Book book = newBook(folder / "book");
    const auto before = book.limitHistory()->size();
    record::StationFacts facts = inventedStation();
    facts.limits[{"very-dry.lowest-humidity", at(kMarch2025)}] = 6;
    facts.limits[{"very-dry.lowest-humidity", at(kMarch2025 + 86400)}] = std::nullopt; // as built in again
    ASSERT_EQ(book.reviseFacts(facts, kLater)->size(), 2U);
    EXPECT_EQ(book.station()->facts(), facts);
    // A moment of its own is a fact of its own: taking one back leaves the others.
    facts.limits.erase({"very-dry.lowest-humidity", at(kMarch2025)});
    ASSERT_EQ(book.reviseFacts(facts, {"cd", "was wrong"})->size(), 1U);
    EXPECT_EQ(Book::open(folder / "book")->station()->facts(), facts);
    const auto history = book.limitHistory();
    ASSERT_TRUE(history);
    ASSERT_EQ(history->size(), before + 3);
    EXPECT_EQ((*history)[before].value, 6);
    EXPECT_EQ((*history)[before].stamp.author, kLater);
    EXPECT_FALSE((*history)[before + 1].value);
    EXPECT_FALSE((*history)[before + 1].withdrawn);
    EXPECT_TRUE((*history)[before + 2].withdrawn);
    EXPECT_EQ((*history)[before + 2].limit.from, at(kMarch2025));
    EXPECT_EQ(problemsOf(book), "");
}
