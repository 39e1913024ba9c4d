// SPDX-License-Identifier: GPL-3.0-or-later
// Stories of the wick: frozen, thawing, dry. What an observer expects of them: common practice, no source,
// where nothing else is named.
#include "tests/core/checks/checks_support.h"

namespace wickbook::checks::test {

TEST(WickStory, AFrozenMorningSpeaksWithOneNote) {
    // Frost at night; at seven the water in the wick is freezing and the bulb stands at 0.0 in air of −1.6.
    Page page;
    page.write("2025-01-10T21:00Z", "-0.8", "-1.6", {.wick = WickState::Ice, .weather = "none"});
    page.write("2025-01-11T07:00Z", "-1.6", "0.0", {.wick = WickState::Water, .weather = "none"});
    const auto findings = page.last();
    EXPECT_TRUE(has(findings, "freezing-halt")) << codes(findings);
    EXPECT_TRUE(has(findings, "wet-above-dry")) << codes(findings);
    EXPECT_EQ(severityOf(findings, "freezing-halt"), Severity::Soft);
    const auto notes = spokenNotes(findings);
    ASSERT_EQ(notes.size(), 1U) << codes(findings);
    EXPECT_EQ(notes[0].lead.root, Root::FrozenWick);
    EXPECT_EQ(notes[0].also.size() + 1, findings.size());
    EXPECT_TRUE(page.check().back().leftOut); // wet above dry by 1.6: set aside until judged
}

TEST(WickStory, TheHaltIsKnownByTheFrostBeforeIt) {
    Page cold;
    cold.write("2025-01-10T21:00Z", "-2.0", "-2.6", {.wick = WickState::Ice});
    cold.write("2025-01-11T07:00Z", "1.2", "0.0", {.wick = WickState::Ice});
    EXPECT_TRUE(has(cold.last(), "freezing-halt")) << codes(cold.last());
    // The same pair after a mild night is a wet bulb like any other.
    Page mild;
    mild.write("2025-01-10T21:00Z", "4.0", "2.6");
    mild.write("2025-01-11T07:00Z", "1.2", "0.0", {.wick = WickState::Water});
    EXPECT_FALSE(has(mild.last(), "freezing-halt")) << codes(mild.last());
}

TEST(WickStory, NoWickFreezesInWarmAir) {
    // At sea level a screen's wick holds ice up to 8.4 °C, a whirled one's up to 10.2 °C: computed,
    // e_i(0) / (A_i p).
    Page page{{50, 0, Exposure::Screen, {1, 1}}};
    page.write("2025-03-10T07:00Z", "-2.0", "-2.6", {.wick = WickState::Ice});
    Page whirled{{50, 0, Exposure::Whirled, {1, 1}}};
    whirled.write("2025-03-10T07:00Z", "-2.0", "-2.6", {.wick = WickState::Ice});
    page.write("2025-03-10T14:00Z", "9.0", "0.0", {.wick = WickState::Water});
    whirled.write("2025-03-10T14:00Z", "9.0", "0.0", {.wick = WickState::Water});
    EXPECT_FALSE(has(page.last(), "freezing-halt")) << codes(page.last());
    EXPECT_TRUE(has(whirled.last(), "freezing-halt")) << codes(whirled.last());
}

TEST(WickStory, AThawHoldsTheBulbAtZeroWhileTheAirWarms) {
    Page page;
    page.write("2025-02-03T07:00Z", "-0.5", "-0.9", {.wick = WickState::Ice});
    page.write("2025-02-03T14:00Z", "3.6", "0.0", {.wick = WickState::Ice});
    const auto findings = page.last();
    ASSERT_TRUE(has(findings, "freezing-halt")) << codes(findings);
    EXPECT_EQ(find(findings, "freezing-halt")->word("phase"), "thawing");
    EXPECT_EQ(spokenNotes(findings).size(), 1U) << codes(findings);
}

TEST(WickStory, WholeDegreesWidenTheWindowOfTheHalt) {
    Page page{{50, 100, Exposure::Screen, {1, 0}}};
    page.write("2025-01-10T21:00Z", "-2", "-3", {.wick = WickState::Ice});
    page.write("2025-01-11T07:00Z", "-2", "-1", {.wick = WickState::Water});
    EXPECT_TRUE(has(page.last(), "freezing-halt")) << codes(page.last());
    Page tenths;
    tenths.write("2025-01-10T21:00Z", "-2.0", "-3.0", {.wick = WickState::Ice});
    tenths.write("2025-01-11T07:00Z", "-2.0", "-1.0", {.wick = WickState::Water});
    EXPECT_FALSE(has(tenths.last(), "freezing-halt")) << codes(tenths.last());
}

TEST(WickStory, WaterOrIceIsAskedAndNeverGuessed) {
    // The wick can freeze with air above 0 °C and stay liquid below it: AMS Glossary of Meteorology.
    Page page;
    page.write("2025-01-10T07:00Z", "2.0", "-0.5");
    const auto findings = page.last();
    ASSERT_EQ(severityOf(findings, "wick-state-unknown"), Severity::Doubtful);
    EXPECT_FALSE(page.check().back().reading.humidityPercent());
    EXPECT_TRUE(find(findings, "wick-state-unknown")->number("humidity-water"));
    EXPECT_TRUE(find(findings, "wick-state-unknown")->number("humidity-ice"));
}

TEST(WickStory, ADryWickReadsLikeTheDryBulb) {
    const auto story = [](const std::string& weather) {
        Page page;
        page.write("2025-07-01T07:00Z", "18.0", "13.2", {.weather = "none"});
        page.write("2025-07-01T14:00Z", "26.0", "16.4", {.weather = "none"});
        page.write("2025-07-01T21:00Z", "19.4", "14.0", {.weather = "none"});
        page.write("2025-07-02T07:00Z", "18.4", "13.5", {.weather = "none"});
        page.write("2025-07-02T14:00Z", "27.2", "27.1", {.weather = weather});
        return page.last();
    };
    const auto fine = story("none");
    ASSERT_EQ(severityOf(fine, "dry-wick"), Severity::Doubtful) << codes(fine);
    EXPECT_GT(*find(fine, "dry-wick")->number("vapour"), 1.35 * *find(fine, "dry-wick")->number("usual"));
    EXPECT_EQ(spokenNotes(fine).size(), 1U) << codes(fine); // saturated in fine weather is the same matter
    EXPECT_EQ(severityOf(story(""), "dry-wick"), Severity::Soft);
    EXPECT_FALSE(has(story("rain"), "dry-wick"));
    EXPECT_FALSE(has(story("fog"), "dry-wick"));
    EXPECT_FALSE(has(story("dew"), "dry-wick"));
}

TEST(WickStory, AWetBulbThatRisesThroughRepeatsIsRunningDry) {
    Page page;
    page.write("2025-07-01T14:00Z", "26.0", "17.2", {.repeatedWets = {"16.6", "16.9", "17.2"}});
    ASSERT_TRUE(has(page.last(), "dry-wick"));
    EXPECT_EQ(find(page.last(), "dry-wick")->word("sign"), "rising");
    Page falling;
    falling.write("2025-07-01T14:00Z", "26.0", "16.6", {.repeatedWets = {"17.2", "16.9", "16.6"}});
    EXPECT_FALSE(has(falling.last(), "dry-wick"));
}

} // namespace wickbook::checks::test
