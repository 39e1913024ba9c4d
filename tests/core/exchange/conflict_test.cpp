// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/conflict.h"
#include "tests/core/exchange/stations.h"

#include <gmock/gmock.h>

#include <sstream>

namespace wickbook::exchange {
namespace {

using testing::celsius;
using ::testing::IsEmpty;
using ::testing::SizeIs;
using testing::station;

ImportPlan planOf(const std::string& rows) {
    std::istringstream input("time,dry,wet,note\n" + rows);
    auto plan = planCsvImport(input, "a.csv", station(), {});
    EXPECT_TRUE(plan && plan->rejected.empty());
    return std::move(*plan);
}

/// A book that holds what these rows say.
TakenReadings bookOf(const std::string& rows) {
    TakenReadings taken;
    std::int64_t sequence = 0;
    for (const auto& line : planOf(rows).observations) {
        record::StoredObservation stored;
        stored.stamp.sequence = ++sequence;
        stored.stamp.subject = record::Uuid::fromSeed(3, static_cast<std::uint64_t>(sequence));
        stored.values = line.values;
        taken.add(stored);
    }
    return taken;
}

const std::string kBook = "2025-03-01T09:00Z,4.2,3.8,book\n2025-03-01T15:00Z,6.0,5.0,\n";
const std::string kFile = "2025-03-01T09:10Z,4.3,,\n2025-03-01T15:00Z,6.0,5.0,\n2025-03-02T09:00Z,1.0,0.8,\n";

TEST(Conflict, KeepLeavesTheBook) {
    auto taken = bookOf(kBook);
    const auto decision = decideConflicts(planOf(kFile), "a.csv", taken, OnConflict::Keep);
    EXPECT_EQ(decision.kept, 1);
    EXPECT_EQ(decision.same, 1);
    EXPECT_EQ(decision.added, 1);
    ASSERT_THAT(decision.changes, SizeIs(1));
    EXPECT_EQ(decision.changes[0].line, 4);
    EXPECT_FALSE(decision.changes[0].replaces);
    EXPECT_THAT(decision.rejected, IsEmpty());
}

TEST(Conflict, RejectGivesTheLineBack) {
    auto taken = bookOf(kBook);
    const auto decision = decideConflicts(planOf(kFile), "a.csv", taken, OnConflict::Reject);
    ASSERT_THAT(decision.rejected, SizeIs(1));
    EXPECT_EQ(decision.rejected[0].reason, RejectReason::HourTaken);
    EXPECT_EQ(decision.rejected[0].line, 2);
    EXPECT_EQ(decision.rejected[0].value, "2025-03-01 09:00");
    EXPECT_EQ(decision.rejected[0].text, "2025-03-01T09:10Z,4.3,,");
    EXPECT_EQ(decision.rejected[0].file, "a.csv");
    EXPECT_EQ(decision.added, 1);
}

TEST(Conflict, ReviseChangesWhatTheFileSaysAndErasesNothing) {
    auto taken = bookOf(kBook);
    const auto decision = decideConflicts(planOf(kFile), "a.csv", taken, OnConflict::Revise);
    EXPECT_EQ(decision.revised, 1);
    ASSERT_THAT(decision.changes, SizeIs(2));
    const auto& change = decision.changes[0];
    ASSERT_TRUE(change.replaces);
    EXPECT_EQ(change.replaces->stamp.sequence, 1);
    EXPECT_EQ(change.values.dry.value, celsius(43));
    EXPECT_EQ(change.values.wet.value, celsius(38));
    EXPECT_EQ(change.values.note, "book");
}

TEST(Conflict, TheSameFileTwiceChangesNothing) {
    TakenReadings taken;
    EXPECT_EQ(decideConflicts(planOf(kFile), "a.csv", taken, OnConflict::Reject).added, 3);
    const auto again = decideConflicts(planOf(kFile), "b.csv", taken, OnConflict::Reject);
    EXPECT_EQ(again.same, 3);
    EXPECT_THAT(again.changes, IsEmpty());
    EXPECT_THAT(again.rejected, IsEmpty());
}

TEST(Conflict, TwoFilesThatDisagree) {
    TakenReadings taken;
    decideConflicts(planOf(kFile), "a.csv", taken, OnConflict::Revise);
    const auto second = decideConflicts(planOf("2025-03-01T09:00Z,5.0,4.0,\n2025-03-01T15:00Z,1,1,\n"),
                                        "b.csv", taken, OnConflict::Revise);
    ASSERT_THAT(second.rejected, SizeIs(2));
    EXPECT_EQ(second.rejected[0].reason, RejectReason::SameHourTwice);
    EXPECT_EQ(second.rejected[0].file, "b.csv");
    EXPECT_EQ(second.rejected[1].detail, "same-moment");
}

TEST(Conflict, AJudgementGoesWithTheReadingItWasOf) {
    record::Observation book = planOf("2025-03-01T09:00Z,4.2,3.8,\n").observations[0].values;
    auto file = book;
    book.quality = record::Quality::Sound;
    book.origin = record::Origin::Corrected;
    book.wickCare = record::WickCare::Wetted;
    file.note = "seen in the paper register";
    auto merged = mergedForRevision(book, file);
    EXPECT_EQ(merged.quality, record::Quality::Sound);
    EXPECT_EQ(merged.origin, record::Origin::Corrected);
    EXPECT_EQ(merged.wickCare, record::WickCare::Wetted);
    file.dry.value = celsius(52);
    merged = mergedForRevision(book, file);
    EXPECT_EQ(merged.quality, record::Quality::NotJudged);
    EXPECT_EQ(merged.origin, record::Origin::Observed);
}

TEST(Conflict, WhatAFileSaysOfWhirlsAndPaperIsTakenAndItsBlanksEraseNothing) {
    record::Observation book = planOf("2025-03-01T09:00Z,4.2,3.8,\n").observations[0].values;
    auto file = book;
    book.repeats = {{celsius(38), celsius(42)}};
    book.paper = record::PaperPlace{"3", "17"};
    book.readBack = true;
    EXPECT_EQ(mergedForRevision(book, file), book);
    file.repeats = {{celsius(39), celsius(42)}};
    file.readBack = true;
    file.paper = record::PaperPlace{"3", "18"};
    EXPECT_EQ(mergedForRevision(book, file).repeats, file.repeats);
    EXPECT_EQ(mergedForRevision(book, file).paper, file.paper);
    // The tick was of the file's readings; with one out of the book between them it is nobody's.
    file.wet = {};
    book.readBack = false;
    EXPECT_FALSE(mergedForRevision(book, file).readBack);
}

TEST(Conflict, ABlankInTheFileIsNoMissingReading) {
    const auto book = planOf("2025-03-01T09:00Z,4.2,3.8,\n").observations[0].values;
    auto file = book;
    file.dry = {};
    file.wet = {};
    file.origin = record::Origin::Missing;
    file.missingReason = "away";
    const auto merged = mergedForRevision(book, file);
    EXPECT_EQ(merged, book);
}

} // namespace
} // namespace wickbook::exchange
