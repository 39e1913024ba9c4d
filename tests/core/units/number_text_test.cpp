// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/number_text.h"

#include <gtest/gtest.h>

#include <array>
#include <bit>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <random>
#include <string>

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

// The C library's printf rounds the exact value of the double (ISO C, 7.21.6.1): every digit must be its.
TEST(NumberText, FixedTextIsTheCLibrarys) {
    std::mt19937_64 random(3);
    std::uniform_real_distribution<double> exponent(-9, 8);
    std::uniform_int_distribution<std::int64_t> whole(-2'000'000, 2'000'000);
    std::uniform_int_distribution<int> places(0, 7);
    const auto holds = [](double value, int decimals) {
        std::array<char, 64> expected{};
        std::snprintf(expected.data(), expected.size(), "%.*f", decimals, value);
        std::string text(expected.data());
        if (text.starts_with('-') && text.find_first_not_of("-0.") == std::string::npos) {
            text.erase(0, 1);
        }
        EXPECT_EQ(fixedText(value, decimals), text) << "of " << value << ", " << decimals << " decimals";
    };
    for (int i = 0; i < 200'000 && !::testing::Test::HasFailure(); ++i) {
        const int decimals = places(random);
        holds((i % 2 == 0 ? 1 : -1) * std::pow(10.0, exponent(random)), decimals);
        // Halves of the last place, exact (0.5, 0.125) and as near as a double comes (0.15), and its
        // neighbours.
        const double half = (static_cast<double>(whole(random)) + 0.5) / std::pow(10.0, decimals);
        holds(half, decimals);
        holds(std::nextafter(half, 1e9), decimals);
        holds(std::nextafter(half, -1e9), decimals);
        holds(static_cast<double>(whole(random)) / std::pow(10.0, decimals), decimals);
    }
}

// std::to_chars gives the shortest digits that read back as the same double (ISO C++, [charconv.to.chars]).
TEST(NumberText, ExactTextIsTheShortestThatReadsBack) {
    std::mt19937_64 random(4);
    std::uniform_int_distribution<std::int64_t> whole(-99'999'999, 99'999'999);
    std::uniform_int_distribution<int> places(0, 8);
    std::uniform_real_distribution<double> anything(-2000, 2000);
    for (int i = 0; i < 200'000 && !::testing::Test::HasFailure(); ++i) {
        const double value = i % 3 == 0 ? anything(random)
                                        : static_cast<double>(whole(random)) / std::pow(10.0, places(random));
        std::array<char, 400> buffer{};
        const auto end =
            std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::fixed).ptr;
        EXPECT_EQ(exactText(value), std::string(buffer.data(), end));
    }
}
