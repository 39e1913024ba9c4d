// SPDX-License-Identifier: GPL-3.0-or-later
// How each hand reads, counted. The readings are made here, so that every number can be counted by hand.
#include "core/checks/observer_habits.h"
#include "tests/core/checks/checks_support.h"

namespace wickbook::checks {

namespace {

using namespace std::chrono_literals;

record::StationDate dayOf(unsigned month, unsigned date) {
    return date::local_days{date::year{2024} / date::month{month} / date::day{date}};
}

/// A reading at an hour of the station that reads at 7, 14 and 21 UTC.
record::Observation read(const char* by, record::StationDate date, std::chrono::minutes hour,
                         std::chrono::minutes late, const std::string& dry, const std::string& wet) {
    record::Observation values;
    values.hour = record::ObservingHour{date, hour};
    values.instant = record::Instant{(date + hour + late).time_since_epoch()};
    values.observer = by;
    values.dry.value = test::celsius(dry);
    values.wet.value = test::celsius(wet);
    return values;
}

const ObserverHabits& of(const std::vector<ObserverHabits>& all, const std::string& initials) {
    const auto found = std::find_if(all.begin(), all.end(),
                                    [&](const ObserverHabits& one) { return one.initials == initials; });
    EXPECT_NE(found, all.end()) << initials;
    return *found;
}

TEST(ObserverHabits, StandSideBySideInTheOrderOfTheirFirstReading) {
    ObserverCount count{test::makeStation()};
    count.add(read("B", dayOf(8, 1), 7h, 4min, "18.0", "15.0"));
    count.add(read("B", dayOf(8, 2), 7h, -2min, "18.5", "15.3"));
    count.add(read("A", dayOf(7, 1), 7h, 0min, "18.1", "15.2"));
    count.add(read(" A ", dayOf(9, 1), 21h, 0min, "18.3", "15.4")); // the same hand
    record::Observation doubtful = read("A", dayOf(7, 2), 14h, 0min, "18.2", "15.7");
    doubtful.quality = record::Quality::Doubtful;
    count.add(doubtful);
    record::Observation wrong = read("B", dayOf(8, 3), 7h, 1min, "18.0", "15.5");
    wrong.quality = record::Quality::Erroneous;
    count.add(wrong);
    record::Observation estimate = read("B", dayOf(8, 4), 7h, 0min, "18.0", "15.0");
    estimate.origin = record::Origin::Estimated;
    count.add(estimate);
    record::Observation missing;
    missing.observer = "C";
    missing.origin = record::Origin::Missing;
    count.add(missing);
    record::Observation withdrawn = read("D", dayOf(8, 5), 7h, 0min, "18.0", "15.0");
    withdrawn.withdrawn = true;
    count.add(withdrawn);

    const auto all = count.habits();
    ASSERT_EQ(all.size(), 2U) << "C only wrote why hours are missing, D's line was taken back";
    EXPECT_EQ(all[0].initials, "A");
    EXPECT_EQ(all[0].readings, 3);
    EXPECT_EQ(all[0].doubtful, 1);
    EXPECT_EQ(all[0].erroneous, 0);
    EXPECT_EQ(all[0].timed, 0);
    EXPECT_EQ(all[0].first, record::Instant{(dayOf(7, 1) + 7h).time_since_epoch()});
    EXPECT_EQ(all[0].last, record::Instant{(dayOf(9, 1) + 21h).time_since_epoch()});
    EXPECT_EQ(all[1].initials, "B");
    EXPECT_EQ(all[1].readings, 3);
    EXPECT_EQ(all[1].estimated, 1);
    EXPECT_EQ(all[1].erroneous, 1);
    EXPECT_EQ(all[1].timed, 3);
    // 4, −2 and 1 minutes: 7/3 off, 3/3 late. The estimate was not read.
    EXPECT_DOUBLE_EQ(all[1].meanMinutesOff.value(), 7.0 / 3);
    EXPECT_DOUBLE_EQ(all[1].meanMinutesLate.value(), 1.0);
    // Of B's dry bulbs 18.0, 18.5, 18.0 all three end in 0 or 5; of A's wet ones none of 15.2, 15.4, 15.7.
    EXPECT_DOUBLE_EQ(all[1].dryDigits.shareOfRound(), 1.0);
    EXPECT_EQ(all[1].dryDigits.mostFrequent(), 0);
    EXPECT_EQ(all[1].dryDigits.total(), 3);
    EXPECT_DOUBLE_EQ(all[0].wetDigits.shareOfRound(), 0.0);
}

TEST(ObserverHabits, ADeputyIsToldFromWhoReadsAtOtherTimes) {
    record::StationFacts facts = test::makeStation().facts();
    facts.absences.push_back(
        {record::Uuid::fromSeed(9, 1), dayOf(8, 1), dayOf(8, 14), "away", "EW", "", false});
    facts.absences.push_back(
        {record::Uuid::fromSeed(9, 2), dayOf(9, 1), dayOf(9, 2), "away", "ZZ", "", true}); // taken back
    ObserverCount count{record::StationRecord{facts}};
    for (unsigned date = 1; date <= 14; ++date) {
        count.add(read("EW", dayOf(8, date), 7h, 3min, "17.2", "15.1"));
    }
    count.add(read("A", dayOf(8, 3), 21h, 0min, "17.2", "15.1")); // was there all the same
    count.add(read("EW", dayOf(8, 20), 7h, 3min, "17.2", "15.1"));
    count.add(read("ZZ", dayOf(9, 1), 7h, 0min, "17.2", "15.1"));
    const auto all = count.habits();
    EXPECT_EQ(of(all, "EW").asDeputy, 14);
    EXPECT_EQ(of(all, "EW").readings, 15);
    EXPECT_TRUE(of(all, "EW").namedDeputy);
    EXPECT_EQ(of(all, "A").asDeputy, 0);
    EXPECT_FALSE(of(all, "A").namedDeputy);
    EXPECT_FALSE(of(all, "ZZ").namedDeputy) << "an absence that was taken back names nobody";
}

TEST(ObserverHabits, FavouredDigitsAreToldOfManyReadingsOnly) {
    // Every second reading ends in 0, the others go round: the chi-square of these counts against equal
    // shares (60 each of 600; 9 degrees of freedom, 1 % point 21.666, tables of Fisher and Yates, from
    // memory).
    FinalDigits digits;
    FinalDigits few;
    FinalDigits even;
    for (int i = 0; i < 600; ++i) {
        record::Observation values;
        values.dry.value = units::ReadTemperature{{150 + (i % 2 == 0 ? 0 : (i / 2) % 10), 1},
                                                  units::TemperatureUnit::Celsius};
        digits.add(values, Bulb::Dry);
        if (i < 100) {
            few.add(values, Bulb::Dry);
        }
        values.dry.value->value.mantissa = -150 - i % 10; // below zero it is the same digit
        even.add(values, Bulb::Dry);
    }
    // 330 zeros and 30 of each other: (270² + 9 × 30²) / 60 = 1350.
    EXPECT_DOUBLE_EQ(digits.chiSquare(), 1350.0);
    EXPECT_DOUBLE_EQ(digits.shareOf(0), 0.55);
    EXPECT_DOUBLE_EQ(digits.shareOfRound(), 0.6);
    EXPECT_TRUE(digitPreference(digits, Bulb::Dry, Limits{}).has_value());
    EXPECT_FALSE(digitPreference(few, Bulb::Dry, Limits{}).has_value());
    EXPECT_DOUBLE_EQ(even.chiSquare(), 0.0);
    EXPECT_FALSE(digitPreference(even, Bulb::Dry, Limits{}).has_value());
    // No choice of ten digits: whole degrees and °F.
    FinalDigits none;
    record::Observation whole;
    whole.dry.value = units::ReadTemperature{{15, 0}, units::TemperatureUnit::Celsius};
    whole.wet.value = units::ReadTemperature{{615, 1}, units::TemperatureUnit::Fahrenheit};
    none.add(whole, Bulb::Dry);
    none.add(whole, Bulb::Wet);
    EXPECT_EQ(none.total(), 0);
    EXPECT_DOUBLE_EQ(none.shareOfRound(), 0.0);
}

} // namespace

} // namespace wickbook::checks
