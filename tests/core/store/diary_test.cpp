// SPDX-License-Identifier: GPL-3.0-or-later
// Absences and the exposure diary as facts of the station: kept, changed, withdrawn and brought back by
// revisions, in a chain that verifies.
#include "tests/core/store/book_testing.h"

#include <gtest/gtest.h>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;
using namespace date::literals;

namespace {

record::StationDate day(date::year_month_day date) {
    return record::StationDate{date::local_days{date}};
}

record::StationFacts withDiary() {
    record::StationFacts facts = inventedStation();
    facts.absences = {
        {record::Uuid::fromSeed(4, 1), day(2025_y / 8 / 1), day(2025_y / 8 / 14), "away", "", "key at No. 4",
         false},
        {record::Uuid::fromSeed(4, 2), day(2025_y / 9 / 1), day(2025_y / 9 / 1), "ill", "EW", "", false}};
    for (int kind = 0; kind < record::kDiaryKinds; ++kind)
        facts.diary.push_back({record::Uuid::fromSeed(5, static_cast<std::uint64_t>(kind)),
                               day(2025_y / 5 / 1) + date::days{kind}, static_cast<record::DiaryKind>(kind),
                               kind == 0 ? "two coats of white" : "", false});
    return facts;
}

} // namespace

TEST(AbsencesAndDiary, AreKeptChangedAndTakenBackByRevisions) {
    const TempFolder folder;
    Book book = newBook(folder / "book");
    record::StationFacts facts = withDiary();
    EXPECT_EQ(book.reviseFacts(facts, kAuthor)->size(), 2U + record::kDiaryKinds);
    EXPECT_EQ(book.station()->facts(), facts);
    EXPECT_EQ(Book::open(folder / "book")->station()->facts(), facts);

    facts.absences[0].to = day(2025_y / 8 / 21);
    facts.diary[1].note = "white, two coats";
    EXPECT_EQ(book.reviseFacts(facts, kAuthor)->size(), 2U) << "only what differs is appended";
    EXPECT_EQ(book.station()->facts(), facts);

    record::StationFacts fewer = facts;
    fewer.absences.erase(fewer.absences.begin());
    fewer.diary.clear();
    EXPECT_EQ(book.reviseFacts(fewer, kAuthor)->size(), 1U + record::kDiaryKinds);
    EXPECT_EQ(book.station()->facts(), fewer);
    ASSERT_TRUE(book.reviseFacts(facts, kAuthor));
    EXPECT_EQ(book.station()->facts(), facts);
    EXPECT_EQ(problemsOf(book), "");
}

TEST(AbsencesAndDiary, ABookWithoutThemHasNone) {
    const TempFolder folder;
    const Book book = newBook(folder / "book");
    EXPECT_TRUE(book.station()->facts().absences.empty());
    EXPECT_TRUE(book.station()->facts().diary.empty());
}

TEST(AbsencesAndDiary, WhatWouldNotReadBackIsNotWritten) {
    const TempFolder folder;
    Book book = newBook(folder / "book");
    record::StationFacts backwards = withDiary();
    std::swap(backwards.absences[0].from, backwards.absences[0].to);
    EXPECT_FALSE(book.reviseFacts(backwards, kAuthor));
    EXPECT_TRUE(book.station()->facts().absences.empty());
    EXPECT_EQ(problemsOf(book), "");
}

TEST(Absence, ExplainsAGapOnlyWhereNobodyStandsIn) {
    record::StationFacts facts = withDiary();
    const auto on = [&](date::year_month_day date) {
        return record::absenceExplaining(facts.absences, day(date));
    };
    EXPECT_EQ(on(2025_y / 7 / 31), nullptr);
    ASSERT_NE(on(2025_y / 8 / 1), nullptr); // both ends included
    ASSERT_NE(on(2025_y / 8 / 14), nullptr);
    EXPECT_EQ(on(2025_y / 8 / 14)->reason, "away");
    EXPECT_EQ(on(2025_y / 8 / 15), nullptr);
    EXPECT_EQ(on(2025_y / 9 / 1), nullptr) << "EW was to read";
    EXPECT_EQ(record::deputyOn(facts.absences, day(2025_y / 9 / 1)), "EW");
    EXPECT_EQ(record::deputyOn(facts.absences, day(2025_y / 8 / 1)), "");
    facts.absences[0].withdrawn = true;
    EXPECT_EQ(on(2025_y / 8 / 1), nullptr);
}
