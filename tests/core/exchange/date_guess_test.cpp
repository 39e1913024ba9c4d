// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/date_guess.h"

#include <gtest/gtest.h>

namespace wickbook::exchange {
namespace {

std::string readAs(std::string_view text, DateOrder order = DateOrder::Unknown) {
    const auto date = readDate(text, order);
    if (date) {
        return record::dateText(*date);
    }
    switch (date.error()) {
    case DateTextError::Empty:
        return "empty";
    case DateTextError::NotADate:
        return "no date";
    case DateTextError::NoSuchDate:
        return "no such date";
    case DateTextError::TwoDigitYear:
        return "two digits";
    case DateTextError::DayOrMonth:
        return "day or month";
    }
    return "?";
}

TEST(ReadDate, WhatLeavesNoDoubt) {
    EXPECT_EQ(readAs("2025-03-01"), "2025-03-01");
    EXPECT_EQ(readAs("20250301"), "2025-03-01");
    EXPECT_EQ(readAs("2025/3/1"), "2025-03-01");
    EXPECT_EQ(readAs(" 1.3.2025 "), "2025-03-01");
    EXPECT_EQ(readAs("29.2.2024"), "2024-02-29");
    EXPECT_EQ(readAs("5/5/2025"), "2025-05-05"); // the same either way
}

TEST(ReadDate, SlashesNeedTheWholeFile) {
    EXPECT_EQ(readAs("1/3/2025"), "day or month");
    EXPECT_EQ(readAs("1/3/2025", DateOrder::DayFirst), "2025-03-01");
    EXPECT_EQ(readAs("1/3/2025", DateOrder::MonthFirst), "2025-01-03");
    EXPECT_EQ(readAs("1/3/2025", DateOrder::Contradicting), "day or month");
    EXPECT_EQ(readAs("1-3-2025", DateOrder::DayFirst), "2025-03-01");
    EXPECT_EQ(readAs("31/12/2025", DateOrder::MonthFirst), "no such date");
}

TEST(ReadDate, Refusals) {
    EXPECT_EQ(readAs(""), "empty");
    EXPECT_EQ(readAs("1.3.25"), "two digits");
    EXPECT_EQ(readAs("25-03-01"), "two digits");
    EXPECT_EQ(readAs("03/01/86", DateOrder::MonthFirst), "two digits");
    EXPECT_EQ(readAs("30.2.2025"), "no such date");
    EXPECT_EQ(readAs("29.2.2025"), "no such date");
    EXPECT_EQ(readAs("13/13/2025", DateOrder::DayFirst), "no such date");
    EXPECT_EQ(readAs("2025-02-30"), "no such date");
    EXPECT_EQ(readAs("1.3/2025"), "no date");
    EXPECT_EQ(readAs("1.3.20255"), "no date");
    EXPECT_EQ(readAs("1.3."), "no date");
    EXPECT_EQ(readAs("March 1"), "no date");
    EXPECT_EQ(readAs("1.3.2025.1"), "no date");
}

TEST(DateGuess, LearnsFromTheFile) {
    DateGuess guess;
    EXPECT_FALSE(guess.look("2025-12-31"));
    EXPECT_FALSE(guess.look("31.12.2025"));
    EXPECT_EQ(guess.order(), DateOrder::Unknown);
    EXPECT_TRUE(guess.look("1/3/2025"));
    EXPECT_EQ(guess.order(), DateOrder::Unknown);
    EXPECT_TRUE(guess.look("13/3/2025 09:00"));
    EXPECT_EQ(guess.order(), DateOrder::DayFirst);
    guess.look("40/50/2025");
    EXPECT_EQ(guess.order(), DateOrder::DayFirst);
    guess.look("3/13/2025");
    EXPECT_EQ(guess.order(), DateOrder::Contradicting);
}

} // namespace
} // namespace wickbook::exchange
