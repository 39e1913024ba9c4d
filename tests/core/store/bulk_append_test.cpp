// SPDX-License-Identifier: GPL-3.0-or-later
// A long work of appending: all of it or nothing, and the same book as if it had been appended at once.
#include "core/store/bulk_append.h"
#include "tests/core/store/book_testing.h"

#include <gtest/gtest.h>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

namespace {

std::vector<ObservationChange> readings(int from, int to) {
    std::vector<ObservationChange> made;
    for (int i = from; i < to; ++i)
        made.push_back(change(reading(i), static_cast<std::uint64_t>(i)));
    return made;
}

} // namespace

TEST(ABulkAppend, MakesTheSameBookAsAppendingAtOnce) {
    const TempFolder folder;
    Book atOnce = newBook(folder / "once");
    ASSERT_TRUE(atOnce.appendAll(readings(0, 300)));
    Book inParts = newBook(folder / "parts");
    {
        auto bulk = inParts.bulkAppend();
        ASSERT_TRUE(bulk) << bulk.error().detail;
        for (int from = 0; from < 300; from += 100)
            ASSERT_TRUE(bulk->append(readings(from, from + 100)));
        const auto done = bulk->commit();
        ASSERT_TRUE(done) << done.error().detail;
        EXPECT_EQ(*done, 300);
    }
    EXPECT_EQ(problemsOf(inParts), "");
    EXPECT_EQ(inParts.chainMark().value(), atOnce.chainMark().value())
        << "the chain covers every byte of every revision";
}

TEST(ABulkAppend, ThatGoesWithoutCommitLeavesNothing) {
    const TempFolder folder;
    Book book = newBook(folder / "book");
    const std::string before = bytesAt(folder / "book");
    {
        auto bulk = book.bulkAppend();
        ASSERT_TRUE(bulk->append(readings(0, 50)));
    }
    EXPECT_EQ(book.observationCount(), 0);
    EXPECT_TRUE(bytesAt(folder / "book") == before);
    EXPECT_TRUE(book.append(change(reading(0), 0))) << "and the book can be written again";
}

TEST(ABulkAppend, IsRefusedAsAWholeWhereALaterPartTakesAnHourAgain) {
    const TempFolder folder;
    Book book = newBook(folder / "book");
    {
        auto bulk = book.bulkAppend();
        ASSERT_TRUE(bulk->append(readings(0, 10)));
        const std::vector<ObservationChange> again{change(reading(3), 99)};
        const auto refused = bulk->append(again);
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().kind, StoreErrorKind::HourTaken);
    }
    EXPECT_EQ(book.observationCount(), 0);
    EXPECT_EQ(problemsOf(book), "");
}

TEST(ABulkAppend, KeepsOtherWritersOutUntilItIsDone) {
    const TempFolder folder;
    Book book = newBook(folder / "book");
    Book other = *Book::open(folder / "book");
    auto bulk = std::optional(*book.bulkAppend());
    ASSERT_TRUE(bulk->append(readings(0, 5)));
    EXPECT_EQ(other.observationCount(), 0) << "others read what was before";
    ASSERT_TRUE(bulk->commit());
    bulk.reset();
    EXPECT_EQ(other.observationCount(), 5);
    EXPECT_TRUE(other.append(change(reading(5), 5)));
}

TEST(ABulkAppend, IntoABookForReadingIsRefused) {
    const TempFolder folder;
    newBook(folder / "book");
    Book book = *Book::open(folder / "book", OpenMode::ReadOnly);
    const auto refused = book.bulkAppend();
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, StoreErrorKind::ReadOnly);
}

TEST(LivePlacesOfABook, AreItsHoursAndExtraMomentsWithoutWhatIsWithdrawn) {
    const TempFolder folder;
    Book book = newBook(folder / "book");
    ASSERT_TRUE(book.appendAll(readings(0, 4)));
    record::Observation extra = reading(9);
    extra.hour.reset();
    ASSERT_TRUE(book.append(change(extra, 9)));
    ObservationChange gone = change(reading(1), 1);
    gone.revision = record::Uuid::fromSeed(5, 1);
    gone.values.withdrawn = true;
    ASSERT_TRUE(book.append(gone));
    const auto places = book.livePlaces();
    ASSERT_TRUE(places);
    EXPECT_EQ(places->hours, (std::vector{*reading(0).hour, *reading(2).hour, *reading(3).hour}));
    EXPECT_EQ(places->extras, std::vector{extra.instant});
}
