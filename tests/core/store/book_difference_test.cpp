// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/book_difference.h"
#include "tests/core/store/book_testing.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;
using ::testing::SizeIs;

namespace {

std::uint64_t nextRevision = 1000;

/// A change of its own to the reading of that number.
ObservationChange revised(int number, const std::string& note) {
    record::Observation values = reading(number);
    values.note = note;
    ObservationChange made = change(values, static_cast<std::uint64_t>(number), "read again");
    made.revision = record::Uuid::fromSeed(2, ++nextRevision);
    return made;
}

/// A book of ten readings and a copy of it, both to be written to.
struct Pair {
    TempFolder folder;
    Book book = make();
    Book copy = *Book::open(folder / "copy");

    Book make() {
        Book made = newBook(folder / "book");
        for (int i = 0; i < 10; ++i) {
            if (!made.append(change(reading(i), static_cast<std::uint64_t>(i))))
                throw std::runtime_error("not stored");
        }
        if (!made.backupTo(folder / "copy"))
            throw std::runtime_error("not copied");
        return made;
    }
    BookDifference difference(std::size_t most = 200) const {
        auto found = differenceBetween(book, copy, most);
        if (!found)
            throw std::runtime_error(found.error().detail);
        return std::move(*found);
    }
};

} // namespace

TEST(TwoBooks, ThatAreEqualDifferInNothing) {
    const Pair pair;
    const auto found = pair.difference();
    EXPECT_TRUE(found.none());
    EXPECT_TRUE(found.related);
    EXPECT_EQ(found.common, pair.book.chainMark()->count);
    EXPECT_EQ(found.ownFirst, 0);
    EXPECT_EQ(found.ownSecond, 0);
}

TEST(TwoBooks, ThatWentOnApartDifferInWhatEachHasDone) {
    Pair pair;
    // Only in the first; only in the second; revised in the first, in the second, in both; withdrawn.
    ASSERT_TRUE(pair.book.append(change(reading(10), 10)));
    ASSERT_TRUE(pair.book.append(change(reading(11), 11)));
    ASSERT_TRUE(pair.copy.append(change(reading(12), 12)));
    ASSERT_TRUE(pair.book.append(revised(0, "once")));
    ASSERT_TRUE(pair.book.append(revised(0, "twice")));
    ASSERT_TRUE(pair.copy.append(revised(1, "in the copy")));
    ASSERT_TRUE(pair.book.append(revised(2, "here")));
    ASSERT_TRUE(pair.copy.append(revised(2, "there")));
    ObservationChange withdrawal = revised(3, {});
    withdrawal.values.withdrawn = true;
    ASSERT_TRUE(pair.book.append(withdrawal));

    const auto found = pair.difference();
    EXPECT_EQ(found.ownFirst, 6);
    EXPECT_EQ(found.ownSecond, 3);
    using enum DifferenceKind;
    EXPECT_EQ(found.readingTotal(OnlyInFirst), 2);
    EXPECT_EQ(found.readingTotal(OnlyInSecond), 1);
    EXPECT_EQ(found.readingTotal(LaterInFirst), 2);
    EXPECT_EQ(found.readingTotal(LaterInSecond), 1);
    EXPECT_EQ(found.readingTotal(Diverged), 1);
    EXPECT_EQ(found.factsInAll(), 0);
    ASSERT_THAT(found.readings, SizeIs(7));
    EXPECT_TRUE(std::ranges::is_sorted(found.readings, {}, [](const ReadingDifference& line) {
        return (line.first ? line.first : line.second)->values.instant;
    }));
    const ReadingDifference& once = found.readings[0];
    EXPECT_EQ(once.kind, LaterInFirst);
    EXPECT_EQ(once.first->values.note, "twice");
    EXPECT_EQ(once.second->values.note, "");
    EXPECT_TRUE(found.readings[3].first->values.withdrawn);
    EXPECT_FALSE(found.readings[3].second->values.withdrawn);

    // The other way round everything is mirrored.
    const auto mirrored = differenceBetween(pair.copy, pair.book, 200);
    ASSERT_TRUE(mirrored);
    EXPECT_EQ(mirrored->readingTotal(OnlyInSecond), 2);
    EXPECT_EQ(mirrored->readingTotal(LaterInSecond), 2);
}

