// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/derived_reading.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <chrono>
#include <set>
#include <thread>
#include <vector>

namespace {

using namespace wickbook;
using namespace wickbook::record;
using namespace std::chrono_literals;
using namespace date::literals;

class DerivedReadingOf : public ::testing::Test {
protected:
    DerivedReadingOf() {
        NewStation fresh;
        fresh.name = "Hilltop (invented)";
        fresh.exposure = psychrometry::Exposure::Whirled;
        fresh.hours = {9h};
        std::uint64_t counter = 0;
        facts = factsOf(fresh, [&] { return Uuid::fromSeed(7, counter++); });
        observation.instant = Instant{date::sys_days{2025_y / 6 / 1} + 9h};
        observation.dry.value = {units::Decimal{230, 1}, units::TemperatureUnit::Celsius};
        observation.wet.value = {units::Decimal{160, 1}, units::TemperatureUnit::Celsius};
        observation.pressure = units::Decimal{101325, 2};
    }

    [[nodiscard]] DerivedReading derived() const { return deriveReading(observation, StationRecord{facts}); }

    void setUnit(units::TemperatureUnit unit) {
        for (Thermometer& thermometer : facts.thermometers) {
            thermometer.unit = unit;
        }
    }

    StationFacts facts;
    Observation observation;
};

// 23 °C / 16 °C whirled at 1013.25 hPa: printed tables give 48 % (common practice, no source).
TEST_F(DerivedReadingOf, aWhirledPair) {
    const DerivedReading reading = derived();
    ASSERT_TRUE(reading.humidityPercent());
    EXPECT_NEAR(*reading.humidityPercent(), 47.90, 0.05);
    EXPECT_EQ(reading.pressureSource, PressureSource::Read);
}

TEST_F(DerivedReadingOf, withoutPressureTakesTheStandardAtmosphere) {
    observation.pressure.reset();
    facts.periods.front().elevation = units::Elevation::fromMetres(1000);
    const DerivedReading reading = derived();
    EXPECT_EQ(reading.pressureSource, PressureSource::Elevation);
    EXPECT_NEAR(reading.pressure.hectopascals(), 898.75,
                0.05);                           // ICAO Doc 7488, 1000 m: 898.746 hPa (from memory)
    EXPECT_GT(*reading.humidityPercent(), 48.5); // thinner air, higher humidity from the same pair
}

TEST_F(DerivedReadingOf, correctionsApplyFromTheirDateInTheThermometersUnit) {
    Correction correction;
    correction.thermometer = facts.thermometers[1].id;
    correction.from = observation.instant;
    correction.points = {{0.0, 0.2}, {20.0, 0.4}};
    facts.corrections.push_back(correction);
    // Linear between the points: 0.2 + 0.2 × 16/20.
    EXPECT_NEAR(derived().wet.temperature->celsius(), 16.36, 1e-12);
    EXPECT_EQ(derived().dry.temperature->celsius(), 23.0);
    observation.instant -= 1s;
    EXPECT_EQ(derived().wet.temperature->celsius(), 16.0);
    // The value read stays what it was.
    EXPECT_EQ(derived().values().wet.value->value.toText(), "16.0");
}

TEST_F(DerivedReadingOf, fahrenheitCorrectionsAreFahrenheitDegrees) {
    setUnit(units::TemperatureUnit::Fahrenheit);
    for (Thermometer& thermometer : facts.thermometers) {
        thermometer.lowestMark = {-40, 0};
        thermometer.highestMark = {120, 0};
    }
    observation.dry.value = {units::Decimal{734, 1}, units::TemperatureUnit::Fahrenheit}; // 73.4 °F = 23 °C
    observation.wet.value = {units::Decimal{608, 1}, units::TemperatureUnit::Fahrenheit}; // 60.8 °F = 16 °C
    EXPECT_NEAR(*derived().humidityPercent(), 47.90, 0.05);
    Correction correction;
    correction.thermometer = facts.thermometers[0].id;
    correction.points = {{32.0, 0.9}};
    facts.corrections.push_back(correction);
    EXPECT_NEAR(derived().dry.temperature->celsius(), 23.5, 1e-9);
    EXPECT_NEAR(derived().dry.step.kelvins(), 0.1 * 5 / 9, 1e-12);
}

TEST_F(DerivedReadingOf, offTheScaleThereIsNoHumidity) {
    observation.dry.value = {units::Decimal{2209, 1}, units::TemperatureUnit::Celsius};
    const DerivedReading reading = derived();
    EXPECT_TRUE(reading.dry.offScale);
    EXPECT_FALSE(reading.derivation);
    EXPECT_EQ(reading.values().dry.value->value.toText(), "220.9");
}

TEST_F(DerivedReadingOf, oneBulbAloneDerivesNothing) {
    observation.wet = {};
    EXPECT_FALSE(derived().derivation);
    EXPECT_FALSE(derived().humidityPercent());
}

TEST_F(DerivedReadingOf, belowScaleIsNoNumber) {
    observation.wet = {std::nullopt, true};
    EXPECT_TRUE(derived().wet.offScale);
    EXPECT_FALSE(derived().derivation);
}

TEST_F(DerivedReadingOf, ownCoefficientOfTheStation) {
    facts.periods.front().exposure = psychrometry::Exposure::Own;
    facts.periods.front().ownCoefficient = OwnCoefficient{6.66e-4, std::nullopt, 0.03};
    EXPECT_NEAR(*derived().humidityPercent(), 47.90, 0.05);
    facts.periods.front().ownCoefficient.reset();
    EXPECT_FALSE(derived().humidityPercent());
    EXPECT_EQ(derived().derivation->problem, psychrometry::PsychrometryError::CoefficientOutOfRange);
}

TEST(QualityCode, whatThePersonJudgedStandsFirst) {
    // WMO BUFR table 0 33 020, as laid down for exchange in this project (codes 5–7 from memory).
    EXPECT_EQ(qualityCode(Origin::Corrected, Quality::Sound), 0);
    EXPECT_EQ(qualityCode(Origin::Observed, Quality::Doubtful), 2);
    EXPECT_EQ(qualityCode(Origin::Estimated, Quality::Erroneous), 3);
    EXPECT_EQ(qualityCode(Origin::Observed, Quality::NotJudged), 4);
    EXPECT_EQ(qualityCode(Origin::Corrected, Quality::NotJudged), 5);
    EXPECT_EQ(qualityCode(Origin::Estimated, Quality::NotJudged), 6);
    EXPECT_EQ(qualityCode(Origin::Missing, Quality::NotJudged), 7);
}

TEST(Uuid, textAndBack) {
    for (int i = 0; i < 1000; ++i) {
        const Uuid uuid = Uuid::random();
        EXPECT_EQ(Uuid::fromText(uuid.toText()), uuid);
        EXPECT_EQ(uuid.toText()[14], '7'); // RFC 9562: version
    }
    EXPECT_EQ(Uuid::fromSeed(1, 2), Uuid::fromSeed(1, 2));
    EXPECT_NE(Uuid::fromSeed(1, 2), Uuid::fromSeed(1, 3));
    EXPECT_FALSE(Uuid::fromText("123e4567-e89b-42d3-a456-42661417400"));
    EXPECT_FALSE(Uuid::fromText("123e4567xe89b-42d3-a456-426614174000"));
}

TEST(Uuid, eachIsGreaterThanTheOneBefore) {
    // RFC 9562, 5.7 and 6.2: the first 48 bits are the milliseconds since 1970.
    const auto before = std::chrono::system_clock::now();
    std::vector<Uuid> made(100'000);
    std::generate(made.begin(), made.end(), [] { return Uuid::random(); });
    EXPECT_TRUE(std::is_sorted(made.begin(), made.end()));
    EXPECT_EQ(std::adjacent_find(made.begin(), made.end()), made.end());
    std::uint64_t milliseconds = 0;
    for (std::size_t i = 0; i < 6; ++i) {
        milliseconds = milliseconds << 8U | made.front().bytes.at(i);
    }
    const auto told = std::chrono::milliseconds{milliseconds};
    EXPECT_LT(std::chrono::abs(told - before.time_since_epoch()), std::chrono::hours{1});
    EXPECT_EQ(made.front().bytes[8] >> 6U, 2) << "RFC 9562, 4.1: the variant";
}

TEST(Uuid, noTwoAlikeFromSeveralThreads) {
    std::vector<std::vector<Uuid>> made(4);
    std::vector<std::thread> threads;
    for (auto& some : made) {
        threads.emplace_back([&some] {
            for (int i = 0; i < 10'000; ++i) {
                some.push_back(Uuid::random());
            }
        });
    }
    for (std::thread& thread : threads) {
        thread.join();
    }
    std::set<Uuid> all;
    for (const auto& some : made) {
        all.insert(some.begin(), some.end());
    }
    EXPECT_EQ(all.size(), 40'000U);
}

TEST(WeatherSet, namesAndBack) {
    const auto set = WeatherSet::fromText("Fog; rime");
    ASSERT_TRUE(set);
    EXPECT_TRUE(set->has(Weather::Fog));
    EXPECT_TRUE(set->has(Weather::Rime));
    EXPECT_EQ(set->toText(), "fog;rime");
    EXPECT_EQ(WeatherSet::fromText("none")->toText(), "none");
    EXPECT_FALSE(WeatherSet::fromText("")) << "nothing noted is not the same as none";
    EXPECT_FALSE(WeatherSet::fromText("drizzly"));
}

} // namespace
