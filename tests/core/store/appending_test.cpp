// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/book_testing.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

namespace {

std::vector<ObservationChange> readings(int from, int to) {
    std::vector<ObservationChange> changes;
    for (int i = from; i < to; ++i)
        changes.push_back(change(reading(i), static_cast<std::uint64_t>(i)));
    return changes;
}

/// A further revision of what change(reading(number), number) stored.
ObservationChange revised(const record::Observation& values, std::uint64_t number, std::uint64_t revision) {
    ObservationChange made = change(values, number, "read again");
    made.revision = record::Uuid::fromSeed(4, revision);
    return made;
}

class ABookOfReadings : public ::testing::Test {
protected:
    TempFolder folder;
    Book book = newBook(folder / "book");
    void TearDown() override { EXPECT_EQ(problemsOf(book), "") << "every test leaves a sound book"; }
    std::int64_t revisions() { return book.verify()->revisions; }
};

} // namespace

TEST_F(ABookOfReadings, KeepsAReadingWithItsStamp) {
    const ObservationChange first = change(reading(0), 0, "typed from the pocket-book");
    const auto receipt = book.append(first);
    ASSERT_TRUE(receipt);
    EXPECT_GT(receipt->sequence, 0);
    EXPECT_EQ(receipt->id, first.revision);
    EXPECT_EQ(receipt->subject, first.subject);
    EXPECT_EQ(receipt->recordedAt, at(kMarch2025 + 7 * 3600)) << "by the clock given";
    EXPECT_EQ(receipt->author, first.author);

    const auto again = Book::open(folder / "book");
    const auto stored = again->observation(first.subject);
    ASSERT_TRUE(stored && *stored);
    EXPECT_EQ((*stored)->values, first.values);
    EXPECT_EQ((*stored)->revisionCount, 1);
    EXPECT_EQ((*stored)->stamp.sequence, receipt->sequence);
    EXPECT_EQ((*stored)->stamp.author, first.author);
    EXPECT_EQ(again->atHour(*first.values.hour)->value().id(), first.subject);
    EXPECT_EQ(again->atInstant(first.values.instant)->value().id(), first.subject);
    EXPECT_FALSE(again->observation(record::Uuid::fromSeed(99, 1))->has_value());
    EXPECT_FALSE(again->atInstant(first.values.instant + std::chrono::seconds{1})->has_value());
}

TEST_F(ABookOfReadings, KeepsWhatWasFirstWrittenThroughEveryRevision) {
    ASSERT_TRUE(book.append(change(reading(0), 0)));
    record::Observation corrected = reading(0);
    corrected.wet.value->value = {139, 1};
    corrected.origin = record::Origin::Corrected;
    ASSERT_TRUE(book.append(revised(corrected, 0, 1)));
    record::Observation withdrawn = corrected;
    withdrawn.withdrawn = true;
    ASSERT_TRUE(book.append(revised(withdrawn, 0, 2)));

    const auto subject = change(reading(0), 0).subject;
    const auto history = book.history(subject);
    ASSERT_EQ(history->size(), 3U);
    EXPECT_EQ((*history)[0].values, reading(0));
    EXPECT_EQ((*history)[1].values, corrected);
    EXPECT_EQ((*history)[2].values, withdrawn);
    EXPECT_EQ((*history)[1].stamp.author.why, "read again");
    EXPECT_LT((*history)[0].stamp.sequence, (*history)[1].stamp.sequence);

    EXPECT_EQ(book.observationCount(), 0) << "withdrawn";
    EXPECT_FALSE(book.atHour(*reading(0).hour)->has_value());
    EXPECT_FALSE(book.atInstant(reading(0).instant)->has_value());
    EXPECT_EQ(book.observation(subject)->value().revisionCount, 3) << "by identity it is still found";
    EXPECT_EQ(book.withdrawnAt(corrected.instant, std::nullopt)->value().id(), subject);
    EXPECT_EQ(book.withdrawnAt(record::Instant{}, corrected.hour)->value().id(), subject);
    EXPECT_FALSE(book.withdrawnAt(record::Instant{}, std::nullopt)->has_value());
    ASSERT_TRUE(book.append(revised(corrected, 0, 3))) << "and can be brought back";
    EXPECT_EQ(book.atHour(*reading(0).hour)->value().values, corrected);
    EXPECT_FALSE(book.withdrawnAt(corrected.instant, corrected.hour)->has_value());
    EXPECT_TRUE(book.history(record::Uuid::fromSeed(99, 1))->empty());
}