TEST(TwoBooks, HaveExactTotalsHoweverFewLinesAreWanted) {
    Pair pair;
    std::vector<ObservationChange> many;
    for (int i = 10; i < 310; ++i)
        many.push_back(change(reading(i), static_cast<std::uint64_t>(i)));
    ASSERT_TRUE(pair.book.appendAll(many));
    const auto found = pair.difference(25);
    EXPECT_EQ(found.readingTotal(DifferenceKind::OnlyInFirst), 300);
    ASSERT_THAT(found.readings, SizeIs(25));
    EXPECT_EQ(found.readings.front().first->values.instant, reading(10).instant);
    EXPECT_EQ(found.readings.back().first->values.instant, reading(34).instant) << "the earliest ones";
    EXPECT_THAT(pair.difference(0).readings, SizeIs(0));
}

TEST(TwoBooks, DifferInFactsToo) {
    Pair pair;
    record::StationFacts facts = inventedStation();
    facts.limits[{"very-dry.lowest-humidity"}] = 7.0;
    ASSERT_TRUE(pair.book.reviseFacts(facts, {"ab", "drier here"}));
    record::StationFacts others = inventedStation();
    record::PeriodChange moved;
    moved.id = record::Uuid::fromSeed(7, 1);
    moved.from = at(kMarch2025 + 86400);
    moved.elevation = units::Elevation::fromMetres(130);
    others.periods.push_back(moved);
    others.name = "Nirgends am Teich (invented)";
    ASSERT_TRUE(pair.copy.reviseFacts(others, {"cd", "moved"}));
    const auto found = pair.difference();
    EXPECT_EQ(found.readingsInAll(), 0);
    EXPECT_EQ(found.factTotal(DifferenceKind::LaterInFirst), 1);
    EXPECT_EQ(found.factTotal(DifferenceKind::LaterInSecond), 1);
    EXPECT_EQ(found.factTotal(DifferenceKind::OnlyInSecond), 1);
    ASSERT_THAT(found.facts, SizeIs(3));
    for (const FactDifference& fact : found.facts) {
        if (fact.kind == DifferenceKind::LaterInFirst) {
            EXPECT_EQ(fact.fact, "limit");
            EXPECT_EQ(fact.first->author.why, "drier here");
        }
    }
}

TEST(TwoBooks, WithoutACommonBeginningAreComparedByTheirRevisionsIdentities) {
    // The same revisions put into a book made afresh: its chain is another from the first row on.
    Pair pair;
    const TempFolder folder;
    Book again = *Book::create(folder / "again", inventedStation(), {"xy", "made again"});
    for (int i = 0; i < 9; ++i)
        ASSERT_TRUE(again.append(change(reading(i), static_cast<std::uint64_t>(i))));
    const auto found = differenceBetween(pair.book, again, 200);
    ASSERT_TRUE(found);
    EXPECT_EQ(found->common, 0);
    EXPECT_TRUE(found->related);
    EXPECT_EQ(found->readingTotal(DifferenceKind::OnlyInFirst), 1);
    EXPECT_EQ(found->readingsInAll(), 1);

    auto facts = inventedStation();
    facts.name = "Anderswo (invented)";
    Book stranger = *Book::create(folder / "stranger", facts, kAuthor);
    EXPECT_FALSE(differenceBetween(pair.book, stranger, 200)->related);
}

TEST(TwoBooks, StopBeingComparedWhenTold) {
    Pair pair;
    ASSERT_TRUE(pair.book.append(change(reading(10), 10)));
    const auto stopped =
        differenceBetween(pair.book, pair.copy, 200, [](std::int64_t, std::int64_t) { return false; });
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().detail, "stopped");
}
