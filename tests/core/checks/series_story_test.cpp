// SPDX-License-Identifier: GPL-3.0-or-later
// Stories of a series: steps, standing still, the same hour twice, a day copied, times. Limits of the steps
// and the gross limits: WMO-No. 305, chapter 6; the others: common practice, no source.
#include "tests/core/checks/checks_support.h"

namespace wickbook::checks::test {

namespace {

record::Instant at(const std::string& time) {
    return record::Instant{record::parseTime(time).value().local.time_since_epoch()};
}

} // namespace

TEST(SeriesStory, ASoundDayHasNothingToSay) {
    Page page;
    page.write("2025-05-01T07:00Z", "9.8", "8.1", {.weather = "none", .pressure = "1002.4"});
    page.write("2025-05-01T14:00Z", "17.3", "12.0", {.weather = "none", .pressure = "1001.9"});
    page.write("2025-05-01T21:00Z", "11.5", "9.4", {.weather = "dew", .pressure = "1003.0"});
    for (const auto& checked : page.check(at("2025-05-01T21:05Z"))) {
        EXPECT_TRUE(checked.findings.empty()) << codes(checked.findings);
        EXPECT_FALSE(checked.leftOut);
    }
}

TEST(SeriesStory, AStepIsSoftAndKnowsItsInterval) {
    struct Case {
        const char* time;
        const char* dry;
        bool spoken;
    };
    // From 10.0 at 06:00: 9 K in 3 h, 15 in 6, 25 in 12; an interval between takes the next longer one's
    // limit.
    for (const Case& c : {Case{"2025-05-01T09:00Z", "19.0", false}, Case{"2025-05-01T09:00Z", "19.1", true},
                          Case{"2025-05-01T10:00Z", "24.9", false}, Case{"2025-05-01T12:00Z", "25.1", true},
                          Case{"2025-05-01T18:00Z", "34.9", false}, Case{"2025-05-01T18:00Z", "35.1", true},
                          Case{"2025-05-01T23:00Z", "39.0", false}}) {
        Page page;
        page.write("2025-05-01T06:00Z", "10.0", "");
        page.write(c.time, c.dry, "");
        EXPECT_EQ(has(page.last(), "step-temperature"), c.spoken) << c.time << ' ' << c.dry;
        if (c.spoken) {
            EXPECT_EQ(severityOf(page.last(), "step-temperature"), Severity::Soft);
            EXPECT_FALSE(page.check().back().leftOut);
        }
    }
}

TEST(SeriesStory, OneSlipMakesOneNoteAndTheNextReadingIsNotBlamed) {
    // The dry bulb of seven read ten too high; three hours later all is as it should be.
    Page page;
    page.write("2025-05-01T04:00Z", "9.0", "8.4");
    page.write("2025-05-01T07:00Z", "20.1", "8.6");
    page.write("2025-05-01T10:00Z", "11.0", "9.0");
    const auto checked = page.check();
    EXPECT_TRUE(has(checked[1].findings, "step-temperature")) << codes(checked[1].findings);
    EXPECT_TRUE(has(checked[1].findings, "step-dew-point")) << codes(checked[1].findings);
    EXPECT_EQ(spokenNotes(checked[1].findings).size(), 1U) << codes(checked[1].findings);
    EXPECT_FALSE(has(checked[2].findings, "step-temperature")) << codes(checked[2].findings);
    EXPECT_FALSE(has(checked[2].findings, "step-dew-point")) << codes(checked[2].findings);
}

TEST(SeriesStory, AReadingJudgedErroneousIsNobodysNeighbour) {
    Page page;
    page.write("2025-05-01T07:00Z", "9.0", "8.4");
    page.write("2025-05-01T14:00Z", "220.9", "12.0");
    page.write("2025-05-01T21:00Z", "11.0", "9.0");
    const auto checked = page.check();
    EXPECT_EQ(severityOf(checked[1].findings, "off-scale"), Severity::Erroneous);
    EXPECT_EQ(find(checked[1].findings, "off-scale")->number("value"), 220.9);
    EXPECT_EQ(spokenNotes(checked[1].findings).size(), 1U) << codes(checked[1].findings);
    EXPECT_FALSE(checked[1].reading.humidityPercent());
    EXPECT_TRUE(checked[2].findings.empty()) << codes(checked[2].findings);

    Page judged;
    judged.write("2025-05-01T04:00Z", "25.0", "15.0", {.quality = record::Quality::Erroneous});
    judged.write("2025-05-01T07:00Z", "9.0", "8.4");
    EXPECT_TRUE(judged.last().empty()) << codes(judged.last());
}

TEST(SeriesStory, StandingStillDependsOnTheScale) {
    const auto run = [](units::Decimal step, const std::string& dry, const std::string& wet, int times,
                        const std::string& weather) {
        Page page{{50, 100, Exposure::Screen, step}};
        for (int i = 0; i < times; ++i) {
            page.write("2025-05-0" + std::to_string(1 + i / 3) +
                           (i % 3 == 0   ? "T07:00Z"
                            : i % 3 == 1 ? "T14:00Z"
                                         : "T21:00Z"),
                       dry, wet, {.weather = weather});
        }
        return has(page.last(), "persistence");
    };
    EXPECT_FALSE(run({1, 1}, "11.3", "9.7", 2, ""));
    EXPECT_TRUE(run({1, 1}, "11.3", "9.7", 3, ""));
    EXPECT_FALSE(run({1, 1}, "8.3", "8.2", 3, "fog"));
    EXPECT_FALSE(run({5, 1}, "11.5", "9.5", 4, ""));
    EXPECT_TRUE(run({5, 1}, "11.5", "9.5", 5, ""));
    EXPECT_FALSE(run({1, 0}, "11", "9", 7, ""));
    EXPECT_TRUE(run({1, 0}, "11", "9", 8, ""));
}

TEST(SeriesStory, TheSameHourTwiceWaitsForAChoice) {
    Page page;
    page.write("2025-05-01T07:00Z", "9.8", "8.1");
    page.write("2025-05-01T07:10Z", "10.1", "8.2");
    for (const auto& checked : page.check()) {
        EXPECT_EQ(severityOf(checked.findings, "duplicate"), Severity::Doubtful);
        EXPECT_TRUE(checked.leftOut);
    }
    EXPECT_EQ(find(page.last(), "duplicate")->number("other-dry"), 9.8);
    EXPECT_EQ(find(page.last(), "duplicate")->word("hour"), "07:00");
}

TEST(SeriesStory, ACopiedDayIsFoundOnceTheDayIsFull) {
    Page page;
    page.write("2025-05-01T07:00Z", "9.8", "8.1").write("2025-05-01T14:00Z", "17.3", "12.0");
    page.write("2025-05-02T07:00Z", "9.1", "8.3").write("2025-05-02T14:00Z", "16.0", "12.2");
    page.write("2025-05-03T07:00Z", "9.8", "8.1").write("2025-05-03T14:00Z", "17.3", "12.0");
    const auto checked = page.check();
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_FALSE(has(checked[i].findings, "copied-day")) << i;
    }
    ASSERT_TRUE(has(checked[4].findings, "copied-day"));
    ASSERT_TRUE(has(checked[5].findings, "copied-day"));
    EXPECT_EQ(find(checked[5].findings, "copied-day")->word("date"), "2025-05-01");
    // One hour alone may agree by chance.
    Page one;
    one.write("2025-05-01T07:00Z", "9.8", "8.1").write("2025-05-01T14:00Z", "17.3", "12.0");
    one.write("2025-05-02T07:00Z", "9.8", "8.1");
    EXPECT_FALSE(has(one.last(), "copied-day"));
}

