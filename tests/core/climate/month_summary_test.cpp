// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/climate/month_summary.h"
#include "tests/core/climate/month_builder.h"

#include <gtest/gtest.h>

#include <random>

namespace wickbook::climate {
namespace {

using namespace testing;

constexpr auto kSeptember = 2025_y / 9;

void expectIdentity(const HourSummary& summary) {
    EXPECT_EQ(summary.n + summary.setAside + summary.missing, summary.expected);
}

TEST(MonthSummary, MeansOfAHalfCoolHalfWarmMonthByHand) {
    // Saturated air at 10.0 on odd days, at 20.0 on even ones. Saturation over water from
    // tests/reference/svp_water.csv (IAPWS-95): 12.2820 hPa at 10 °C, 23.3932 at 20 °C, mean 17.8376; that
    // is the saturation at 15.70 °C (17.0579 at 15, 18.1882 at 16, between them by the logarithm).
    MonthBuilder month(stationFacts({9h}));
    for (unsigned day = 1; day <= 30; ++day) {
        const double t = day % 2 == 1 ? 10.0 : 20.0;
        month.add(kSeptember / date::day{day}, 9h, t, t);
    }
    const MonthSummary summary = month.summary(kSeptember);
    ASSERT_EQ(summary.hours.size(), 1U);
    const HourSummary& nine = summary.hours.front();
    EXPECT_EQ(nine.hour, record::HourOfDay{9h});
    EXPECT_EQ(nine.expected, 30);
    EXPECT_EQ(nine.n, 30);
    EXPECT_EQ(nine.withheld, Withheld::No);
    EXPECT_NEAR(nine.meanDry.value(), 15.0, 1e-9);
    EXPECT_NEAR(nine.meanWet.value(), 15.0, 1e-9);
    EXPECT_NEAR(nine.meanHumidity.value(), 100.0, 1e-9);
    EXPECT_NEAR(nine.meanDepression.value(), 0.0, 1e-9);
    EXPECT_NEAR(nine.meanVapourPressure.value(), 17.8376, 17.8376 * 1e-4);
    EXPECT_NEAR(nine.meanDewPoint.value(), 15.0, 2e-3);
    EXPECT_NEAR(nine.dewPointOfMeanVapourPressure.value(), 15.70, 0.01);
    EXPECT_EQ(nine.daysAtOrAbove95, 30);
    EXPECT_EQ(nine.daysAtOrBelow40, 0);
    EXPECT_FALSE(summary.all.hour);
    EXPECT_NEAR(summary.all.dewPointOfMeanVapourPressure.value(), 15.70, 0.01);
}

TEST(MonthSummary, MeanOfObservingHoursWeighsTheHoursEqually) {
    // Thirty readings at 09 and twenty-six at 21: by readings the mean would be 14.643, by hours it is 15.
    MonthBuilder month;
    for (unsigned day = 1; day <= 30; ++day) {
        month.add(kSeptember / date::day{day}, 9h, 10.0, 10.0);
        if (day % 7 != 0) {
            month.add(kSeptember / date::day{day}, 21h, 20.0, 20.0);
        }
    }
    const MonthSummary summary = month.summary(kSeptember);
    EXPECT_EQ(summary.hours.at(1).n, 26);
    EXPECT_EQ(summary.hours.at(1).missing, 4);
    EXPECT_NEAR(summary.all.meanDry.value(), 15.0, 1e-9);
    EXPECT_NEAR(summary.all.meanVapourPressure.value(), 17.8376, 17.8376 * 1e-4);
    EXPECT_NEAR(summary.all.dewPointOfMeanVapourPressure.value(), 15.70, 0.01);
    EXPECT_NEAR(summary.all.meanDewPoint.value(), 15.0, 2e-3);
    EXPECT_EQ(summary.all.expected, 60);
    EXPECT_EQ(summary.all.n, 56);
    EXPECT_EQ(summary.all.missing, 4);
}

TEST(MonthSummary, ExtremesWithHourAndDateAndTiesToTheEarliest) {
    MonthBuilder month;
    for (unsigned day = 1; day <= 30; ++day) {
        month.add(kSeptember / date::day{day}, 9h, 15.0, 13.0);
        month.add(kSeptember / date::day{day}, 21h, 15.0, 13.0);
    }
    // 23 / 16 °C whirled at 1013.25 hPa: 48 % in printed tables (common practice, no source).
    MonthBuilder dry;
    for (unsigned day = 1; day <= 30; ++day) {
        const bool marked = day == 7 || day == 19;
        dry.add(kSeptember / date::day{day}, 21h, marked ? 23.0 : 15.0, marked ? 16.0 : 13.0);
    }
    const MonthSummary flat = month.summary(kSeptember);
    EXPECT_EQ(flat.all.highestHumidity->at, (record::ObservingHour{record::StationDate{kSeptember / 1}, 9h}));
    EXPECT_EQ(flat.all.lowestHumidity->at, flat.all.highestHumidity->at);

    const MonthSummary summary = dry.summary(kSeptember);
    const HourSummary& evening = summary.hours.at(1);
    ASSERT_TRUE(evening.lowestHumidity);
    EXPECT_NEAR(evening.lowestHumidity->value, 48.0, 0.5);
    EXPECT_EQ(evening.lowestHumidity->at, (record::ObservingHour{record::StationDate{kSeptember / 7}, 21h}));
    EXPECT_NEAR(evening.highestDepression->value, 7.0, 1e-9);
    EXPECT_EQ(record::instantText(evening.lowestHumidity->instant), "2025-09-07T21:00:00Z");
    EXPECT_EQ(summary.all.lowestHumidity->at, evening.lowestHumidity->at);
    EXPECT_FALSE(summary.hours.at(0).lowestHumidity);
}

TEST(MonthSummary, ThresholdDaysCountADayOnceOverTheHours) {
    MonthBuilder month;
    month.add(kSeptember / 1, 9h, 15.0, 15.0);
    month.add(kSeptember / 1, 21h, 15.0, 15.0);
    month.add(kSeptember / 2, 21h, 15.0, 15.0);
    month.add(kSeptember / 3, 9h, 30.0, 15.0); // about 18 %
    const MonthSummary summary = month.summary(kSeptember);
    EXPECT_EQ(summary.hours.at(0).daysAtOrAbove95, 1);
    EXPECT_EQ(summary.hours.at(1).daysAtOrAbove95, 2);
    EXPECT_EQ(summary.all.daysAtOrAbove95, 2);
    EXPECT_EQ(summary.all.daysAtOrBelow40, 1);
    MonthOptions options;
    options.lowThreshold = 10;
    EXPECT_EQ(month.summary(kSeptember, options).all.daysAtOrBelow40, 0);
}

TEST(MonthSummary, WhatIsLeftOutIsCountedAndStaysOutOfMeansAndExtremes) {
    MonthBuilder month(stationFacts({9h}));
    for (unsigned day = 1; day <= 25; ++day) {
        month.add(kSeptember / date::day{day}, 9h, 15.0, 13.0);
    }
    month.add(kSeptember / 26, 9h, 30.0, 15.0, true);                              // marked
    month.add(kSeptember / 27, 9h, 30.0, 15.0).origin = record::Origin::Estimated; // estimate
    month.add(kSeptember / 28, 9h, 15.0, 13.0).wet = {};                           // one bulb
    auto& reason = month.add(kSeptember / 29, 9h, 0.0, 0.0, true);                 // missing, with its reason
    reason.dry = {};
    reason.wet = {};
    reason.origin = record::Origin::Missing;
    reason.missingReason = "ill";
    const MonthSummary summary = month.summary(kSeptember); // the 30th has nothing
    const HourSummary& nine = summary.hours.front();
    EXPECT_EQ(nine.expected, 30);
    EXPECT_EQ(nine.n, 25);
    EXPECT_EQ(nine.setAside, 2);
    EXPECT_EQ(nine.missing, 3);
    expectIdentity(nine);
    EXPECT_EQ(nine.daysAtOrBelow40, 0);
    EXPECT_EQ(nine.withheld, Withheld::TooManyInARow); // 26 to 30: set aside or missing, five in a row
    EXPECT_FALSE(nine.meanHumidity);
    EXPECT_FALSE(nine.dewPointOfMeanVapourPressure);
    EXPECT_NEAR(nine.highestDepression->value, 2.0, 1e-9);
}

TEST(MonthSummary, AMeanWithheldAtOneHourWithholdsTheMeanOfTheHours) {
    MonthBuilder month;
    for (unsigned day = 1; day <= 30; ++day) {
        month.add(kSeptember / date::day{day}, 9h, 15.0, 13.0);
        if (day <= 25) {
            month.add(kSeptember / date::day{day}, 21h, 15.0, 13.0);
        }
    }
    const MonthSummary summary = month.summary(kSeptember);
    EXPECT_TRUE(summary.hours.at(0).meanHumidity);
    EXPECT_EQ(summary.hours.at(1).withheld, Withheld::TooManyInARow);
    EXPECT_EQ(summary.all.withheld, Withheld::TooManyInARow);
    EXPECT_FALSE(summary.all.meanHumidity);
    EXPECT_FALSE(summary.all.meanDewPoint);
    EXPECT_TRUE(summary.all.highestHumidity);
}

TEST(MonthSummary, EmptyMonth) {
    MonthBuilder month;
    const MonthSummary summary = month.summary(2025_y / 2);
    ASSERT_EQ(summary.hours.size(), 2U);
    EXPECT_EQ(summary.all.expected, 56);
    EXPECT_EQ(summary.all.missing, 56);
    EXPECT_EQ(summary.all.withheld, Withheld::NothingRead);
    EXPECT_FALSE(summary.all.meanDry);
    EXPECT_FALSE(summary.all.highestHumidity);
    EXPECT_EQ(month.summary(2024_y / 2).all.expected, 58);

    MonthBuilder noHours(stationFacts({}));
    const MonthSummary none = noHours.summary(2025_y / 2);
    EXPECT_TRUE(none.hours.empty());
    EXPECT_EQ(none.all.expected, 0);
    EXPECT_EQ(none.all.withheld, Withheld::NothingRead);
}

TEST(MonthSummary, ExtraReadingsAndHoursOutsideThePlanTakeNoPart) {
    MonthBuilder month;
    month.add(kSeptember / 1, 9h, 15.0, 13.0);
    month.add(kSeptember / 1, 15h, 30.0, 15.0);
    month.add(kSeptember / 2, 15h, 30.0, 15.0).hour.reset();
    const MonthSummary summary = month.summary(kSeptember);
    EXPECT_EQ(summary.hours.size(), 2U);
    EXPECT_EQ(summary.all.n, 1);
    EXPECT_EQ(summary.all.daysAtOrBelow40, 0);
    expectIdentity(summary.all);
}

TEST(MonthSummary, TwoReadingsOfOneHourCountAsOne) {
    MonthBuilder month;
    month.add(kSeptember / 1, 9h, 30.0, 15.0, true);
    month.add(kSeptember / 1, 9h, 15.0, 13.0);
    const MonthSummary summary = month.summary(kSeptember);
    EXPECT_EQ(summary.all.n, 1);
    EXPECT_EQ(summary.all.setAside, 0);
    expectIdentity(summary.all);
}

TEST(MonthSummary, FogDaysCountWhetherOrNotTheHumidityDoes) {
    record::WeatherSet fog;
    fog.add(record::Weather::Fog);
    MonthBuilder month;
    month.add(kSeptember / 1, 9h, 10.0, 10.0).weather = fog;
    month.add(kSeptember / 1, 21h, 10.0, 10.0).weather = fog;
    month.add(kSeptember / 2, 9h, 10.0, 12.0, true).weather = fog;
    month.add(kSeptember / 3, 9h, 10.0, 10.0).weather = record::WeatherSet{};
    const MonthSummary summary = month.summary(kSeptember);
    EXPECT_EQ(summary.all.daysWithFog, 2);
    EXPECT_EQ(summary.hours.at(0).daysWithFog, 2);
    EXPECT_EQ(summary.hours.at(1).daysWithFog, 1);
}

TEST(MonthSummary, ClockChangeMakesNoFalseGap) {
    // Europe/London, 30 March 2025: 01:00 to 02:00 did not exist; 09 h is one hour of clock time earlier.
    MonthBuilder month(stationFacts({1h + 30min, 9h}, "Europe/London"));
    for (unsigned day = 1; day <= 31; ++day) {
        month.add(2025_y / 3 / date::day{day}, 9h, 10.0, 8.0);
        if (day != 30) {
            month.add(2025_y / 3 / date::day{day}, 1h + 30min, 8.0, 7.0);
        }
    }
    const MonthSummary summary = month.summary(2025_y / 3);
    EXPECT_EQ(summary.hours.at(0).expected, 30);
    EXPECT_EQ(summary.hours.at(0).missing, 0);
    EXPECT_EQ(summary.hours.at(1).expected, 31);
    EXPECT_EQ(summary.all.missing, 0);
    EXPECT_EQ(summary.all.withheld, Withheld::No);
    // 26 October 2025 showed 01:30 twice: expected once.
    EXPECT_EQ(month.summary(2025_y / 10).hours.at(0).expected, 31);
}

TEST(MonthSummary, SkippedHourDoesNotJoinOrBreakARun) {
    // 27, 28, 29 and 31 are missing, the 30th was skipped: a run of four, not five.
    MonthBuilder month(stationFacts({1h + 30min}, "Europe/London"));
    for (unsigned day = 1; day <= 26; ++day) {
        month.add(2025_y / 3 / date::day{day}, 1h + 30min, 8.0, 7.0);
    }
    const MonthSummary summary = month.summary(2025_y / 3);
    EXPECT_EQ(summary.hours.front().missing, 4);
    EXPECT_EQ(summary.hours.front().withheld, Withheld::No);
}

TEST(MonthSummary, HoursThatChangeWithinTheMonth) {
    record::StationFacts facts = stationFacts({9h, 21h});
    record::PeriodChange change;
    change.id = record::Uuid::fromSeed(9, 1);
    change.from = record::Instant{date::sys_days{2025_y / 9 / 21}};
    change.hours = std::vector<record::HourOfDay>{9h, 18h};
    facts.periods.push_back(change);
    MonthBuilder month(facts);
    for (unsigned day = 1; day <= 30; ++day) {
        month.add(kSeptember / date::day{day}, 9h, 10.0, 9.0);
        month.add(kSeptember / date::day{day}, day <= 20 ? 21h : 18h, 10.0, 9.0);
    }
    const MonthSummary summary = month.summary(kSeptember);
    ASSERT_EQ(summary.hours.size(), 3U);
    EXPECT_EQ(summary.hours.at(0).expected, 30);
    EXPECT_EQ(summary.hours.at(1).hour, record::HourOfDay{18h});
    EXPECT_EQ(summary.hours.at(1).expected, 10);
    EXPECT_EQ(summary.hours.at(2).expected, 20);
    EXPECT_EQ(summary.all.missing, 0);
    for (const HourSummary& hour : summary.hours) {
        expectIdentity(hour);
    }
    // A mean of a third of the month is not the month's.
    EXPECT_EQ(summary.hours.at(0).withheld, Withheld::No);
    EXPECT_EQ(summary.hours.at(1).withheld, Withheld::TooManyMissing);
    EXPECT_EQ(summary.hours.at(2).withheld, Withheld::TooManyInARow);
    EXPECT_FALSE(summary.all.meanDry);
}

TEST(MonthSummary, HoursToComeAreNotMissing) {
    MonthBuilder month;
    month.add(kSeptember / 1, 9h, 10.0, 9.0);
    month.add(kSeptember / 2, 9h, 10.0, 9.0); // read before its time, by a clock that runs ahead
    MonthOptions options;
    options.dueUntil = record::Instant{date::sys_days{2025_y / 9 / 1}} + 22h;
    const MonthSummary summary = month.summary(kSeptember, options);
    EXPECT_EQ(summary.all.expected, 3);
    EXPECT_EQ(summary.all.n, 2);
    EXPECT_EQ(summary.all.missing, 1);
    EXPECT_EQ(summary.hoursToCome, 57);
    EXPECT_EQ(summary.all.withheld, Withheld::TooManyMissing);
}

TEST(MonthSummary, AspiratedDewPointOfTheMeanUsesItsEnhancement) {
    // Saturated air at a steady 20.0 °C: the dew point is 20.0, and would be 20.08 with f left out
    // (psychrometric definition; f(p) of WMO-No. 8, Annex 4.B is 1.0047 at 1013 hPa).
    record::StationFacts facts = stationFacts({9h});
    facts.periods.front().exposure = psychrometry::Exposure::Aspirated;
    MonthBuilder month(facts);
    for (unsigned day = 1; day <= 30; ++day) {
        month.add(kSeptember / date::day{day}, 9h, 20.0, 20.0);
    }
    const MonthSummary summary = month.summary(kSeptember);
    EXPECT_NEAR(summary.all.dewPointOfMeanVapourPressure.value(), 20.0, 2e-3);
    EXPECT_NEAR(summary.all.meanVapourPressure.value(), 23.3932 * 1.0047, 0.01);
}

TEST(MonthSummary, IdentitiesHoldForAnyMonth) {
    std::mt19937 random(20250901); // fixed: the same months every time
    std::uniform_int_distribution<int> choice(0, 9);
    for (int round = 0; round < 60; ++round) {
        MonthBuilder month(stationFacts({9h, 21h}, "Europe/London"));
        const auto yearMonth =
            date::year{2020 + round / 12} / date::month{static_cast<unsigned>(round % 12 + 1)};
        const auto last = static_cast<unsigned>((yearMonth / date::last).day());
        for (unsigned day = 1; day <= last; ++day) {
            for (const record::HourOfDay hour : {9h, 21h}) {
                const int kind = choice(random);
                if (kind == 0) {
                    continue;
                }
                const double dry = 5.0 + choice(random);
                auto& values =
                    month.add(yearMonth / date::day{day}, hour, dry, dry - choice(random) * 0.3, kind == 1);
                if (kind == 2) {
                    values.wet = {};
                } else if (kind == 3) {
                    values.origin = record::Origin::Estimated;
                }
            }
        }
        const MonthSummary summary = month.summary(yearMonth);
        int expected = 0;
        int n = 0;
        for (const HourSummary& hour : summary.hours) {
            expectIdentity(hour);
            expected += hour.expected;
            n += hour.n;
            EXPECT_EQ(hour.withheld == Withheld::No, hour.meanHumidity.has_value());
            EXPECT_LE(hour.daysAtOrAbove95, hour.n);
            if (hour.meanHumidity) {
                EXPECT_LE(hour.lowestHumidity->value, *hour.meanHumidity + 1e-9);
                EXPECT_GE(hour.highestHumidity->value, *hour.meanHumidity - 1e-9);
                // The saturation curve is convex in temperature: the dew point of the mean is never lower.
                EXPECT_GE(*hour.dewPointOfMeanVapourPressure, *hour.meanDewPoint - 2e-3);
                EXPECT_NEAR(*hour.meanDry - *hour.meanWet, *hour.meanDepression, 1e-9);
            }
        }
        expectIdentity(summary.all);
        EXPECT_EQ(summary.all.expected, expected);
        EXPECT_EQ(summary.all.n, n);
        EXPECT_EQ(summary.all.expected, static_cast<int>(2 * last));
    }
}

} // namespace
} // namespace wickbook::climate