TEST_F(ABookOfReadings, StoresARetriedSaveOnce) {
    const auto first = book.append(change(reading(0), 0));
    ASSERT_TRUE(first);
    const auto before = revisions();
    const auto again = book.append(change(reading(0), 0));
    ASSERT_TRUE(again);
    EXPECT_EQ(again->sequence, first->sequence);
    EXPECT_EQ(again->recordedAt, first->recordedAt);
    EXPECT_EQ(revisions(), before);

    // Half of a batch came through another way; the whole batch is tried again.
    const auto batch = book.appendAll(readings(0, 4));
    ASSERT_TRUE(batch);
    EXPECT_EQ((*batch)[0].sequence, first->sequence);
    EXPECT_EQ(revisions(), before + 3);
    std::vector<ObservationChange> twice = readings(4, 5);
    twice.push_back(twice.front());
    const auto receipts = book.appendAll(twice);
    ASSERT_TRUE(receipts);
    EXPECT_EQ((*receipts)[0].sequence, (*receipts)[1].sequence);
    EXPECT_EQ(revisions(), before + 4);
}

TEST_F(ABookOfReadings, RefusesOneRevisionsIdentityForOtherContents) {
    ASSERT_TRUE(book.append(change(reading(0), 0)));
    ObservationChange other = change(reading(0), 0);
    other.values.note = "other";
    EXPECT_EQ(book.append(other).error().kind, StoreErrorKind::Internal);
    other = change(reading(0), 0);
    other.author.who = "cd";
    EXPECT_EQ(book.append(other).error().kind, StoreErrorKind::Internal);
    other = change(reading(0), 0);
    other.subject = record::Uuid::fromSeed(3, 55);
    const auto refused = book.append(other);
    EXPECT_EQ(refused.error().kind, StoreErrorKind::Internal);
    EXPECT_THAT(refused.error().detail, ::testing::HasSubstr("already stored with other contents"));
}

TEST_F(ABookOfReadings, HoldsOneLiveReadingPerHour) {
    ASSERT_TRUE(book.append(change(reading(0), 0)));
    const auto before = revisions();
    const auto taken = book.append(change(reading(0), 1));
    ASSERT_FALSE(taken);
    EXPECT_EQ(taken.error().kind, StoreErrorKind::HourTaken);
    EXPECT_EQ(taken.error().detail, "2025-03-01 09:00");
    EXPECT_EQ(revisions(), before) << "nothing stored";

    record::Observation extra = reading(0);
    extra.hour.reset();
    EXPECT_TRUE(book.append(change(extra, 2))) << "an extra reading takes no hour";
    EXPECT_TRUE(book.append(change(extra, 3))) << "nor a second one at the same moment";
    EXPECT_EQ(book.atInstant(reading(0).instant)->value().id(), change(reading(0), 0).subject)
        << "the one with an hour comes first";

    record::Observation withdrawn = reading(0);
    withdrawn.withdrawn = true;
    ASSERT_TRUE(book.append(revised(withdrawn, 0, 1)));
    EXPECT_TRUE(book.append(change(reading(0), 4))) << "the hour of a withdrawn reading is free";
    EXPECT_EQ(book.append(revised(reading(0), 0, 2)).error().kind, StoreErrorKind::HourTaken);
}

TEST_F(ABookOfReadings, LetsReadingsChangePlacesInOneStep) {
    ASSERT_TRUE(book.appendAll(readings(0, 14)));
    // A week typed one day too early: every reading moves to an hour that the next one still holds.
    std::vector<ObservationChange> moved;
    for (int i = 0; i < 14; ++i) {
        record::Observation values = reading(i);
        values.hour = reading(i + 2).hour;
        values.instant = reading(i + 2).instant;
        moved.push_back(revised(values, static_cast<std::uint64_t>(i), static_cast<std::uint64_t>(i)));
    }
    ASSERT_TRUE(book.appendAll(moved));
    for (int i = 0; i < 14; ++i)
        EXPECT_EQ(book.atHour(*reading(i + 2).hour)->value().id(),
                  moved[static_cast<std::size_t>(i)].subject);
    EXPECT_FALSE(book.atHour(*reading(0).hour)->has_value());

    const auto clash = book.appendAll(std::vector{change(reading(0), 20), change(reading(0), 21)});
    ASSERT_FALSE(clash) << "two of the same batch at one hour";
    EXPECT_EQ(clash.error().kind, StoreErrorKind::HourTaken);
    EXPECT_FALSE(book.atHour(*reading(0).hour)->has_value()) << "all or nothing";
}