TEST(SeriesStory, TimesAreKeptAndNoted) {
    Page late;
    late.write("2025-05-01T07:16Z", "9.8", "8.1");
    ASSERT_EQ(severityOf(late.last(), "late"), Severity::Note);
    EXPECT_DOUBLE_EQ(*find(late.last(), "late")->number("minutes"), 16);
    Page early;
    early.write("2025-05-01T06:44Z", "9.8", "8.1");
    ASSERT_EQ(severityOf(early.last(), "early"), Severity::Note);
    EXPECT_DOUBLE_EQ(*find(early.last(), "early")->number("minutes"), 16);
    Page punctual;
    punctual.write("2025-05-01T07:15Z", "9.8", "8.1");
    EXPECT_TRUE(punctual.last(at("2025-05-01T07:15Z")).empty());
    EXPECT_EQ(severityOf(punctual.last(at("2025-05-01T07:10Z")), "future"), Severity::Doubtful);
}

TEST(SeriesStory, GrossLimitsKnowLatitudeAndSeason) {
    const auto judge = [](double latitude, const std::string& date, const std::string& dry) {
        Page page{{latitude, 100, Exposure::Screen, {1, 1}}};
        page.write(date + "T14:00Z", dry, "");
        return severityOf(page.last(), "gross-temperature");
    };
    // WMO-No. 305: above 45 degrees, winter: doubtful above 35, erroneous above 40; summer: above 40 and 50.
    EXPECT_EQ(judge(50, "2025-01-10", "35.1"), Severity::Doubtful);
    EXPECT_EQ(judge(50, "2025-01-10", "40.1"), Severity::Erroneous);
    EXPECT_EQ(judge(50, "2025-07-10", "39.9"), std::nullopt);
    EXPECT_EQ(judge(50, "2025-07-10", "40.1"), Severity::Doubtful);
    EXPECT_EQ(judge(50, "2025-07-10", "-30.1"), Severity::Doubtful);
    EXPECT_EQ(judge(50, "2025-01-10", "-39.0"), std::nullopt);
    // South of the equator the seasons are the other way round.
    EXPECT_EQ(judge(-50, "2025-07-10", "38.0"), Severity::Doubtful);
    EXPECT_EQ(judge(-50, "2025-01-10", "38.0"), std::nullopt);
    // Up to 45 degrees: summer −20…50.
    EXPECT_EQ(judge(-33, "2025-01-10", "-20.1"), Severity::Doubtful);
    EXPECT_EQ(judge(-33, "2025-07-10", "-20.1"), std::nullopt);
    EXPECT_EQ(judge(-33, "2025-07-10", "-30.1"), Severity::Doubtful);
}

