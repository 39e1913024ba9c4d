// SPDX-License-Identifier: GPL-3.0-or-later
// The slips of eye and hand with one bulb's digits. The kinds: common practice, no source.
#include "core/checks/digit_slips.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

namespace wickbook::checks {

namespace {

/// Chance of one kind and truth, 0 where it is not offered.
double chanceOf(const std::string& written, const std::string& kind, const std::string& truth,
                int stepDecimals = 1) {
    double chance = 0;
    for (const DigitSlip& slip : digitSlips(units::parseDecimal(written).value(), stepDecimals)) {
        if (slip.kind == kind && slip.truth.toText() == truth) {
            chance += slip.chance;
        }
    }
    return chance;
}

} // namespace

TEST(DigitSlips, EachSlipIsUndone) {
    EXPECT_GT(chanceOf("31.4", "ten-high", "21.4"), 0);
    EXPECT_GT(chanceOf("11.4", "ten-low", "21.4"), 0);
    EXPECT_GT(chanceOf("26.4", "five-high", "21.4"), 0);
    EXPECT_GT(chanceOf("16.4", "five-low", "21.4"), 0);
    EXPECT_GT(chanceOf("2.3", "sign", "-2.3"), 0);
    EXPECT_GT(chanceOf("224", "decimal-point", "22.4"), 0);
    EXPECT_GT(chanceOf("224.0", "decimal-point", "22.4"), 0);
    EXPECT_GT(chanceOf("2.24", "decimal-point", "22.4"), 0);
    EXPECT_GT(chanceOf("2.2", "decimal-point", "22.4"), 0); // the last digit is gone with it
    EXPECT_GT(chanceOf("42.1", "digits-exchanged", "24.1"), 0);
    EXPECT_GT(chanceOf("21.4", "digits-exchanged", "24.1"), 0);
    EXPECT_GT(chanceOf("1.6", "digit-dropped", "15.6"), 0);
    EXPECT_GT(chanceOf("5.0", "digit-dropped", "35.0"), 0);
    EXPECT_GT(chanceOf("220.9", "digit-doubled", "20.9"), 0);
    EXPECT_GT(chanceOf("220.9", "digit-extra", "22.9"), 0);
    EXPECT_GT(chanceOf("141.4", "digit-extra", "11.4"), 0);
    EXPECT_GT(chanceOf("718.0", "decimal-point", "7.8"), 0); // the point taken for a one
    EXPECT_GT(chanceOf("-4.6", "tenths-downwards", "-3.4"), 0);
    EXPECT_EQ(chanceOf("4.6", "tenths-downwards", "3.4"), 0);
}

TEST(DigitSlips, NothingFinerThanTheScaleIsOffered) {
    EXPECT_EQ(chanceOf("220.9", "decimal-point", "22.09"), 0);
    for (const DigitSlip& slip : digitSlips(units::parseDecimal("24").value(), 0)) {
        EXPECT_EQ(slip.truth.decimals, 0) << slip.kind << ' ' << slip.truth.toText();
    }
    EXPECT_GT(chanceOf("42", "digits-exchanged", "24", 0), 0);
}

TEST(DigitSlips, TheWrittenValueIsNeverItsOwnSlip) {
    for (const char* written : {"0.0", "11.1", "22.2", "-5.5", "5.5", "100.0"}) {
        for (const DigitSlip& slip : digitSlips(units::parseDecimal(written).value(), 1)) {
            EXPECT_NE(slip.truth.toDouble(), units::parseDecimal(written).value().toDouble())
                << written << ' ' << slip.kind;
            EXPECT_GT(slip.chance, 0);
        }
    }
}

} // namespace wickbook::checks
