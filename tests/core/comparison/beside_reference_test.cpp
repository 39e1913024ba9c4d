// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/beside_reference.h"
#include "tests/core/comparison/compared_pairs.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace wickbook;
using namespace wickbook::comparison;
using namespace wickbook::comparison::testing;

// tests/reference/beside_numpy.py: numpy on the same pairs with a screen's coefficient.
TEST(BesideReference, AgreesWithNumpy) {
    const auto expected = besideExpected();
    const auto result = compareWithReference(besidePairs());
    ASSERT_EQ(result.differences.size(), 60U);
    EXPECT_EQ(result.withoutHumidity, 0U);
    ASSERT_TRUE(result.bias && result.deviation);
    EXPECT_NEAR(result.bias->value, expected.at("bias"), 1e-9);
    EXPECT_NEAR(result.bias->standardError, expected.at("bias error"), 1e-9);
    EXPECT_NEAR(*result.deviation, expected.at("deviation"), 1e-9);
    for (const BandSpread& band : result.bands) {
        const std::string name = "band " + std::to_string(static_cast<int>(band.from));
        EXPECT_EQ(static_cast<double>(band.n), expected.at(name + " n"));
        ASSERT_TRUE(band.bias && band.deviation) << name;
        EXPECT_NEAR(*band.bias, expected.at(name + " bias"), 1e-9);
        EXPECT_NEAR(*band.deviation, expected.at(name + " deviation"), 1e-9);
    }
    EXPECT_TRUE(result.onDepression && result.onWind);
}

TEST(BesideReference, BandEdgesBelongToTheBandAbove) {
    const std::vector<ComparedPair> pairs{
        comparedPair(20, 15, false, 1000, 40), comparedPair(20, 15, false, 1000, 39.99),
        comparedPair(20, 15, false, 1000, 80), comparedPair(20, 15, false, 1000, 100),
        comparedPair(20, 15, false, 1000, 101.5)};
    const auto result = compareWithReference(pairs);
    EXPECT_EQ(result.bands[0].n, 1U);
    EXPECT_EQ(result.bands[1].n, 1U);
    EXPECT_EQ(result.bands[2].n, 0U);
    EXPECT_EQ(result.bands[3].n, 3U);
    EXPECT_FALSE(result.bands[2].bias);
    EXPECT_TRUE(result.bands[0].bias);
    EXPECT_FALSE(result.bands[0].deviation); // of one difference there is no spread
}

TEST(BesideReference, APairWithoutHumidityIsCountedNotGuessed) {
    const auto result = compareWithReference(
        std::vector{comparedPair(10, 15, false, 1000, 50), comparedPair(20, 15, false, 1000, 55)});
    EXPECT_EQ(result.withoutHumidity, 1U);
    ASSERT_EQ(result.differences.size(), 1U);
    EXPECT_EQ(result.differences.front().index, 1U);
    EXPECT_FALSE(result.bias);
    EXPECT_FALSE(result.onWind);
}

// e = U e_w(t)/100 with the reference's own temperature: 50 % at 20 °C is 11.69 hPa, at 22 °C 13.2
// (IAPWS-95: e_w(20) = 23.393, e_w(22) = 26.453 hPa; tests/reference/svp_water.csv has both rows'
// neighbours).
TEST(BesideReference, ReferencesOwnTemperatureCounts) {
    auto pair = comparedPair(20, 15, false, 1000, 50);
    EXPECT_NEAR(*referenceVapourPressure(pair), 11.696, 0.003);
    pair.referenceTemperature = 22.0;
    EXPECT_NEAR(*referenceVapourPressure(pair), 13.226, 0.003);
    pair.referenceTemperature = 90.0;
    EXPECT_FALSE(referenceVapourPressure(pair));
}
