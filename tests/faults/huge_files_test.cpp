// SPDX-License-Identifier: GPL-3.0-or-later
// Files of a size that no register has: a million rows, a line of a gigabyte. Promise: memory stays under 256
// MB, the work can be stopped by Ctrl-C, and stopping leaves no trace.
#include "tests/app/program.h"
#include "tests/faults/fault_ledger.h"
#include "tests/faults/long_run.h"
#include "tests/faults/processes.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#ifdef WICKBOOK_PROGRAM

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;
using ::testing::HasSubstr;

namespace {

constexpr long kMostKilobytes = 256 * 1024;

/// Hourly readings from 1900 on: two of a day's twenty-four fall to observing hours, the others are extra.
void writeRegister(const std::filesystem::path& path, int rows) {
    std::ofstream out(path, std::ios::binary);
    out << "time,dry,wet,note\n";
    for (int i = 0; i < rows; ++i) {
        const record::Instant time = at(-2'208'988'800LL + 3600LL * i); // 1900-01-01T00:00Z
        out << record::instantText(time) << ",61.5,57,calm and clear\n";
    }
}

void writeLongLine(const std::filesystem::path& path, std::string_view before, std::int64_t bytes,
                   std::string_view after) {
    std::ofstream out(path, std::ios::binary);
    out << before;
    const std::string block(1 << 20, '7');
    for (std::int64_t written = 0; written < bytes; written += static_cast<std::int64_t>(block.size()))
        out << block;
    out << after;
}

class AHugeFile : public ::testing::Test {
protected:
    TempFolder folder;
    TempFolder aside;
    std::filesystem::path path = folder / "book";
    std::filesystem::path rows = aside / "rows.csv";

    void SetUp() override { newBook(path); }
    [[nodiscard]] apptest::Arguments import(std::initializer_list<std::string> more = {}) const {
        apptest::Arguments arguments{"import", "--book", path.string(), "--in", rows.string()};
        arguments.insert(arguments.end(), more);
        return arguments;
    }
    long peakOf(int count) {
        std::filesystem::remove(path);
        newBook(path);
        writeRegister(rows, count);
        const auto ran = apptest::run(import());
        EXPECT_EQ(ran.code, 0) << ran.err;
        const auto book = Book::open(path, OpenMode::ReadOnly);
        EXPECT_EQ(book->observationCount(), count);
        return ran.peakKilobytes;
    }
};

} // namespace

TEST_F(AHugeFile, OfAMillionRowsTakesLittleMemory) {
    if (longRun()) {
        const long peak = peakOf(1'000'000);
        std::printf("a million rows: %ld MB\n", peak / 1024);
        EXPECT_LT(peak, kMostKilobytes);
        enterFault(
            {"import of a million rows", 1, 1'000'000, 0, 0, "peak " + std::to_string(peak / 1024) + " MB"});
        return;
    }
    // What the million would take by how the memory grows; what is kept between parts grows in a straight
    // line once the cache of pages is full.
    const long few = peakOf(40'000);
    const long more = peakOf(120'000);
    const long million = more + (more - few) / 80 * (1'000 - 120);
    std::printf("40,000 rows: %ld MB, 120,000: %ld MB, a million by that: %ld MB\n", few / 1024, more / 1024,
                million / 1024);
    EXPECT_LT(more, kMostKilobytes);
}

TEST_F(AHugeFile, OfRejectedRowsTakesLittleMemory) {
    const int count = trialCount(60'000, 1'000'000);
    {
        std::ofstream out(rows, std::ios::binary);
        out << "time,dry,wet\n";
        for (int i = 0; i < count; ++i)
            out << "never,61.5,57\n";
    }
    const auto ran = apptest::run(import({"--rejects", (aside / "rejects.csv").string()}));
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.err, HasSubstr("Rejected: " + std::to_string(count)));
    EXPECT_LT(ran.peakKilobytes, kMostKilobytes / 2);
    EXPECT_EQ(apptest::lines(bytesAt(aside / "rejects.csv")).size(), static_cast<std::size_t>(count) + 1);
}

TEST_F(AHugeFile, OfOneLineTakesLittleMemory) {
    const std::int64_t bytes = longRun() ? 1LL << 30 : 1LL << 26;
    FaultLine line{"a line of " + std::to_string(bytes >> 20) + " MB", 0, 0, 0, 0, {}};
    long most = 0;
    const std::string header = "time,dry,wet\n";
    const std::string good = "1990-01-01T09:00Z,61.5,57\n";
    struct Shape {
        std::string before, after;
        int code;
    };
    for (const Shape& shape : {Shape{"", "", 2}, Shape{header + good, "\n" + good, 0},
                               Shape{header + good + "\"", "\n1990-01-02T09:00Z,61.5,57\n", 0},
                               Shape{header + good + "1990-01-02T09:00Z,", ",57\n", 0}}) {
        std::filesystem::remove(path);
        newBook(path);
        writeLongLine(rows, shape.before, bytes, shape.after);
        const auto ran = apptest::run(import());
        ++line.trials;
        EXPECT_EQ(ran.code, shape.code) << shape.before << ran.err;
        most = std::max(most, ran.peakKilobytes);
        EXPECT_LT(ran.peakKilobytes, kMostKilobytes / 2);
        if (shape.code == 0) {
            EXPECT_GE(Book::open(path)->observationCount().value(), 1);
        }
        line.message = apptest::lines(ran.err).front().substr(0, 120);
    }
    std::printf("most memory: %ld MB\n", most / 1024);
    enterFault(line);
}

TEST_F(AHugeFile, StoppedByControlCLeavesNoTrace) {
    writeRegister(rows, trialCount(120'000, 1'000'000));
    const auto before = contentsOf(folder.path());
    FaultLine line{"Ctrl-C while importing", 0, 0, 0, 0, {}};
    for (const int milliseconds : {300, 900, 1'500}) {
        apptest::Strain strain;
        strain.signal = SIGINT;
        strain.killAfterMilliseconds = milliseconds;
        const auto ran = apptest::run(import({"--rejects", (folder / "rejects.csv").string()}), {}, strain);
        ++line.trials;
        ASSERT_EQ(ran.code, 130) << ran.err;
        EXPECT_TRUE(contentsOf(folder.path()) == before) << "a trace was left";
        if (ran.err.empty())
            continue; // it had not begun yet, and ended as any program does
        line.message = lastSentence(ran.err);
        EXPECT_THAT(ran.err, HasSubstr("Stopped: nothing was imported"));
    }
    enterFault(line);
    EXPECT_NE(line.message, "") << "it was never stopped at work";
}

#endif
