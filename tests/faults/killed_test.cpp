// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/processes.h"

#include <gtest/gtest.h>

#include <chrono>
#include <random>
#include <thread>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

TEST(ABookWhoseProgramIsKilled, HoldsEveryReadingThatWasSaidToBeSaved) {
    const TempFolder folder;
    newBook(folder / "book");
    std::mt19937 source(20250301);
    std::uniform_int_distribution<int> milliseconds(0, 60);
    std::int64_t acknowledged = 0;
    int interrupted = 0;
    for (std::uint64_t round = 0; round < 40; ++round) {
        AppendLoop loop(folder / "book", 1000 + round, 100'000);
        loop.waitForFirstWord();
        std::this_thread::sleep_for(std::chrono::milliseconds(milliseconds(source)));
        loop.kill();
        if (std::filesystem::exists(folder / "book-journal"))
            ++interrupted;
        const auto said = loop.said();
        const auto book = Book::open(folder / "book");
        ASSERT_TRUE(book) << "round " << round << ": " << book.error().detail;
        ASSERT_EQ(problemsOf(*book), "") << "round " << round;
        for (const Acknowledged& one : said) {
            const auto stored = book->observation(one.subject);
            ASSERT_TRUE(stored && *stored) << "round " << round << ", revision " << one.sequence;
            ASSERT_EQ((*stored)->stamp.sequence, one.sequence);
        }
        acknowledged += static_cast<std::int64_t>(said.size());
        // At most one more than was said: the one stored when the word was cut off.
        ASSERT_LE(book->observationCount().value(), acknowledged + static_cast<std::int64_t>(round) + 1);
    }
    EXPECT_GE(acknowledged, 40) << "the loop hardly ran: this proved nothing";
    RecordProperty("acknowledged", std::to_string(acknowledged));
    RecordProperty("interruptedInAWrite", interrupted);
    std::printf("%ld readings acknowledged in 40 rounds, %d rounds ended within a write\n",
                static_cast<long>(acknowledged), interrupted);
}

TEST(TwoProgramsOnOneBook, LoseNothingOfEachOther) {
    const TempFolder folder;
    newBook(folder / "book");
    constexpr int kEach = 60;
    AppendLoop first(folder / "book", 101, kEach);
    AppendLoop second(folder / "book", 102, kEach);
    EXPECT_EQ(first.wait(), 0);
    EXPECT_EQ(second.wait(), 0);
    const auto book = Book::open(folder / "book");
    ASSERT_TRUE(book);
    EXPECT_EQ(problemsOf(*book), "");
    EXPECT_EQ(book->observationCount().value(), 2 * kEach);
    EXPECT_EQ(first.said().size(), static_cast<std::size_t>(kEach));
    EXPECT_EQ(second.said().size(), static_cast<std::size_t>(kEach));
}

TEST(ABackupMadeWhileAnotherProgramWrites, IsWholeAndSound) {
    const TempFolder folder;
    const Book book = newBook(folder / "book");
    AppendLoop loop(folder / "book", 103, 100'000);
    for (int i = 0; i < 10; ++i) {
        const auto copy = folder / ("copy" + std::to_string(i));
        auto done = book.backupTo(copy);
        // A program that writes without a pause may hold the book past any patience: told, nothing made, and
        // it works a little later.
        for (int again = 0; again < 5 && !done && done.error().kind == StoreErrorKind::Busy; ++again) {
            EXPECT_FALSE(std::filesystem::exists(copy));
            done = book.backupTo(copy);
        }
        ASSERT_TRUE(done) << done.error().detail;
        EXPECT_EQ(problemsOf(*Book::open(copy, OpenMode::ReadOnly)), "");
    }
    loop.waitForFirstWord();
    loop.kill();
    EXPECT_FALSE(loop.said().empty());
}
