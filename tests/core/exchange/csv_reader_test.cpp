// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/exchange/csv_reading.h"

#include <gmock/gmock.h>

#include <fstream>

namespace wickbook::exchange::testing {
namespace {

using namespace std::string_literals;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

// RFC 4180, section 2, rules 1 to 7: the examples as printed there.
TEST(CsvReaderRfc4180, RecordsOnLinesEndedByCrlf) {
    EXPECT_EQ(readAll("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n").cells(),
              (Table{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
}
TEST(CsvReaderRfc4180, LastRecordMayLackItsEnd) {
    EXPECT_EQ(readAll("aaa,bbb,ccc\r\nzzz,yyy,xxx").cells(),
              (Table{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
}
TEST(CsvReaderRfc4180, QuotedAndUnquotedCells) {
    EXPECT_EQ(readAll("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx").cells(),
              (Table{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
}
TEST(CsvReaderRfc4180, LineEndInsideQuotes) {
    EXPECT_EQ(readAll("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx").cells(),
              (Table{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
}
TEST(CsvReaderRfc4180, DoubledQuote) {
    EXPECT_EQ(readAll("\"aaa\",\"b\"\"bb\",\"ccc\"").cells(), (Table{{"aaa", "b\"bb", "ccc"}}));
}
TEST(CsvReaderRfc4180, BlanksBelongToTheCell) {
    EXPECT_EQ(readAll(" a , b").cells(), (Table{{" a ", " b"}}));
}

TEST(CsvReader, EveryLineEndCountsOnce) {
    const auto read = readAll("a,b\r1,2\n3,4\r\n\r\n5,6\r\r7,8");
    EXPECT_EQ(read.cells(), (Table{{"a", "b"}, {"1", "2"}, {"3", "4"}, {"5", "6"}, {"7", "8"}}));
    std::vector<std::int64_t> lines;
    for (const auto& record : read.records) {
        lines.push_back(record.line);
    }
    EXPECT_THAT(lines, ElementsAre(1, 2, 3, 5, 7));
}

TEST(CsvReader, LinesAreCountedThroughQuotedLineEnds) {
    const auto read = readAll("a\n\"x\ny\rz\r\nw\"\nlast\n");
    ASSERT_THAT(read.records, SizeIs(3));
    EXPECT_EQ(read.records[1].text, "\"x\ny\rz\r\nw\"");
    EXPECT_EQ(read.records[2].line, 6);
}

TEST(CsvReader, EmptyInputIsToldOnce) {
    for (const auto& text : {""s, "\xEF\xBB\xBF"s, "\xFF\xFE"s, "\r\n\n\r"s}) {
        const auto read = readAll(text);
        ASSERT_THAT(read.errors, SizeIs(1));
        EXPECT_EQ(read.errors[0].kind, CsvErrorKind::Empty);
        EXPECT_THAT(read.records, IsEmpty());
    }
}

TEST(CsvReader, SeparatorFromTheHeaderOutsideQuotes) {
    EXPECT_EQ(readAll("a;b;c\n1;2,5;3").format.separator, ';');
    EXPECT_EQ(readAll("a\tb, c\td\n").format.separator, '\t');
    EXPECT_EQ(readAll("\"a;b;c\",d\n").format.separator, ',');
    EXPECT_EQ(readAll("\n\na;b\n1,2,3,4;5").format.separator, ';');
    EXPECT_EQ(readAll("alone\n").format.separator, ',');
    EXPECT_EQ(readAll("a;b\n", ',').cells(), (Table{{"a;b"}}));
}

TEST(CsvReader, MarkAtTheBeginningIsNoText) {
    const auto read = readAll("\xEF\xBB\xBFtime,dry\n1,2\n");
    EXPECT_EQ(read.cells(), (Table{{"time", "dry"}, {"1", "2"}}));
    EXPECT_EQ(read.format.encoding, "UTF-8");
}

std::string utf16(std::u16string_view text, bool bigEndian, bool mark = true) {
    std::string bytes;
    const auto put = [&](char16_t unit) {
        const char high = static_cast<char>(unit >> 8U);
        const char low = static_cast<char>(unit & 0xFFU);
        bytes += bigEndian ? std::string{high, low} : std::string{low, high};
    };
    if (mark) {
        put(0xFEFF);
    }
    for (const char16_t unit : text) {
        put(unit);
    }
    return bytes;
}

TEST(CsvReader, Utf16BothWays) {
    for (const bool big : {false, true}) {
        // U+010D holds the byte 0x0D, U+0A2C holds 0x0A and ',' (0x2C): bytes that a reader of bytes would
        // trip on.
        const auto read = readAll(utf16(u"dry,noté\r\n\u221216.4,\"\u010D\u0A2C\U0001F327\"\r\n", big));
        EXPECT_EQ(read.cells(), (Table{{"dry", "noté"}, {"\u221216.4", "\u010D\u0A2C\U0001F327"}}));
        EXPECT_EQ(read.format.encoding, big ? "UTF-16BE" : "UTF-16LE");
        EXPECT_THAT(read.errors, IsEmpty());
    }
}

TEST(CsvReader, Utf16PairAcrossChunks) {
    // The pair lies across every chunk boundary in turn.
    for (std::size_t padding = 32'764; padding < 32'772; ++padding) {
        const std::u16string text = std::u16string(padding, u'x') + u"\U0001F327,b\n";
        const auto read = readAll(utf16(text, false));
        ASSERT_THAT(read.records, SizeIs(1));
        EXPECT_TRUE(read.records[0].cells[0].ends_with("x\U0001F327")) << padding;
    }
}

TEST(CsvReader, BrokenUtf16IsAnErrorForItsRecord) {
    const auto lone = readAll(utf16(std::u16string(u"a,b\n1,") + char16_t{0xD83C} + u"\n3,4\n", false));
    EXPECT_EQ(lone.cells(), (Table{{"a", "b"}, {"3", "4"}}));
    ASSERT_THAT(lone.errors, SizeIs(1));
    EXPECT_EQ(lone.errors[0].kind, CsvErrorKind::NotReadable);
    EXPECT_EQ(lone.errors[0].line, 2);
    const auto odd = readAll(utf16(u"a,b\n1,2", true) + "3");
    ASSERT_THAT(odd.errors, SizeIs(1));
    EXPECT_EQ(odd.errors[0].kind, CsvErrorKind::NotReadable);
}

TEST(CsvReader, Utf16WithoutMarkIsRefusedNotMisread) {
    const auto read = readAll(utf16(u"a,b\n1,2\n", false, false));
    EXPECT_THAT(read.records, IsEmpty());
    ASSERT_FALSE(read.errors.empty());
    EXPECT_EQ(read.errors[0].kind, CsvErrorKind::NulByte);
}

TEST(CsvReader, Latin1RecordByRecord) {
    // ISO 8859-1: E9 é, FC ü, B0 °. The second line is sound UTF-8 and stays so.
    const auto read = readAll("dry \xB0"
                              "C,note\n1,\xC3\xA9t\xC3\xA9\n2,br\xFCme\n");
    EXPECT_EQ(read.cells(), (Table{{"dry °C", "note"}, {"1", "été"}, {"2", "brüme"}}));
    EXPECT_EQ(read.format.encoding, "Latin-1");
    EXPECT_EQ(read.records[2].text, "2,brüme");
    // Windows-1252: 96 en dash, 93 and 94 quotation marks.
    EXPECT_EQ(readAll("\x96,\x93x\x94\n").cells(), (Table{{"–", "“x”"}}));
}

TEST(CsvReader, InvalidUtf8IsNotTakenForUtf8) {
    // The Unicode Standard, Table 3-7: overlong, surrogate, above U+10FFFF, cut short.
    for (const std::string bad :
         {"\xC0\xAF", "\xE0\x80\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xE2\x82"}) {
        EXPECT_EQ(readAll("a,b\n1," + bad + "\n").format.encoding, "Latin-1");
    }
    EXPECT_EQ(readAll("a,b\n1,\xF4\x8F\xBF\xBF\n").format.encoding, "UTF-8");
}

TEST(CsvReader, TextAfterAClosingQuoteCostsOneLine) {
    const auto read = readAll("a,b\n\"1\"x,2\n3,4\n");
    EXPECT_EQ(read.cells(), (Table{{"a", "b"}, {"3", "4"}}));
    ASSERT_THAT(read.errors, SizeIs(1));
    EXPECT_EQ(read.errors[0].kind, CsvErrorKind::TextAfterQuote);
    EXPECT_EQ(read.errors[0].line, 2);
    EXPECT_EQ(read.errors[0].text, "\"1\"x,2");
}

TEST(CsvReader, QuoteInsideTextCostsOneLine) {
    const auto read = readAll("a,b\n6\" snow,2\n x, \"y\"\n3,4\n");
    EXPECT_EQ(read.cells(), (Table{{"a", "b"}, {"3", "4"}}));
    ASSERT_THAT(read.errors, SizeIs(2));
    EXPECT_EQ(read.errors[0].kind, CsvErrorKind::QuoteInText);
    EXPECT_EQ(read.errors[1].text, " x, \"y\"");
}

TEST(CsvReader, OpenQuoteAtTheEndCostsItsLine) {
    const auto read = readAll("a,b\n1,\"open\n3,4\n5,6\n");
    EXPECT_EQ(read.cells(), (Table{{"a", "b"}, {"3", "4"}, {"5", "6"}}));
    ASSERT_THAT(read.errors, SizeIs(1));
    EXPECT_EQ(read.errors[0].kind, CsvErrorKind::OpenQuote);
    EXPECT_EQ(read.errors[0].line, 2);
    EXPECT_EQ(read.errors[0].text, "1,\"open");
    EXPECT_EQ(read.records[1].line, 3);
}

TEST(CsvReader, OpenQuoteMeetsTheNextQuotedCell) {
    // The quote of line 4 would close that of line 2: text follows it, so line 2 alone is given up.
    const auto read = readAll("a,b\n1,\"open\n3,4\n5,\"fog\"\n");
    EXPECT_EQ(read.cells(), (Table{{"a", "b"}, {"3", "4"}, {"5", "fog"}}));
    ASSERT_THAT(read.errors, SizeIs(1));
    EXPECT_EQ(read.errors[0].kind, CsvErrorKind::OpenQuote);
    EXPECT_EQ(read.errors[0].line, 2);
}

TEST(CsvReader, OpenQuoteInALongFileCostsItsLine) {
    std::string text = "a,b\n1,\"open\n";
    Table expected{{"a", "b"}};
    for (int i = 0; i < 300'000; ++i) {
        text += std::to_string(i) + ",x\n";
        expected.push_back({std::to_string(i), "x"});
    }
    ASSERT_GT(text.size(), 2 * kLongestRecord);
    const auto read = readAll(text);
    EXPECT_EQ(read.cells(), expected);
    ASSERT_THAT(read.errors, SizeIs(1));
    EXPECT_EQ(read.errors[0].kind, CsvErrorKind::OpenQuote);
    EXPECT_EQ(read.errors[0].line, 2);
    EXPECT_EQ(read.records.back().line, 300'002);
}

TEST(CsvReader, NulIsAnErrorForItsLine) {
    const auto read = readAll("a,b\n1,\0x\n\"q\0\",2\n3,4\n"s);
    EXPECT_EQ(read.cells(), (Table{{"a", "b"}, {"3", "4"}}));
    ASSERT_THAT(read.errors, SizeIs(2));
    EXPECT_EQ(read.errors[0].kind, CsvErrorKind::NulByte);
    EXPECT_EQ(read.errors[0].text, "1,\0x"s);
    EXPECT_EQ(read.errors[1].line, 3);
}

TEST(CsvReader, AFolderIsNoFile) {
    std::ifstream folder("/");
    const auto read = readAll(folder);
    ASSERT_THAT(read.errors, SizeIs(1));
    EXPECT_EQ(read.errors[0].kind, CsvErrorKind::NotReadable);
    std::ifstream absent("no such file");
    EXPECT_EQ(readAll(absent).errors.at(0).kind, CsvErrorKind::NotReadable);
}

/// Gives so many bytes, then fails as a broken disk does.
class FailingBuffer : public std::streambuf {
public:
    explicit FailingBuffer(std::string text) : text_(std::move(text)) {
        setg(text_.data(), text_.data(), text_.data() + text_.size());
    }

protected:
    int_type underflow() override { throw std::ios_base::failure("input/output error"); }

private:
    std::string text_;
};

TEST(CsvReader, HalfANumberBeforeAFailureIsNotTaken) {
    FailingBuffer buffer("a,b\n1,2\n3,4");
    std::istream input(&buffer);
    const auto read = readAll(input);
    EXPECT_EQ(read.cells(), (Table{{"a", "b"}, {"1", "2"}}));
    ASSERT_THAT(read.errors, SizeIs(1));
    EXPECT_EQ(read.errors[0].kind, CsvErrorKind::NotReadable);
}

/// A pipe: one line at a time, and nobody may ask for more before it is due.
class PipeBuffer : public std::streambuf {
public:
    explicit PipeBuffer(std::vector<std::string> lines) : lines_(std::move(lines)) {}
    std::size_t given = 0;

protected:
    int_type underflow() override {
        if (given == lines_.size()) {
            return traits_type::eof();
        }
        auto& line = lines_[given++];
        setg(line.data(), line.data(), line.data() + line.size());
        return traits_type::to_int_type(line.front());
    }

private:
    std::vector<std::string> lines_;
};

TEST(CsvReader, ARowIsGivenBeforeTheNextIsTyped) {
    PipeBuffer pipe({"a,b\n", "1,2\n", "3,4\r\n", "5,6\n"});
    std::istream input(&pipe);
    CsvReader reader(input);
    for (std::size_t row = 1; row <= 4; ++row) {
        const auto record = reader.next();
        ASSERT_TRUE(record && *record);
        EXPECT_EQ(pipe.given, row);
    }
}

} // namespace
} // namespace wickbook::exchange::testing
