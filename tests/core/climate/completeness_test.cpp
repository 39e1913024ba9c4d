// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/climate/completeness.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace wickbook::climate {
namespace {

/// 'x' counted, '.' missing, 's' skipped by the clock.
std::vector<DayState> days(const std::string& text) {
    std::vector<DayState> result;
    for (const char c : text) {
        result.push_back(c == 'x' ? DayState::Counted : c == 's' ? DayState::Skipped : DayState::Missing);
    }
    return result;
}

// Source: WMO-No. 1203 (2017; section 4.4.1 from memory): no monthly value where observations are missing for
// 11 or more days during the month, or for 5 or more consecutive days.
TEST(Completeness, ElevenDaysMissingWithholdAndTenDoNot) {
    const std::string ten = "x.x.x.x.x.x.x.x.x.x.xxxxxxxxxx";
    const std::string eleven = "x.x.x.x.x.x.x.x.x.x.x.xxxxxxxx";
    EXPECT_EQ(missingDays(days(ten)).days, 10);
    EXPECT_EQ(missingDays(days(eleven)).days, 11);
    EXPECT_EQ(judgeCompleteness(days(ten), {}), Withheld::No);
    EXPECT_EQ(judgeCompleteness(days(eleven), {}), Withheld::TooManyMissing);
}

TEST(Completeness, FiveDaysInARowWithholdAndFourDoNot) {
    EXPECT_EQ(judgeCompleteness(days("xxxxxxxxxx....xxxxxxxxxxxxxxxx"), {}), Withheld::No);
    EXPECT_EQ(judgeCompleteness(days("xxxxxxxxxx.....xxxxxxxxxxxxxxx"), {}), Withheld::TooManyInARow);
    EXPECT_EQ(judgeCompleteness(days(".....xxxxxxxxxxxxxxxxxxxxxxxxx"), {}), Withheld::TooManyInARow);
    EXPECT_EQ(judgeCompleteness(days("xxxxxxxxxxxxxxxxxxxxxxxxx....."), {}), Withheld::TooManyInARow);
    EXPECT_EQ(judgeCompleteness(days("....xxxxxxxxxxxxxxxxxxxxxx...."), {}), Withheld::No);
}

// Source: the stricter 5/3 rule of earlier WMO guidance on normals (from memory).
TEST(Completeness, StricterRule) {
    EXPECT_EQ(judgeCompleteness(days("x.x.x.x.xxxxxxxxxxxxxxxxxxxxxx"), kStricterCompleteness), Withheld::No);
    EXPECT_EQ(judgeCompleteness(days("x.x.x.x.x.xxxxxxxxxxxxxxxxxxxx"), kStricterCompleteness),
              Withheld::TooManyMissing);
    EXPECT_EQ(judgeCompleteness(days("x..xxxxxxxxxxxxxxxxxxxxxxxxxxx"), kStricterCompleteness), Withheld::No);
    EXPECT_EQ(judgeCompleteness(days("x...xxxxxxxxxxxxxxxxxxxxxxxxxx"), kStricterCompleteness),
              Withheld::TooManyInARow);
}

TEST(Completeness, NothingReadComesFirst) {
    EXPECT_EQ(judgeCompleteness(days(std::string(30, '.')), {}), Withheld::NothingRead);
    EXPECT_EQ(judgeCompleteness({}, {}), Withheld::NothingRead);
}

TEST(Completeness, AnHourTheClockSkipsIsNoDayMissingAndNoEndOfARun) {
    EXPECT_EQ(judgeCompleteness(days("xx..s..xxxxxxxxxxxxxxxxxxxxxxxx"), {}), Withheld::No);
    EXPECT_EQ(judgeCompleteness(days("xx..s...xxxxxxxxxxxxxxxxxxxxxxx"), {}), Withheld::TooManyInARow);
}

TEST(Completeness, NamesForData) {
    EXPECT_EQ(withheldName(Withheld::No), "");
    EXPECT_EQ(withheldName(Withheld::TooManyMissing), "too-many-days-missing");
    EXPECT_EQ(withheldName(Withheld::TooManyInARow), "too-many-days-in-a-row");
    EXPECT_EQ(withheldName(Withheld::NothingRead), "nothing-read");
}

} // namespace
} // namespace wickbook::climate
