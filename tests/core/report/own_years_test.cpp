// SPDX-License-Identifier: GPL-3.0-or-later
// What "usual" means, on numbers made up here; the arithmetic is done by hand beside it.
#include "core/report/own_years.h"

#include <gtest/gtest.h>

namespace wickbook::report {
namespace {

OwnYears yearsOf(std::initializer_list<std::optional<double>> humidities, int first = 2001) {
    OwnYears years;
    for (const auto& humidity : humidities) {
        years.years.push_back({date::year{first++}, humidity, humidity, humidity});
    }
    return years;
}

TEST(OwnYears, FewerThanFiveMeansAreNoAverage) {
    EXPECT_FALSE(yearsOf({70, 72, 74, 76, std::nullopt}).humidity());
    EXPECT_TRUE(yearsOf({70, 72, 74, 76, 78}).humidity());
}

TEST(OwnYears, AverageSpreadAndExtremes) {
    const auto usual = yearsOf({70, 72, 74, 76, 78, std::nullopt}).humidity();
    ASSERT_TRUE(usual);
    EXPECT_EQ(usual->years, 5);
    EXPECT_DOUBLE_EQ(usual->average, 74);
    EXPECT_NEAR(usual->spread, 3.16227766, 1e-8); // squares 16 + 4 + 0 + 4 + 16 = 40, by 4: √10
    EXPECT_EQ(usual->lowestYear, date::year{2001});
    EXPECT_EQ(usual->highestYear, date::year{2005});
    EXPECT_FALSE(usual->isNormal);
    EXPECT_EQ(standingOf(77, *usual), Standing::AsUsual);
    EXPECT_EQ(standingOf(77.5, *usual), Standing::Above);
    EXPECT_EQ(standingOf(78.5, *usual), Standing::Highest);
    EXPECT_EQ(standingOf(70.5, *usual), Standing::Below);
    EXPECT_EQ(standingOf(69, *usual), Standing::Lowest);
}

// WMO-No. 1203 (2017): a normal is of thirty years, of which 80 % must have a value.
TEST(OwnYears, TheWordNormalOnlyFromThirtyYears) {
    OwnYears years;
    for (int year = 1990; year < 2019; ++year) {
        years.years.push_back({date::year{year}, 70.0 + year % 5, {}, {}});
    }
    EXPECT_FALSE(years.humidity()->isNormal);
    years.years.push_back({date::year{2019}, 71.0, {}, {}});
    EXPECT_TRUE(years.humidity()->isNormal);
    for (int year = 2020; year < 2029; ++year) { // nine years without a mean: 30 of 39 are 77 %
        years.years.push_back({date::year{year}, {}, {}, {}});
    }
    EXPECT_FALSE(years.humidity()->isNormal);
}

} // namespace
} // namespace wickbook::report
