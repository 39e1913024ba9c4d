// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/whirls_text.h"
#include "tests/core/exchange/stations.h"

#include <gmock/gmock.h>

namespace wickbook::exchange {
namespace {

using testing::celsius;
using testing::fahrenheit;
using units::DecimalMark;

TEST(WhirlsText, SaysEachWhirlInTurn) {
    const std::vector<record::Repeat> whirls{
        {celsius(142), celsius(160)}, {fahrenheit(-5), std::nullopt}, {}, {std::nullopt, celsius(16, 0)}};
    EXPECT_EQ(whirlsText(whirls), "wet 14.2 c dry 16.0 c; wet -0.5 f; empty; dry 16 c");
    EXPECT_EQ(parseWhirls(whirlsText(whirls), DecimalMark::Point), whirls);
    EXPECT_EQ(whirlsText({}), "");
    EXPECT_EQ(parseWhirls(" ", DecimalMark::Point), std::vector<record::Repeat>{});
    EXPECT_EQ(parseWhirls("DRY 16,0 \u00B0C  Wet 14,2 C", DecimalMark::Either),
              (std::vector<record::Repeat>{{celsius(142), celsius(160)}}));
}

TEST(WhirlsText, NamesThePartThatCannotBeRead) {
    for (const auto* part : {"wet", "wet 14.2", "wet 14.2 k", "damp 14.2 c", "wet x c",
                             "wet 14.2 c wet 14.2 c", "wet 14.2 c dry 16.0", "14.2/16.0", ""}) {
        const auto read = parseWhirls("wet 1 c; " + std::string(part), DecimalMark::Point);
        ASSERT_FALSE(read) << part;
        EXPECT_EQ(read.error(), part);
    }
}

} // namespace
} // namespace wickbook::exchange