TEST(SeriesStory, GrossDewPoint) {
    // Winter up to 45 degrees: doubtful above 35 °C (WMO-No. 305).
    Page page{{10, 0, Exposure::Screen, {1, 1}}};
    page.write("2025-12-10T14:00Z", "36.5", "36.0", {.weather = "rain"});
    EXPECT_EQ(severityOf(page.last(), "gross-dew-point"), Severity::Doubtful) << codes(page.last());
}

TEST(SeriesStory, ASeaLevelPressureAtAMountainStation) {
    Page page{{47, 1500, Exposure::Screen, {1, 1}}};
    page.write("2025-05-01T07:00Z", "9.8", "8.1", {.pressure = "1015.2"});
    EXPECT_EQ(severityOf(page.last(), "gross-pressure"), Severity::Doubtful);
    // Standard atmosphere at 1500 m: 845.6 hPa (ICAO Doc 7488).
    EXPECT_NEAR(*find(page.last(), "gross-pressure")->number("usual"), 845.6, 0.1);
    Page station{{47, 1500, Exposure::Screen, {1, 1}}};
    station.write("2025-05-01T07:00Z", "9.8", "8.1", {.pressure = "851.0"});
    EXPECT_TRUE(station.last().empty()) << codes(station.last());
}

TEST(SeriesStory, TheStationsOwnRangeOfMonthAndHour) {
    Page page;
    for (int year = 2020; year < 2024; ++year) {
        for (int day = 10; day < 20; ++day) {
            page.write(std::to_string(year) + "-05-" + std::to_string(day) + "T07:00Z",
                       units::fixedText(9.0 + 0.3 * (day - 10), 1),
                       units::fixedText(7.5 + 0.2 * (day - 10), 1));
        }
    }
    page.write("2024-05-20T07:00Z", "24.0", "17.0");
    ASSERT_TRUE(has(page.last(), "climatology")) << codes(page.last());
    EXPECT_EQ(find(page.last(), "climatology")->severity, Severity::Soft);
    EXPECT_EQ(find(page.last(), "climatology")->number("years"), 5);
    const auto checked = page.check();
    EXPECT_FALSE(has(checked[10].findings, "climatology"));
    // Two years are no average: common practice, no source.
    Page young;
    for (int day = 10; day < 20; ++day) {
        young.write("2023-05-" + std::to_string(day) + "T07:00Z", "9.0", "7.5");
    }
    young.write("2024-05-20T07:00Z", "24.0", "17.0");
    EXPECT_FALSE(has(young.last(), "climatology"));
}

TEST(SeriesStory, WeatherAndHumidityDisagree) {
    const auto codesOf = [](const std::string& dry, const std::string& wet, const std::string& weather) {
        Page page;
        page.write("2025-05-01T07:00Z", dry, wet, {.weather = weather});
        return codes(page.last());
    };
    EXPECT_EQ(codesOf("10.0", "7.0", "fog"), "fog-but-dry ");
    EXPECT_EQ(codesOf("10.0", "9.5", "fog"), "");
    EXPECT_EQ(codesOf("25.0", "14.0", "rain"), "rain-but-dry ");
    EXPECT_EQ(codesOf("10.0", "10.0", "none"), "fine-but-saturated ");
    EXPECT_EQ(codesOf("10.0", "10.0", "haze"), "fine-but-saturated ");
    for (const char* silent : {"fog", "rain", "dew", "rime", ""}) {
        EXPECT_EQ(codesOf("10.0", "10.0", silent), "") << silent; // wet weather, or nothing noted
    }
}

TEST(SeriesStory, MaximumAndMinimumAsRead) {
    Page own;
    own.write("2025-05-01T21:00Z", "14.0", "11.0", {.maximum = "13.1", .minimum = "6.0"});
    ASSERT_TRUE(has(own.last(), "max-min"));
    EXPECT_EQ(find(own.last(), "max-min")->word("which"), "above-maximum");
    Page next;
    next.write("2025-05-01T14:00Z", "19.0", "14.0");
    next.write("2025-05-01T21:00Z", "14.0", "11.0", {.maximum = "18.0", .minimum = "6.0"});
    ASSERT_TRUE(has(next.check()[0].findings, "max-min"));
    EXPECT_EQ(find(next.check()[0].findings, "max-min")->word("when"), "next");
    EXPECT_FALSE(has(next.last(), "max-min"));
    Page crossed;
    crossed.write("2025-05-01T21:00Z", "10.0", "9.0", {.maximum = "6.0", .minimum = "18.0"});
    EXPECT_EQ(find(crossed.last(), "max-min")->word("which"), "crossed");
}

TEST(SeriesStory, OneBulbIsKeptAsIncomplete) {
    Page page;
    page.write("2025-05-01T07:00Z", "9.8", "");
    ASSERT_EQ(codes(page.last()), "incomplete ");
    EXPECT_EQ(find(page.last(), "incomplete")->word("missing"), "wet");
    EXPECT_FALSE(page.check().back().leftOut);
}

} // namespace wickbook::checks::test
