// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/decimal.h"

#include <gtest/gtest.h>

#include <charconv>
#include <random>
#include <string>

using namespace wickbook::units;

namespace {

std::string replaced(std::string text, char from, const std::string& to) {
    const auto at = text.find(from);
    return at == std::string::npos ? text : text.replace(at, 1, to);
}

Decimal parsed(std::string_view text, DecimalMark mark = DecimalMark::Either) {
    const auto result = parseDecimal(text, mark);
    EXPECT_TRUE(result) << text;
    return result.value_or(Decimal{-999, 0});
}

DecimalError refusal(std::string_view text, DecimalMark mark = DecimalMark::Either) {
    const auto result = parseDecimal(text, mark);
    EXPECT_FALSE(result) << text << " was taken for " << (result ? result->toText() : "");
    return result ? DecimalError{} : result.error();
}

} // namespace

TEST(Decimal, SixteenPointNoughtIsNotSixteen) {
    EXPECT_NE(parsed("16.0"), parsed("16"));
    EXPECT_EQ(parsed("16.0"), (Decimal{160, 1}));
    EXPECT_EQ(parsed("16"), (Decimal{16, 0}));
    EXPECT_DOUBLE_EQ(parsed("16.0").toDouble(), parsed("16").toDouble());
}

TEST(Decimal, BothMarksAndSigns) {
    EXPECT_EQ(parsed("16.4"), (Decimal{164, 1}));
    EXPECT_EQ(parsed("16,4"), (Decimal{164, 1}));
    EXPECT_EQ(parsed("-0.6"), (Decimal{-6, 1}));
    EXPECT_EQ(parsed("\u2212"
                     "0,6"),
              (Decimal{-6, 1}));
    EXPECT_EQ(parsed("+3"), (Decimal{3, 0}));
    EXPECT_EQ(parsed(" \u00A0"
                     "21.5\u202F\t"),
              (Decimal{215, 1}));
    EXPECT_EQ(parsed("-0.0"), (Decimal{0, 1})); // an integer mantissa has no negative zero
}

// A German spin box turns 21.5 into 21 and 1.234 into 1234.
TEST(Decimal, APointIsNeverAGroup) {
    EXPECT_EQ(parsed("1.234"), (Decimal{1234, 3}));
    EXPECT_EQ(parsed("1,234"), (Decimal{1234, 3}));
    EXPECT_EQ(parsed("21.5"), (Decimal{215, 1}));
    EXPECT_EQ(refusal("1.234", DecimalMark::Comma), DecimalError::GroupedDigits);
    EXPECT_EQ(refusal("1,234", DecimalMark::Point), DecimalError::GroupedDigits);
}

TEST(Decimal, GroupsAreRefused) {
    for (const std::string_view text : {"1.234,5", "1,234.5", "1 234", "1'234",
                                        "1\u00A0"
                                        "234",
                                        "1\u202F"
                                        "234",
                                        "1.234.567", "1,234,567", "1..2", "1,,2"}) {
        EXPECT_EQ(refusal(text), DecimalError::GroupedDigits) << text;
    }
}

TEST(Decimal, WhatIsNoNumber) {
    EXPECT_EQ(refusal(""), DecimalError::Empty);
    EXPECT_EQ(refusal(" \t\u00A0"), DecimalError::Empty);
    for (const std::string_view text : {"-", "+", ".", ",", "-.", "1e5", "0x1F", "inf", "nan", "NaN", "--1",
                                        "+-1", "1-", "16°", "16 C", "abc", "½", "１６", "\u2212"}) {
        EXPECT_FALSE(parseDecimal(text)) << text;
    }
    EXPECT_EQ(refusal("1e5"), DecimalError::NotANumber);
    EXPECT_EQ(refusal("nan"), DecimalError::NotANumber);
    EXPECT_EQ(refusal(std::string_view("1\0002", 3)), DecimalError::NotANumber);
}

TEST(Decimal, TooLong) {
    EXPECT_EQ(parsed("999999999999999").mantissa, 999999999999999);
    EXPECT_EQ(refusal("1000000000000000"), DecimalError::TooLong);
    EXPECT_EQ(parsed("0.123456789").decimals, 9);
    EXPECT_EQ(refusal("0.1234567890"), DecimalError::TooLong);
    EXPECT_EQ(parsed("000000000000000000000016"), (Decimal{16, 0}));
    EXPECT_EQ(refusal(std::string(100000, '9')), DecimalError::TooLong);
}

// Any mantissa and count of decimals: its text reads back as itself, with either mark, either minus and
// blanks.
TEST(DecimalProperty, TextRoundTrip) {
    std::mt19937_64 random(20240229);
    for (int i = 0; i < 20000; ++i) {
        const int digits = std::uniform_int_distribution<int>(0, 15)(random);
        std::int64_t limit = 1;
        for (int k = 0; k < digits; ++k) {
            limit *= 10;
        }
        const Decimal value{std::uniform_int_distribution<std::int64_t>(-limit + 1, limit - 1)(random),
                            std::uniform_int_distribution<int>(0, 9)(random)};
        const std::string text = value.toText();
        ASSERT_EQ(parsed(text), value) << text;
        ASSERT_EQ(parsed(text, DecimalMark::Point), value) << text;
        ASSERT_EQ(parsed(replaced(text, '.', ","), DecimalMark::Comma), value) << text;
        ASSERT_EQ(parsed(" " + replaced(replaced(text, '.', ","), '-', "\u2212") + "\u202F"), value) << text;
        // The nearest double of the written number, as the standard library reads it.
        double expected = 0;
        std::from_chars(text.data(), text.data() + text.size(), expected);
        ASSERT_EQ(value.toDouble(), expected) << text;
    }
}

// Random strings of what people and spreadsheets produce: never a crash, and what is accepted is all of it.
TEST(DecimalProperty, AcceptedTextIsWhollyRead) {
    static constexpr std::string_view kPieces[] = {"0", "1", "9", ".",      ",",      "-", "+",
                                                   " ", "'", "e", "\u2212", "\u00A0", "x", "\xFF"};
    std::mt19937_64 random(7);
    int accepted = 0;
    for (int i = 0; i < 50000; ++i) {
        std::string text;
        for (auto n = std::uniform_int_distribution<int>(0, 7)(random); n > 0; --n) {
            text += kPieces[std::uniform_int_distribution<std::size_t>(0, std::size(kPieces) - 1)(random)];
        }
        const auto result = parseDecimal(text);
        if (!result) {
            continue;
        }
        ++accepted;
        std::size_t digits = 0;
        std::size_t marks = 0;
        for (const char c : text) {
            digits += c >= '0' && c <= '9' ? 1 : 0;
            marks += c == '.' || c == ',' ? 1 : 0;
        }
        ASSERT_GE(digits, 1U) << text;
        ASSERT_LE(marks, 1U) << text;
        ASSERT_EQ(text.find_first_of("e'x\xFF"), std::string::npos) << text;
        ASSERT_EQ(parsed(result->toText()), *result) << text;
    }
    EXPECT_GT(accepted, 500);
}

TEST(Decimal, RoundedDecimal) {
    EXPECT_EQ(roundedDecimal(21.449999, 1), (Decimal{214, 1}));
    EXPECT_EQ(roundedDecimal(-0.04, 1), (Decimal{0, 1}));
    EXPECT_EQ(roundedDecimal(16, 1).toText(), "16.0");
    EXPECT_EQ(roundedDecimal(-3.25, 2).toText(), "-3.25");
}
