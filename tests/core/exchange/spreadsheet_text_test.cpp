// SPDX-License-Identifier: GPL-3.0-or-later
// Cells that a spreadsheet would compute. The beginnings are those of the OWASP page "CSV Injection" (= + -
// @, tab, carriage return, line feed, and the signs in full width).
#include "core/exchange/byte_decoder.h"
#include "core/exchange/spreadsheet_text.h"

#include <gmock/gmock.h>

namespace wickbook::exchange {
namespace {

TEST(SpreadsheetText, AnApostropheStandsInFrontOfWhatWouldBeComputed) {
    for (const std::string text : {"=1+1", "+1", "-0.6 in the night", "@SUM(A1)", "\t=1", "\r=1", "\n=1",
                                   " =1", "\u00A0=1", "\uFF1D1", "\uFF0B1", "\uFF0D1", "\uFF201"}) {
        EXPECT_EQ(spreadsheetText(text), "'" + text);
        EXPECT_EQ(spreadsheetText("'" + text), "''" + text);
    }
    for (const std::string text : {"", "fog", "'", "'tis dry", "a=1", "1-2", "(-1)", "\u22121", "'' x"}) {
        EXPECT_EQ(spreadsheetText(text), text);
    }
}

/// Every text of up to five signs out of those that matter comes back, and no two become one.
TEST(SpreadsheetText, EveryTextComesBack) {
    static const std::string kSigns = "'=- \tx";
    std::vector<std::string> texts{""};
    for (std::size_t begin = 0, length = 0; length < 5; ++length) {
        const std::size_t end = texts.size();
        for (; begin < end; ++begin) {
            for (const char sign : kSigns) {
                texts.push_back(texts[begin] + sign);
            }
        }
    }
    EXPECT_EQ(texts.size(), 1U + 6U + 36U + 216U + 1296U + 7776U);
    for (const std::string& text : texts) {
        const std::string cell = spreadsheetText(text);
        ASSERT_EQ(fromSpreadsheetText(cell), text) << cell;
        const auto first = cell.find_first_not_of(' ');
        ASSERT_TRUE(first == std::string::npos || std::string("=-\t").find(cell[first]) == std::string::npos)
            << "[" << cell << "]";
    }
}

TEST(SpreadsheetText, ANumberStaysANumber) {
    for (const std::string number : {"-0.6", "+3", "16.0", "-17"}) {
        EXPECT_EQ(spreadsheetCell(number), number);
    }
    EXPECT_EQ(spreadsheetCell("-0.5/0.1"), "'-0.5/0.1");
    EXPECT_EQ(spreadsheetCell("-1 in the night"), "'-1 in the night");
}

TEST(SpreadsheetText, WhatNoTextFileHoldsIsReplaced) {
    EXPECT_EQ(spreadsheetText(std::string_view("a\0b", 3)), "a\u2400b");
    EXPECT_EQ(spreadsheetText("caf\xE9"), "caf\u00E9"); // Latin-1
    EXPECT_TRUE(isUtf8(spreadsheetText("\xFF\xC0=")));
}

} // namespace
} // namespace wickbook::exchange
