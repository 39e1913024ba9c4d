// SPDX-License-Identifier: GPL-3.0-or-later
// The real program is killed while it brings in a register, makes or restores a copy, hands on a month.
// Promise: all of it or nothing, under its name never a half; what was acknowledged before stays.
#include "tests/app/program.h"
#include "tests/faults/fault_ledger.h"
#include "tests/faults/long_run.h"
#include "tests/faults/processes.h"

#include <gtest/gtest.h>

#include <random>

#ifdef WICKBOOK_PROGRAM

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

namespace {

constexpr int kHeld = 1'500;
constexpr int kBroughtIn = 3'000;

std::string registerOf(int readings) {
    std::string rows = "time,dry,wet\n";
    for (int i = 0; i < readings; ++i) {
        const date::sys_days day{date::days{10'000 + i / 2}};
        rows += date::format("%F", day) + (i % 2 == 0 ? "T09:00Z" : "T21:00Z") + ",61.5,57\n";
    }
    return rows;
}

class WorkThatIsKilled : public ::testing::Test {
protected:
    TempFolder folder;
    TempFolder aside;
    std::string before;

    void SetUp() override {
        {
            Book book = newBook(aside / "start");
            std::vector<ObservationChange> held;
            for (int i = 0; i < kHeld; ++i)
                held.push_back(change(reading(i), static_cast<std::uint64_t>(i)));
            ASSERT_TRUE(book.appendAll(held));
        }
        before = bytesAt(aside / "start");
        writeBytes(aside / "rows.csv", registerOf(kBroughtIn));
    }
    void prepare() const {
        std::filesystem::remove_all(folder.path());
        std::filesystem::create_directory(folder.path());
        writeBytes(folder / "book", before);
    }
    /// Kills the work at moments drawn over its whole length; after each, expects what `whole` expects.
    void killAtAnyMoment(const std::string& fault, const apptest::Arguments& arguments,
                         const std::function<bool(const std::string& where)>& wholeOrNothing) {
        prepare();
        const auto start = std::chrono::steady_clock::now();
        ASSERT_EQ(apptest::run(arguments).code, 0);
        const auto took =
            std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now() - start);
        ASSERT_TRUE(wholeOrNothing("unhindered"));
        std::mt19937 draw(11);
        std::uniform_int_distribution<int> milliseconds(1, static_cast<int>(took.count()) + 5);
        FaultLine line{fault, trialCount(8, 100), kHeld, 0, 0, {}};
        int finished = 0;
        for (int trial = 0; trial < line.trials; ++trial) {
            prepare();
            apptest::Strain strain;
            strain.killAfterMilliseconds = milliseconds(draw);
            apptest::run(arguments, {}, strain);
            const std::string where = fault + ", trial " + std::to_string(trial);
            finished += wholeOrNothing(where) ? 1 : 0;
            line.unsound += HasFailure() ? 1 : 0;
            ASSERT_FALSE(HasFailure()) << where;
        }
        enterFault(line);
        std::printf("%d of %ld were done before the kill\n", finished, static_cast<long>(line.trials));
        EXPECT_LT(finished, line.trials);
    }
    /// Readings of a sound book.
    static std::int64_t readingsOf(const std::filesystem::path& path, const std::string& where) {
        const auto book = Book::open(path);
        EXPECT_TRUE(book) << where << ": " << (book ? "" : book.error().detail);
        if (!book)
            return -1;
        EXPECT_EQ(problemsOf(*book), "") << where;
        return book->observationCount().value_or(-1);
    }
};

} // namespace

TEST_F(WorkThatIsKilled, BringingInIsAllOrNothing) {
    killAtAnyMoment("kill -9 while importing",
                    {"import", "--book", (folder / "book").string(), "--in", (aside / "rows.csv").string()},
                    [&](const std::string& where) {
                        const std::int64_t readings = readingsOf(folder / "book", where);
                        EXPECT_TRUE(readings == kHeld || readings == kHeld + kBroughtIn)
                            << where << ": " << readings;
                        return readings == kHeld + kBroughtIn;
                    });
}

TEST_F(WorkThatIsKilled, ACopyIsWholeOrNotThere) {
    killAtAnyMoment("kill -9 while backing up",
                    {"backup", "--book", (folder / "book").string(), "--out", (folder / "copy").string()},
                    [&](const std::string& where) {
                        EXPECT_EQ(readingsOf(folder / "book", where), kHeld);
                        if (!std::filesystem::exists(folder / "copy"))
                            return false;
                        EXPECT_EQ(readingsOf(folder / "copy", where), kHeld);
                        return true;
                    });
}

TEST_F(WorkThatIsKilled, AnExportIsWholeOrNotThere) {
    std::string whole;
    killAtAnyMoment("kill -9 while exporting",
                    {"export", "--book", (folder / "book").string(), "--out", (folder / "all.csv").string()},
                    [&](const std::string& where) {
                        EXPECT_EQ(readingsOf(folder / "book", where), kHeld);
                        if (!std::filesystem::exists(folder / "all.csv"))
                            return false;
                        const auto size = apptest::lines(bytesAt(folder / "all.csv")).size();
                        EXPECT_EQ(size, static_cast<std::size_t>(kHeld) + 1) << where;
                        return true;
                    });
}

#endif
