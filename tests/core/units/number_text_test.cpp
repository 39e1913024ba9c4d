// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/number_text.h"

#include <gtest/gtest.h>

#include <bit>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <random>

using namespace wickbook::units;

TEST(NumberText, FixedNeverShowsNegativeZero) {
    EXPECT_EQ(fixedText(-0.001, 2), "0.00");
    EXPECT_EQ(fixedText(-0.0, 0), "0");
    EXPECT_EQ(fixedText(-0.006, 2), "-0.01");
    EXPECT_EQ(fixedText(47.896, 2), "47.90");
    EXPECT_EQ(fixedText(1234567.5, 1), "1234567.5");
}

TEST(NumberText, ExactIsPlainAndShort) {
    EXPECT_EQ(exactText(6.66e-4), "0.000666");
    EXPECT_EQ(exactText(1013.25), "1013.25");
    EXPECT_EQ(exactText(1000), "1000");
    EXPECT_EQ(exactText(-0.1), "-0.1");
}

TEST(NumberText, DataTextOfNothingIsEmpty) {
    EXPECT_EQ(dataText(std::nullopt), "");
    EXPECT_EQ(dataText(0.0), "0.000000");
    EXPECT_EQ(dataText(11.3789), "11.378900");
}

// Any finite double, from bit patterns: plain digits that read back as the same double.
TEST(NumberTextProperty, ExactRoundTrip) {
    std::mt19937_64 random(1951);
    for (int i = 0; i < 20000; ++i) {
        const double value = std::bit_cast<double>(random());
        if (!std::isfinite(value)) {
            continue;
        }
        const std::string text = exactText(value);
        ASSERT_EQ(text.find_first_not_of("-.0123456789"), std::string::npos) << text;
        double back = 0;
        const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), back);
        ASSERT_EQ(error, std::errc{}) << text;
        ASSERT_EQ(end, text.data() + text.size()) << text;
        ASSERT_EQ(std::bit_cast<std::uint64_t>(back), std::bit_cast<std::uint64_t>(value)) << text;
    }
}
