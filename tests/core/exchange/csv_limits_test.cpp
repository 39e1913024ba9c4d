// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/exchange/csv_reading.h"

#include <gmock/gmock.h>

#include <fstream>
#include <random>

/// Long lines, many lines, any cells at all.

namespace wickbook::exchange::testing {
namespace {

using ::testing::SizeIs;

/// Head, then so many times the piece, then the tail; never held whole.
class GeneratedBuffer : public std::streambuf {
public:
    GeneratedBuffer(std::string head, std::string piece, std::size_t times, std::string tail)
        : head_(std::move(head)), piece_(std::move(piece)), tail_(std::move(tail)), times_(times) {}

protected:
    int_type underflow() override {
        std::string* next = nullptr;
        if (!headDone_) {
            headDone_ = true;
            next = &head_;
        } else if (times_ > 0) {
            --times_;
            next = &piece_;
        } else if (!tailDone_) {
            tailDone_ = true;
            next = &tail_;
        }
        if (next == nullptr || next->empty()) {
            return traits_type::eof();
        }
        setg(next->data(), next->data(), next->data() + next->size());
        return traits_type::to_int_type(next->front());
    }

private:
    std::string head_;
    std::string piece_;
    std::string tail_;
    std::size_t times_;
    bool headDone_ = false;
    bool tailDone_ = false;
};

/// Most memory resident since the last reset, kB (proc(5): VmHWM, clear_refs 5).
void resetPeak() {
    std::ofstream("/proc/self/clear_refs") << 5;
}
long peakKilobytes() {
    std::ifstream status("/proc/self/status");
    for (std::string word; status >> word;) {
        if (word == "VmHWM:") {
            long value = 0;
            status >> value;
            return value;
        }
    }
    return 0;
}

constexpr std::size_t kMegabyte = 1U << 20U;
/// Two records, a chunk, and what the allocator rounds up; far below the 64 MB of input.
constexpr long kMostKilobytes = 16 * 1024;

class LongLine : public ::testing::TestWithParam<std::string> {};

TEST_P(LongLine, CostsOneLineAndLittleMemory) {
    GeneratedBuffer buffer("a,b\n" + GetParam(), std::string(kMegabyte, 'x'), 64, "\n3,4\n");
    std::istream input(&buffer);
    resetPeak();
    const long before = peakKilobytes();
    const auto read = readAll(input);
    const long grown = peakKilobytes() - before;
    EXPECT_EQ(read.cells(), (Table{{"a", "b"}, {"3", "4"}}));
    ASSERT_THAT(read.errors, SizeIs(1));
    EXPECT_EQ(read.errors[0].kind, CsvErrorKind::LineTooLong);
    EXPECT_EQ(read.errors[0].line, 2);
    EXPECT_LE(read.errors[0].text.size(), kLongestErrorText);
    EXPECT_TRUE(read.errors[0].text.starts_with(GetParam() + "xxx"));
    EXPECT_EQ(read.records[1].line, 3);
    ASSERT_GT(before, 0);
#if defined(__SANITIZE_ADDRESS__)
    // The sanitizer keeps what was freed: its memory says nothing of ours.
    static_cast<void>(grown);
#else
    EXPECT_LT(grown, kMostKilobytes);
#endif
}

INSTANTIATE_TEST_SUITE_P(CsvReader, LongLine, ::testing::Values("", "1,", "1,\""));

TEST(CsvReader, ALongFirstLineIsToldToo) {
    GeneratedBuffer whole("x", std::string(kMegabyte, 'x'), 8, "");
    std::istream input(&whole);
    const auto read = readAll(input);
    ASSERT_THAT(read.errors, SizeIs(1));
    EXPECT_EQ(read.errors[0].kind, CsvErrorKind::LineTooLong);
}

TEST(CsvReader, TheLongestRecordIsTakenAndOneMoreByteIsNot) {
    const std::string longest(kLongestRecord, 'x');
    EXPECT_THAT(readAll(longest + "\nb\n").records, SizeIs(2));
    EXPECT_THAT(readAll(longest).records, SizeIs(1));
    EXPECT_EQ(readAll(longest + "x\nb\n").errors.at(0).kind, CsvErrorKind::LineTooLong);
    EXPECT_EQ(readAll(longest + "x").errors.at(0).kind, CsvErrorKind::LineTooLong);
}

TEST(CsvReader, ManyOpenQuotesTakeLinearTime) {
    // Each pair of lines would be read again and again by a reader that goes back too far; a time limit on
    // the test is the check.
    GeneratedBuffer buffer("a,b\n", "1,\"open\n2,x\n3,\"\"\n", 300'000, "\n");
    std::istream input(&buffer);
    const auto read = readAll(input);
    EXPECT_THAT(read.errors, SizeIs(300'000));
    EXPECT_THAT(read.records, SizeIs(600'001));
}

TEST(CsvReader, AHundredThousandRows) {
    GeneratedBuffer buffer("time,dry,wet\n", "2025-03-01T09:00Z,16.4,\"15.2\"\r\n", 100'000, "last,1,2");
    std::istream input(&buffer);
    const auto read = readAll(input);
    ASSERT_THAT(read.records, SizeIs(100'002));
    EXPECT_EQ(read.records[100'000].cells, (std::vector<std::string>{"2025-03-01T09:00Z", "16.4", "15.2"}));
    EXPECT_EQ(read.records.back().line, 100'002);
}

std::string randomCell(std::mt19937& random) {
    static const std::vector<std::string> kPieces{"a",      "16.4", ",",    ";",    "\t", "\"",
                                                  "\"\"",   "\n",   "\r",   "\r\n", " ",  "é",
                                                  "\u2212", "雨",   "=1+1", "-",    "@",  "\U0001F327"};
    std::string cell;
    for (auto length = random() % 6; length > 0; --length) {
        cell += kPieces[random() % kPieces.size()];
    }
    return cell;
}

TEST(CsvProperty, WhatIsWrittenIsRead) {
    std::mt19937 random(20'250'301);
    for (int trial = 0; trial < 3000; ++trial) {
        const char separator = std::string(",;\t")[random() % 3];
        const auto end = std::vector<std::string>{"\n", "\r\n", "\r"}[random() % 3];
        Table table;
        std::string text;
        const auto rows = 1 + random() % 5;
        for (std::size_t row = 0; row < rows; ++row) {
            std::vector<std::string> cells;
            for (auto count = 1 + random() % 5; count > 0; --count) {
                cells.push_back(randomCell(random));
            }
            text += csvLine(cells, separator) + (row + 1 == rows && random() % 2 == 0 ? "" : end);
            table.push_back(std::move(cells));
        }
        const auto read = readAll(text, separator);
        ASSERT_EQ(read.cells(), table) << text;
        ASSERT_TRUE(read.errors.empty());
    }
}

TEST(CsvProperty, AnyBytesEndAndLineNumbersRise) {
    std::mt19937 random(7);
    for (int trial = 0; trial < 3000; ++trial) {
        std::string text;
        for (auto length = random() % 80; length > 0; --length) {
            text += random() % 3 == 0 ? static_cast<char>(random() % 256)
                                      : std::string(",;\"\n\r\xFF\xFE")[random() % 7];
        }
        const auto read = readAll(text);
        std::int64_t line = 0;
        for (const auto& record : read.records) {
            ASSERT_GT(record.line, line) << text;
            line = record.line;
        }
    }
}

TEST(CsvLine, QuotesOnlyWhatNeedsIt) {
    EXPECT_EQ(csvLine({"a", "", "b c"}), "a,,b c");
    EXPECT_EQ(csvLine({"a,b", "c;d"}), "\"a,b\",c;d");
    EXPECT_EQ(csvLine({"a,b", "c;d"}, ';'), "a,b;\"c;d\"");
    EXPECT_EQ(csvLine({"say \"fog\"", "x\ny"}), "\"say \"\"fog\"\"\",\"x\ny\"");
    EXPECT_EQ(csvLine({""}), "\"\"");
    EXPECT_EQ(csvLine({"=1+1"}), "=1+1"); // data stay as they are
}

} // namespace
} // namespace wickbook::exchange::testing
