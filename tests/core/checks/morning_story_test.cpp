// SPDX-License-Identifier: GPL-3.0-or-later
// Mornings told as they go, several readings each: of all of them only the one in trouble speaks, and it
// speaks with one note. What an observer expects: common practice, no source, where nothing else is named.
#include "tests/core/checks/checks_support.h"

namespace wickbook::checks::test {

namespace {

/// Every reading with its notes, "07:00 freezing-halt+wet-above-dry; …": quiet ones are left out.
std::string told(const Page& page) {
    std::string text;
    for (const CheckedReading& checked : page.check()) {
        const auto notes = spokenNotes(checked.findings);
        if (notes.empty()) {
            continue;
        }
        text += record::instantText(checked.reading.values().instant).substr(8, 8);
        for (const SpokenNote& note : notes) {
            text += ' ' + std::string{note.lead.code};
            for (const Finding& also : note.also) {
                text += '+' + std::string{also.code};
            }
        }
        text += "; ";
    }
    return text;
}

} // namespace

TEST(MorningStory, AFrozenWickSpeaksOnceAndIsNotHeldAgainstTheDay) {
    Page page;
    page.write("2025-01-10T14:00Z", "1.8", "0.7", {.wick = WickState::Water, .weather = "none"});
    page.write("2025-01-10T21:00Z", "-0.8", "-1.6", {.wick = WickState::Ice, .weather = "none"});
    // Wetted at seven; the water is freezing and holds the bulb at 0.0 in air of −2.4.
    page.write("2025-01-11T07:00Z", "-2.4", "0.0", {.wick = WickState::Water, .weather = "hoar-frost"});
    // A quarter of an hour later it has frozen through and fallen (an extra reading, between the hours).
    page.write("2025-01-11T08:15Z", "-2.0", "-2.7", {.wick = WickState::Ice, .weather = "hoar-frost"});
    page.write("2025-01-11T14:00Z", "1.0", "-0.4", {.wick = WickState::Ice, .weather = "none"});
    EXPECT_EQ(told(page), "11T07:00 wet-above-dry+freezing-halt; ");
    const auto checked = page.check();
    EXPECT_TRUE(checked[2].leftOut);
    EXPECT_FALSE(checked[3].leftOut);
    EXPECT_EQ(checked[2].findings[0].root, Root::FrozenWick);
}

TEST(MorningStory, AFrozenWickInDriftingFogIsOneNoteToo) {
    // Ice given, the bulb still halting above the dry bulb, everything saturated.
    Page page;
    page.write("2025-01-10T21:00Z", "-3.1", "-3.2", {.wick = WickState::Ice, .weather = "fog"});
    page.write("2025-01-11T07:00Z", "-4.0", "0.1", {.wick = WickState::Ice, .weather = "fog"});
    page.write("2025-01-11T14:00Z", "-2.6", "-2.8", {.wick = WickState::Ice, .weather = "fog"});
    EXPECT_EQ(told(page), "11T07:00 ice-over-dry+freezing-halt; ");
}

TEST(MorningStory, AForgottenAnswerOnAFrozenMorningIsPartOfTheSameNote) {
    Page page;
    page.write("2025-01-10T21:00Z", "-0.8", "-1.6", {.wick = WickState::Ice, .weather = "none"});
    page.write("2025-01-11T07:00Z", "-1.2", "0.0", {.weather = "none"});
    const auto notes = spokenNotes(page.last());
    ASSERT_EQ(notes.size(), 1U) << told(page);
    EXPECT_TRUE(has(page.last(), "freezing-halt")) << told(page);
    EXPECT_TRUE(has(page.last(), "wick-state-unknown")) << told(page);
}

TEST(MorningStory, AThawSpeaksWhileTheBulbIsStuckAndThenIsOver) {
    Page page;
    page.write("2025-02-03T07:00Z", "-1.5", "-2.1", {.wick = WickState::Ice, .weather = "none"});
    page.write("2025-02-03T09:30Z", "2.6", "0.0", {.wick = WickState::Ice, .weather = "none"});
    page.write("2025-02-03T11:00Z", "4.2", "0.0", {.wick = WickState::Ice, .weather = "none"});
    // Melted with tepid water; it rises to its place.
    page.write("2025-02-03T14:00Z", "5.1", "3.2", {.wick = WickState::Water, .weather = "none"});
    EXPECT_EQ(told(page), "03T09:30 freezing-halt; 03T11:00 freezing-halt; ");
    const auto checked = page.check();
    EXPECT_EQ(find(checked[1].findings, "freezing-halt")->word("phase"), "thawing");
    EXPECT_EQ(find(checked[2].findings, "freezing-halt")->word("phase"), "thawing");
    EXPECT_FALSE(checked[1].leftOut) << "a suspicion is soft";
}

TEST(MorningStory, ADryWickSpeaksOnceAndTheNextReadingIsNotBlamed) {
    Page page;
    page.write("2025-07-01T07:00Z", "18.0", "13.2", {.weather = "none"});
    page.write("2025-07-01T14:00Z", "26.0", "16.4", {.weather = "none"});
    page.write("2025-07-01T21:00Z", "19.4", "14.0", {.weather = "none"});
    page.write("2025-07-02T07:00Z", "18.6", "18.5", {.weather = "none"}); // dry since last evening
    page.write("2025-07-02T08:15Z", "19.4", "14.1", {.weather = "none"}); // wetted, waited, read again
    page.write("2025-07-02T14:00Z", "27.2", "17.0", {.weather = "none"});
    EXPECT_EQ(told(page), "02T07:00 dry-wick+fine-but-saturated; ");
    const auto checked = page.check();
    EXPECT_TRUE(checked[3].leftOut);
    EXPECT_FALSE(checked[4].leftOut);
}

TEST(MorningStory, ADryWickBeforeThereAreNeighboursIsOneNoteAsWell) {
    // The second reading of a new book: too few to compare the vapour with.
    Page page;
    page.write("2025-07-01T07:00Z", "18.0", "11.2", {.weather = "none"});
    page.write("2025-07-01T10:00Z", "26.0", "26.1", {.weather = "none"});
    const auto notes = spokenNotes(page.last());
    ASSERT_EQ(notes.size(), 1U) << told(page);
    EXPECT_EQ(notes[0].lead.code, "fine-but-saturated") << told(page);
    EXPECT_TRUE(has(page.last(), "step-dew-point")) << told(page);
    EXPECT_TRUE(has(page.last(), "wet-above-dry")) << told(page);
}

TEST(MorningStory, WholeDegreesKeepAnOrdinaryWeekQuiet) {
    // Three readings a day on whole-degree thermometers: equal pairs, equal bulbs and flat days are the
    // scale's doing, not the observer's.
    Page page{{50, 100, Exposure::Screen, {1, 0}}};
    for (int day = 10; day < 15; ++day) {
        const std::string date = "2025-10-" + std::to_string(day);
        page.write(date + "T07:00Z", "8", "7", {.weather = "mist"});
        page.write(date + "T14:00Z", std::to_string(12 + day % 3), "9", {.weather = "none"});
        page.write(date + "T21:00Z", "9", day % 2 == 0 ? "8" : "7", {.weather = "none"});
    }
    EXPECT_EQ(told(page), "");
}

TEST(MorningStory, WholeDegreesInFrostSpeakOnce) {
    // −2 in the dry, −1 in the wet: within one step of each other, and within one step of the halt at zero.
    Page page{{50, 100, Exposure::Screen, {1, 0}}};
    page.write("2025-01-10T14:00Z", "1", "0", {.wick = WickState::Water, .weather = "none"});
    page.write("2025-01-10T21:00Z", "-2", "-3", {.wick = WickState::Ice, .weather = "none"});
    page.write("2025-01-11T07:00Z", "-3", "0", {.wick = WickState::Water, .weather = "none"});
    page.write("2025-01-11T14:00Z", "-1", "-2", {.wick = WickState::Ice, .weather = "none"});
    const auto checked = page.check();
    ASSERT_EQ(spokenNotes(checked[2].findings).size(), 1U) << told(page);
    EXPECT_TRUE(has(checked[2].findings, "freezing-halt")) << told(page);
    EXPECT_TRUE(checked[1].findings.empty()) << told(page);
}

TEST(MorningStory, FogThatWasNotedKeepsStandingAirQuiet) {
    // Three days of fog: the same saturated pair at every hour, as the observer has said.
    for (const char* weather : {"fog", "rime", "fog;drizzle"}) {
        Page page;
        for (int i = 0; i < 9; ++i) {
            page.write("2025-11-1" + std::to_string(i / 3) +
                           (i % 3 == 0   ? "T07:00Z"
                            : i % 3 == 1 ? "T14:00Z"
                                         : "T21:00Z"),
                       "4.2", "4.2", {.weather = weather});
        }
        EXPECT_EQ(told(page), "") << weather;
    }
    // One clear hour among them, and the days alike are asked about again.
    Page clear;
    for (int i = 0; i < 6; ++i) {
        clear.write("2025-11-1" + std::to_string(i / 3) +
                        (i % 3 == 0   ? "T07:00Z"
                         : i % 3 == 1 ? "T14:00Z"
                                      : "T21:00Z"),
                    "4.2", i % 3 == 1 ? "3.1" : "4.2", {.weather = i % 3 == 1 ? "none" : "fog"});
    }
    EXPECT_TRUE(has(clear.last(), "copied-day")) << told(clear);
}

TEST(MorningStory, SeasonAndLatitudeGoWithTheStationWhereItMoves) {
    // From Kiruna's latitude to one of southern New Zealand on 1 July, to the tropics on 1 January after:
    // what is summer, and how far it may go, changes on the day. Limits: WMO-No. 305, chapter 6.
    record::NewStation plan;
    plan.name = "Invented";
    plan.position = {67.8, 20.2};
    plan.zone = "UTC";
    plan.hours = {std::chrono::hours{14}};
    std::uint64_t counter = 0;
    record::StationFacts facts =
        record::factsOf(plan, [&counter] { return record::Uuid::fromSeed(8, ++counter); });
    const auto at = [](const std::string& time) {
        return record::Instant{record::parseTime(time).value().local.time_since_epoch()};
    };
    const auto move = [&](const std::string& day, double latitude) {
        record::PeriodChange change;
        change.id = record::Uuid::fromSeed(8, ++counter);
        change.from = at(day + "T00:00Z");
        change.position = record::Position{latitude, 170};
        facts.periods.push_back(change);
    };
    move("2024-07-01", -46.0);
    move("2025-01-01", -12.0);
    const record::StationRecord station{facts};
    const auto judge = [&](const std::string& day, const std::string& dry) {
        record::Observation values;
        record::placeInTime(values, station, at(day + "T14:00Z"));
        values.dry.value = celsius(dry);
        const std::vector<record::DerivedReading> series{record::deriveReading(values, station)};
        return severityOf(checkSeries(series, 0, 1, station, Limits{}, {})[0].findings, "gross-temperature");
    };
    EXPECT_EQ(judge("2024-06-30", "38.0"), std::nullopt) << "summer in the north: up to 40";
    EXPECT_EQ(judge("2024-07-01", "38.0"), Severity::Doubtful) << "winter in the south: above 35";
    EXPECT_EQ(judge("2024-12-31", "38.0"), std::nullopt) << "summer in the south: up to 40";
    EXPECT_EQ(judge("2024-12-31", "44.0"), Severity::Doubtful);
    EXPECT_EQ(judge("2025-01-01", "44.0"), std::nullopt) << "low latitude, summer: up to 50";
    EXPECT_EQ(judge("2025-07-01", "-21.0"), std::nullopt) << "low latitude, winter: down to -30";
    EXPECT_EQ(judge("2025-10-01", "-21.0"), Severity::Doubtful) << "low latitude, summer again: -20";
}

} // namespace wickbook::checks::test
