// SPDX-License-Identifier: GPL-3.0-or-later
// The frame: limits, who is left out, what speaks together, the whole series at once, final digits.
#include "core/checks/digit_preference.h"
#include "tests/core/checks/checks_support.h"

#include <set>

namespace wickbook::checks::test {

TEST(Limits, EveryLimitHasOneNameAndASource) {
    std::set<std::string_view> names;
    for (const LimitEntry& entry : limitTable()) {
        EXPECT_TRUE(names.insert(entry.name).second) << entry.name;
        EXPECT_FALSE(entry.source.empty()) << entry.name;
        EXPECT_NE(entry.name.find('.'), std::string_view::npos) << entry.name;
        EXPECT_DOUBLE_EQ(Limits{}.value(entry.name), entry.value);
    }
}

TEST(Limits, AStationsOwnLimitIsLaidOver) {
    // Desert station: 4 % is nothing new there.
    Page page;
    page.write("2025-07-01T14:00Z", "30.0", "13.4");
    const Limits desert{Limits::Own{{"very-dry.lowest-humidity", 3.0}}};
    const auto usual = checkReading({page.series()[0], page.station(), Limits{}, {}, {}, {}, false, {}});
    const auto own = checkReading({page.series()[0], page.station(), desert, {}, {}, {}, false, {}});
    EXPECT_TRUE(has(usual, "very-dry")) << *page.series()[0].humidityPercent();
    EXPECT_FALSE(has(own, "very-dry"));
}

TEST(RuleTable, EveryCodeStandsOnce) {
    std::set<std::string_view> codes;
    for (const Rule& rule : ruleTable()) {
        EXPECT_TRUE(codes.insert(rule.code).second) << rule.code;
    }
    EXPECT_GE(codes.size(), 27U);
}

TEST(LeftOut, WhatThePersonJudgedStandsFirst) {
    const std::vector<Finding> grave{{"off-scale", Severity::Erroneous, Root::Scale, {}, {}}};
    const std::vector<Finding> soft{{"step-temperature", Severity::Soft, Root::Step, {}, {}}};
    record::Observation observation;
    EXPECT_FALSE(leftOut(observation, {}));
    EXPECT_FALSE(leftOut(observation, soft));
    EXPECT_TRUE(leftOut(observation, grave));
    observation.quality = record::Quality::Sound;
    EXPECT_FALSE(leftOut(observation, grave));
    observation.quality = record::Quality::Doubtful;
    EXPECT_TRUE(leftOut(observation, {}));
    observation.quality = record::Quality::NotJudged;
    observation.origin = record::Origin::Estimated;
    EXPECT_TRUE(leftOut(observation, {}));
    observation.origin = record::Origin::Missing;
    EXPECT_TRUE(leftOut(observation, {}));
}

TEST(SpokenNotes, TheGravestOfARootLeads) {
    const auto notes = spokenNotes({{"late", Severity::Note, Root::Time, {}, {}},
                                    {"step-dew-point", Severity::Soft, Root::Step, {}, {}},
                                    {"future", Severity::Doubtful, Root::Time, {}, {}},
                                    {"incomplete", Severity::Note, Root::None, {}, {}},
                                    {"extrapolated", Severity::Note, Root::None, {}, {}}});
    ASSERT_EQ(notes.size(), 4U);
    EXPECT_EQ(notes[0].lead.code, "future");
    ASSERT_EQ(notes[0].also.size(), 1U);
    EXPECT_EQ(notes[0].also[0].code, "late");
    EXPECT_EQ(notes[1].lead.code, "step-dew-point");
}

TEST(CheckSeries, MissingAndWithdrawnReadingsAreNobodysNeighbour) {
    Page page;
    page.write("2025-05-01T07:00Z", "9.0", "8.4");
    page.write("2025-05-01T10:00Z", "30.0", "12.0", {.origin = record::Origin::Missing});
    page.write("2025-05-01T12:30Z", "14.0", "11.0");
    const auto checked = page.check();
    ASSERT_EQ(checked.size(), 3U);
    EXPECT_TRUE(checked[1].findings.empty());
    EXPECT_TRUE(checked[1].leftOut);
    EXPECT_TRUE(checked[2].findings.empty()) << codes(checked[2].findings);
}

TEST(CheckSeries, JudgesTheRangeAskedForAndStopsWhenTold) {
    Page page;
    for (int day = 10; day < 20; ++day) {
        page.write("2025-05-" + std::to_string(day) + "T07:00Z", units::fixedText(0.1 * day, 1), "");
    }
    const Limits limits;
    const auto middle = checkSeries(page.series(), 3, 4, page.station(), limits, {});
    ASSERT_EQ(middle.size(), 4U);
    EXPECT_EQ(middle[0].reading.values().instant, page.series()[3].values().instant);
    EXPECT_EQ(checkSeries(page.series(), 8, 99, page.station(), limits, {}).size(), 2U);
    EXPECT_TRUE(checkSeries(page.series(), 0, 10, page.station(), limits, {}, [](std::size_t, std::size_t) {
                    return false;
                }).empty());
}

TEST(DigitPreference, OnlyAManyTimesRepeatedHabitIsTold) {
    // Chi-square of 9 degrees of freedom passes 21.666 in 1 % of honest series: statistical tables, from
    // memory.
    Page honest;
    Page habit;
    Page few;
    for (int i = 0; i < 600; ++i) {
        const std::string time = "2025-01-01T00:00Z";
        honest.write(time, units::fixedText(10 + 0.1 * (i % 50), 1), "");
        habit.write(time, units::fixedText(10 + 0.1 * (i % 3 == 0 ? 5 : i % 50), 1), "");
        if (i < 499) {
            few.write(time, "10.5", "");
        }
    }
    EXPECT_FALSE(digitPreference(honest.series(), Bulb::Dry, Limits{}));
    EXPECT_FALSE(digitPreference(few.series(), Bulb::Dry, Limits{}));
    EXPECT_FALSE(digitPreference(honest.series(), Bulb::Wet, Limits{}));
    const auto finding = digitPreference(habit.series(), Bulb::Dry, Limits{});
    ASSERT_TRUE(finding);
    EXPECT_EQ(finding->number("digit"), 5);
    EXPECT_EQ(finding->severity, Severity::Note);
}

} // namespace wickbook::checks::test