TEST_F(ABookOfReadings, TellsWhenAnotherHandWasFaster) {
    const auto first = book.append(change(reading(0), 0));
    ObservationChange mine = revised(reading(0), 0, 1);
    mine.values.note = "mine";
    mine.replaces = first->sequence;
    ObservationChange theirs = revised(reading(0), 0, 2);
    theirs.values.note = "theirs";
    theirs.replaces = first->sequence;
    ASSERT_TRUE(book.append(theirs));
    const auto late = book.append(mine);
    ASSERT_FALSE(late);
    EXPECT_EQ(late.error().kind, StoreErrorKind::ChangedMeanwhile);
    EXPECT_EQ(book.observation(mine.subject)->value().values.note, "theirs");
    EXPECT_TRUE(book.append(theirs)) << "the same save again is no conflict with itself";

    ObservationChange unknown = change(reading(3), 3);
    unknown.replaces = 1;
    EXPECT_EQ(book.append(unknown).error().kind, StoreErrorKind::NoSuchReading);
    ObservationChange fact = change(reading(3), 3);
    fact.subject = inventedStation().id;
    EXPECT_EQ(book.append(fact).error().kind, StoreErrorKind::Internal) << "a fact is no reading";
}

TEST_F(ABookOfReadings, ReplacesWithinOneBatchBySequence) {
    const auto first = book.append(change(reading(0), 0));
    ObservationChange second = revised(reading(0), 0, 1);
    second.values.note = "second";
    second.replaces = first->sequence;
    ObservationChange third = revised(reading(0), 0, 2);
    third.values.note = "third";
    third.replaces = first->sequence + 1;
    ASSERT_TRUE(book.appendAll(std::vector{second, third}));
    EXPECT_EQ(book.observation(second.subject)->value().values.note, "third");
    EXPECT_EQ(book.observation(second.subject)->value().revisionCount, 3);
}

TEST_F(ABookOfReadings, StoresAllOrNothing) {
    ASSERT_TRUE(book.append(change(reading(5), 5)));
    const auto before = revisions();
    auto batch = readings(0, 10);
    batch[5] = change(reading(5), 50); // its hour is taken
    EXPECT_EQ(book.appendAll(batch).error().kind, StoreErrorKind::HourTaken);
    EXPECT_EQ(revisions(), before);
    batch = readings(0, 10);
    batch[9].values.note = "\xff";
    EXPECT_EQ(book.appendAll(batch).error().kind, StoreErrorKind::Internal);
    EXPECT_EQ(revisions(), before);
    batch = readings(0, 10);
    batch[9].author.why = "\xff";
    EXPECT_EQ(book.appendAll(batch).error().kind, StoreErrorKind::Internal);
    EXPECT_EQ(revisions(), before);
    EXPECT_TRUE(book.appendAll(readings(0, 10))) << "and is usable after a refusal";
    EXPECT_TRUE(book.appendAll({})->empty());
}

TEST_F(ABookOfReadings, StopsWhenAskedAndKeepsNothingOfIt) {
    const auto before = revisions();
    std::vector<std::int64_t> told;
    const auto stopped = book.appendAll(readings(0, 10), [&](std::int64_t done, std::int64_t total) {
        EXPECT_EQ(total, 10);
        told.push_back(done);
        return done < 4;
    });
    ASSERT_TRUE(stopped);
    EXPECT_TRUE(stopped->empty());
    EXPECT_THAT(told, ::testing::ElementsAre(0, 1, 2, 3, 4));
    EXPECT_EQ(revisions(), before);
    const auto failing = book.appendAll(readings(0, 10), [](std::int64_t, std::int64_t) -> bool {
        throw std::runtime_error("the window went away");
    });
    EXPECT_EQ(failing.error().kind, StoreErrorKind::Internal);
    EXPECT_EQ(revisions(), before);
    EXPECT_EQ(book.appendAll(readings(0, 10))->size(), 10U);
}

TEST_F(ABookOfReadings, KeepsAMissingReadingWithItsReasonAndNoValues) {
    record::Observation missing = reading(0);
    missing.dry = {};
    missing.wet = {};
    missing.origin = record::Origin::Missing;
    missing.missingReason = "ill";
    ASSERT_TRUE(book.append(change(missing, 0)));
    EXPECT_EQ(book.atHour(*missing.hour)->value().values, missing);
}

TEST_F(ABookOfReadings, ReadsTheSameThroughTwoBooksOnOneFile) {
    auto other = Book::open(folder / "book");
    ASSERT_TRUE(other);
    const auto seen = other->externalVersion().value();
    for (int i = 0; i < 10; ++i) {
        Book& writer = i % 2 == 0 ? book : *other;
        const auto receipt = writer.append(change(reading(i), static_cast<std::uint64_t>(i)));
        ASSERT_TRUE(receipt) << receipt.error().detail;
        EXPECT_EQ(book.observationCount(), i + 1);
        EXPECT_EQ(other->observationCount(), i + 1);
    }
    EXPECT_NE(other->externalVersion().value(), seen) << "another program wrote";
    const auto now = other->externalVersion().value();
    ASSERT_TRUE(other->append(change(reading(20), 20)));
    EXPECT_EQ(other->externalVersion().value(), now) << "one's own writes don't count";
    EXPECT_EQ(problemsOf(*other), "");
}
