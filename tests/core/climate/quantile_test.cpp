// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/climate/quantile.h"
#include "core/climate/station_average.h"
#include "tests/core/climate/month_builder.h"

#include <gtest/gtest.h>

namespace wickbook::climate {
namespace {

using namespace testing;

// Source: Hyndman and Fan 1996, definition 7, worked by hand: h = (n − 1) p.
TEST(Quantile, TypeSevenByHand) {
    EXPECT_DOUBLE_EQ(*quantile({1, 2, 3, 4}, 0.25), 1.75);
    EXPECT_DOUBLE_EQ(*quantile({4, 1, 3, 2}, 0.75), 3.25);
    EXPECT_DOUBLE_EQ(*quantile({10, 20, 40, 80, 160}, 0.25), 20);
    EXPECT_DOUBLE_EQ(*quantile({10, 20, 40, 80, 160}, 0.9), 128);
    EXPECT_DOUBLE_EQ(*quantile({7}, 0.25), 7);
    EXPECT_DOUBLE_EQ(*quantile({1, 2}, 0), 1);
    EXPECT_DOUBLE_EQ(*quantile({1, 2}, 1), 2);
}

TEST(Quantile, Median) {
    EXPECT_DOUBLE_EQ(*median({3, 1, 2}), 2);
    EXPECT_DOUBLE_EQ(*median({3, 1, 2, 10}), 2.5);
    EXPECT_FALSE(median({}));
}

class StationAverageTest : public ::testing::Test {
protected:
    std::vector<const record::DerivedReading*> chosen() {
        month_.summary(2025_y / 6);
        std::vector<const record::DerivedReading*> pointers;
        for (const record::DerivedReading& reading : month_.readings()) {
            pointers.push_back(&reading);
        }
        return pointers;
    }
    MonthBuilder month_;
};

TEST_F(StationAverageTest, CountsYearsAndDescribesByQuartiles) {
    // Saturated pairs: dew point = dry bulb and 100 %, so the numbers are those typed (common practice,
    // no source).
    month_.add(2021_y / 6 / 1, 9h, 10.0, 10.0);
    month_.add(2022_y / 6 / 1, 9h, 12.0, 12.0);
    month_.add(2022_y / 6 / 2, 9h, 14.0, 14.0);
    month_.add(2023_y / 6 / 30, 9h, 20.0, 20.0);
    const auto average = stationAverage(chosen(), 3);
    ASSERT_TRUE(average);
    EXPECT_EQ(average->years, 3);
    EXPECT_EQ(average->readings, 4);
    EXPECT_NEAR(average->meanHumidity, 100, 1e-9);
    EXPECT_NEAR(average->meanDewPoint, 14, 1e-3);
    EXPECT_NEAR(average->medianTemperature, 13, 1e-9);
    EXPECT_NEAR(average->lowerQuartileTemperature, 11.5, 1e-9);
    EXPECT_NEAR(average->upperQuartileTemperature, 15.5, 1e-9);
    EXPECT_NEAR(average->medianDewPoint, 13, 1e-3);
    EXPECT_NEAR(average->lowerQuartileDewPoint, 11.5, 1e-3);
    EXPECT_NEAR(average->upperQuartileDewPoint, 15.5, 1e-3);
    EXPECT_NEAR(average->medianHumidity, 100, 1e-9);
}

TEST_F(StationAverageTest, FewerYearsThanAskedGiveNone) {
    month_.add(2022_y / 6 / 1, 9h, 12.0, 12.0);
    month_.add(2023_y / 6 / 1, 9h, 14.0, 14.0);
    EXPECT_FALSE(stationAverage(chosen(), 3));
    EXPECT_TRUE(stationAverage(chosen(), 2));
    EXPECT_FALSE(stationAverage({}, 0));
}

TEST_F(StationAverageTest, AReadingWithoutHumidityTakesNoPart) {
    month_.add(2022_y / 6 / 1, 9h, 12.0, 12.0);
    month_.add(2023_y / 6 / 1, 9h, 14.0, 14.0).wet = {};
    const auto average = stationAverage(chosen(), 1);
    ASSERT_TRUE(average);
    EXPECT_EQ(average->years, 1);
    EXPECT_EQ(average->readings, 1);
    EXPECT_FALSE(stationAverage(chosen(), 2));
}

} // namespace
} // namespace wickbook::climate
