// SPDX-License-Identifier: GPL-3.0-or-later
// The real program takes readings from a stream and is killed at any moment. Promise: what it said "saved" of
// is in the book, and every book is sound.
#include "tests/app/program.h"
#include "tests/faults/fault_ledger.h"
#include "tests/faults/long_run.h"
#include "tests/faults/processes.h"

#include <gtest/gtest.h>

#include <chrono>
#include <random>
#include <thread>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

namespace {

constexpr int kRowsOfATrial = 400;

/// Rows at the invented station's two hours, from a day on: all may come in, and no rule asks a question.
std::string rowsFrom(std::int64_t firstDay) {
    std::string rows = "time,dry,wet\n";
    for (int i = 0; i < kRowsOfATrial; ++i) {
        const date::sys_days day{date::days{firstDay + i / 2}};
        const int dry = 550 + i * 37 % 97;
        const int wet = dry - 20 - i * 17 % 29;
        const auto text = [](int tenths) {
            return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10);
        };
        rows += date::format("%F", day) + (i % 2 == 0 ? "T09:00Z," : "T21:00Z,") + text(dry) + "," +
                text(wet) + "\n";
    }
    return rows;
}

} // namespace

TEST(ReadingsAddedFromAStream, AreAllThereWhenTheProgramIsKilled) {
#ifndef WICKBOOK_PROGRAM
    GTEST_SKIP() << "the program is not built";
#else
    const TempFolder folder;
    const std::filesystem::path path = folder / "book";
    std::mt19937 draw(20260101);
    std::uniform_int_distribution<int> milliseconds(0, 80);
    FaultLine line{"kill -9 of add --in -", trialCount(25, 500), 0, 0, 0, {}};
    int withinAWrite = 0;
    for (int trial = 0; trial < line.trials; ++trial) {
        // A book of its own every now and then, so that opening it stays quick; days follow one another.
        if (trial % 25 == 0) {
            std::filesystem::remove(path);
            std::filesystem::remove(folder / "book-journal"); // one that was never whole stays until a write
            newBook(path);
        }
        const std::string rows = rowsFrom(-20'000 + std::int64_t{trial % 25} * kRowsOfATrial / 2);
        apptest::Running program({"add", "--book", path.string(), "--in", "-"});
        program.write(rows);
        std::vector<std::string> said{program.readLine()};
        ASSERT_TRUE(said.front().starts_with("saved ")) << said.front();
        std::this_thread::sleep_for(std::chrono::milliseconds(milliseconds(draw)));
        program.kill();
        for (std::string next = program.readLine(); !next.empty(); next = program.readLine())
            said.push_back(next);
        withinAWrite += std::filesystem::exists(folder / "book-journal") ? 1 : 0;

        const auto book = Book::open(path);
        ASSERT_TRUE(book) << "trial " << trial << ": " << book.error().detail;
        const std::string problems = problemsOf(*book);
        line.unsound += problems.empty() ? 0 : 1;
        EXPECT_EQ(problems, "") << "trial " << trial;
        for (const std::string& one : said) {
            const auto time = record::parseTime(one.substr(6));
            ASSERT_TRUE(time && time->offset == std::chrono::seconds{0}) << one;
            const auto stored = book->atInstant(record::Instant{time->local.time_since_epoch()});
            ASSERT_TRUE(stored) << stored.error().detail;
            line.lost += *stored && (*stored)->values.dry.value ? 0 : 1;
        }
        line.acknowledged += static_cast<std::int64_t>(said.size());
    }
    enterFault(line);
    std::printf("%d of %ld kills fell within a write\n", withinAWrite, static_cast<long>(line.trials));
    EXPECT_EQ(line.lost, 0);
    EXPECT_GE(line.acknowledged, line.trials);
    EXPECT_GT(withinAWrite, 0) << "no kill fell within a write: this proved little";
#endif
}
