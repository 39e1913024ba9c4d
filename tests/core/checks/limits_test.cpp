// SPDX-License-Identifier: GPL-3.0-or-later
// Limits of a station's own: valid from a moment on, refused where they make no sense.
#include "core/checks/limit_edit.h"
#include "tests/core/checks/checks_support.h"

#include <cmath>
#include <limits>

namespace wickbook::checks::test {

namespace {

record::Instant at(const std::string& time) {
    return record::Instant{record::parseTime(time).value().local.time_since_epoch()};
}

constexpr auto kVeryDry = "very-dry.lowest-humidity";

} // namespace

TEST(StationLimits, HoldFromTheirMomentUntilTheNext) {
    record::LimitChanges changes;
    changes[{kVeryDry}] = 7;
    changes[{kVeryDry, at("1994-05-01T00:00Z")}] = 4;
    changes[{kVeryDry, at("2001-01-01T00:00Z")}] = std::nullopt;
    const StationLimits limits{changes};
    EXPECT_EQ(limits.at(at("1886-01-01T00:00Z")).value(kVeryDry), 7);
    EXPECT_EQ(limits.at(at("1994-04-30T23:59Z")).value(kVeryDry), 7);
    EXPECT_EQ(limits.at(at("1994-05-01T00:00Z")).value(kVeryDry), 4);
    EXPECT_EQ(limits.at(at("2000-12-31T23:59Z")).value(kVeryDry), 4);
    EXPECT_EQ(limits.at(at("2001-01-01T00:00Z")).value(kVeryDry), 10) << "as built in again";
    EXPECT_EQ(limits.lowest(kVeryDry), 4);
    EXPECT_EQ(limits.at(at("1994-05-01T00:00Z")).value("late.minutes"), 15);
    EXPECT_EQ(StationLimits{}.at(at("1994-05-01T00:00Z")).value(kVeryDry), 10);
    // Moments of another limit leave this one as it is.
    changes[{"late.minutes", at("1996-01-01T00:00Z")}] = 30;
    EXPECT_EQ(StationLimits{changes}.at(at("1997-01-01T00:00Z")).value(kVeryDry), 4);
    EXPECT_EQ(StationLimits{changes}.at(at("1997-01-01T00:00Z")).value("late.minutes"), 30);
}

TEST(StationLimits, EachReadingIsJudgedByTheLimitsOfItsOwnDay) {
    Page page;
    page.write("2025-06-30T14:00Z", "30.0", "13.4");
    page.write("2025-07-01T14:00Z", "30.0", "13.3");
    record::LimitChanges changes;
    changes[{kVeryDry, at("2025-07-01T00:00Z")}] = 3;
    const auto checked = checkSeries(page.series(), 0, 2, page.station(), StationLimits{changes}, {});
    EXPECT_TRUE(has(checked[0].findings, "very-dry")) << codes(checked[0].findings);
    EXPECT_FALSE(has(checked[1].findings, "very-dry")) << codes(checked[1].findings);
}

TEST(LimitEdit, LaysChangesInAndTakesThemBack) {
    const std::vector<LimitEdit> set{{kVeryDry, {}, 5}, {"late.minutes", at("2020-01-01T00:00Z"), 30}};
    const auto after = edited({}, set);
    ASSERT_TRUE(after);
    EXPECT_EQ(after->size(), 2U);
    EXPECT_EQ(StationLimits{*after}.at(at("2019-01-01T00:00Z")).value(kVeryDry), 5);
    // Back from a date on keeps what held before; back for good leaves nothing.
    const std::vector<LimitEdit> backFrom{{kVeryDry, at("2022-01-01T00:00Z"), {}}};
    const auto later = edited(*after, backFrom);
    ASSERT_TRUE(later);
    EXPECT_EQ(StationLimits{*later}.at(at("2021-01-01T00:00Z")).value(kVeryDry), 5);
    EXPECT_EQ(StationLimits{*later}.at(at("2022-01-01T00:00Z")).value(kVeryDry), 10);
    const std::vector<LimitEdit> back{{kVeryDry, {}, {}}};
    const auto gone = edited(*later, back);
    ASSERT_TRUE(gone);
    EXPECT_EQ(gone->size(), 1U);
}

TEST(LimitEdit, WhatCannotBeIsRefused) {
    using Kind = LimitProblem::Kind;
    const auto refusal = [](const std::string& name, double value) -> std::optional<Kind> {
        const std::vector<LimitEdit> edits{{name, {}, value}};
        const auto after = edited({}, edits);
        return after ? std::nullopt : std::optional{after.error().kind};
    };
    EXPECT_EQ(refusal("very-dry.humidity", 5), Kind::Unknown);
    EXPECT_EQ(refusal("very-dry", 5), Kind::Unknown);
    EXPECT_EQ(refusal(kVeryDry, -1), Kind::OutOfRange);
    EXPECT_EQ(refusal(kVeryDry, 101), Kind::OutOfRange);
    EXPECT_EQ(refusal(kVeryDry, std::nan("")), Kind::OutOfRange);
    EXPECT_EQ(refusal(kVeryDry, std::numeric_limits<double>::infinity()), Kind::OutOfRange);
    EXPECT_EQ(refusal("persistence.tenths", 3.5), Kind::NotWhole);
    EXPECT_EQ(refusal("wet-above-dry.tolerance", 0.3), Kind::Fixed);
    EXPECT_EQ(refusal(kVeryDry, 0), std::nullopt);
}

TEST(LimitEdit, ARuleMayNotContradictItself) {
    const auto problem = [](std::vector<LimitEdit> edits, const record::LimitChanges& now = {}) {
        const auto after = edited(now, edits);
        return after ? std::optional<LimitProblem>{} : std::optional{after.error()};
    };
    // Doubtful beyond erroneous.
    const auto beyond = problem({{"gross-temperature.high-summer-doubtful-high", {}, 51}});
    ASSERT_TRUE(beyond);
    EXPECT_EQ(beyond->kind, LimitProblem::Kind::Contradicts);
    EXPECT_EQ(beyond->other, "gross-temperature.high-summer-erroneous-high");
    EXPECT_EQ(beyond->otherValue, 50);
    EXPECT_TRUE(beyond->mustBeBelow);
    // The one that was changed is the one complained of.
    const auto below = problem({{"step-temperature.within-6-hours", {}, 8}});
    ASSERT_TRUE(below);
    EXPECT_EQ(below->name, "step-temperature.within-6-hours");
    EXPECT_FALSE(below->mustBeBelow);
    EXPECT_TRUE(problem({{"persistence.tenths", {}, 6}}));
    EXPECT_TRUE(problem({{"gross-pressure.doubtful-low", {}, 1090}}));
    // Both together may be changed, and equal is no contradiction.
    EXPECT_FALSE(problem({{"gross-temperature.high-summer-doubtful-high", {}, 51},
                          {"gross-temperature.high-summer-erroneous-high", {}, 55}}));
    EXPECT_FALSE(problem({{"step-temperature.within-6-hours", {}, 9}}));
    // A contradiction that only shows later is one too.
    record::LimitChanges later;
    later[{"step-temperature.within-3-hours", at("2030-01-01T00:00Z")}] = 14;
    const auto hidden = problem({{"step-temperature.within-6-hours", {}, 12}}, later);
    ASSERT_TRUE(hidden);
    EXPECT_EQ(hidden->from, at("2030-01-01T00:00Z"));
}

TEST(LimitEdit, TheBuiltInLimitsMakeSense) {
    EXPECT_FALSE(contradictionIn({}));
    for (const LimitEntry& entry : limitTable()) {
        EXPECT_LE(entry.lowest, entry.value) << entry.name;
        EXPECT_GE(entry.highest, entry.value) << entry.name;
        if (!isFixed(entry)) {
            EXPECT_FALSE(problemOf(entry.name, entry.value)) << entry.name;
        }
    }
}

// Every limit is really used: another value changes what some story says.
TEST(StationLimits, AnAridStationSilencesDrynessAndSteps) {
    const auto story = [](const record::LimitChanges& changes) {
        Page page{{-24, 550, Exposure::Screen, {1, 1}}};
        page.write("2025-01-10T07:00Z", "17.0", "9.0", {.weather = "none"});
        page.write("2025-01-10T14:00Z", "43.5", "18.9", {.weather = "none"});
        const auto checked = checkSeries(page.series(), 0, 2, page.station(), StationLimits{changes}, {});
        return codes(checked.back().findings);
    };
    EXPECT_NE(story({}).find("very-dry"), std::string::npos) << story({});
    EXPECT_NE(story({}).find("step-temperature"), std::string::npos) << story({});
    record::LimitChanges arid;
    arid[{kVeryDry}] = 2;
    arid[{"step-temperature.within-12-hours"}] = 30;
    EXPECT_EQ(story(arid), "");
}

} // namespace wickbook::checks::test
