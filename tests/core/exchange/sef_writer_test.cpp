// SPDX-License-Identifier: GPL-3.0-or-later
// The Station Exchange Format, version 1.0.0 (Copernicus Climate Change Service): the form of a file as the
// format's description has it, and there and back.
#include "core/exchange/sef_join.h"
#include "core/exchange/sef_writer.h"
#include "tests/core/exchange/stations.h"

#include <gmock/gmock.h>

namespace wickbook::exchange {
namespace {

using testing::celsius;
using ::testing::ElementsAre;
using testing::fahrenheit;
using ::testing::HasSubstr;

record::StoredObservation read(int day, int hour, const units::ReadTemperature& dry,
                               const units::ReadTemperature& wet) {
    record::StoredObservation stored;
    stored.values.instant = record::Instant{date::sys_days{date::year{1926} / 3 / day}} +
                            std::chrono::hours{hour} + std::chrono::minutes{4} + std::chrono::seconds{30};
    stored.values.dry.value = dry;
    stored.values.wet.value = wet;
    return stored;
}

std::vector<record::StoredObservation> register1926() {
    std::vector<record::StoredObservation> all{
        read(1, 9, celsius(164, 1), celsius(143, 1)), read(1, 21, fahrenheit(615, 1), fahrenheit(580, 1)),
        read(2, 9, celsius(-20, 1), celsius(-25, 1)), read(2, 21, celsius(101, 1), celsius(99, 1)),
        read(3, 9, celsius(102, 1), celsius(98, 1)),  read(3, 21, celsius(103, 1), celsius(97, 1))};
    all[0].values.pressure = units::Decimal{10012, 1};
    all[2].values.wick = record::WickState::Ice;
    all[3].values.quality = record::Quality::Doubtful;
    all[4].values.quality = record::Quality::Erroneous;
    all[5].values.origin = record::Origin::Estimated;
    return all;
}

std::vector<std::string> names(const std::vector<SefOutFile>& files) {
    std::vector<std::string> all;
    for (const SefOutFile& file : files) {
        all.push_back(file.name + " " + std::to_string(file.observations));
    }
    return all;
}

TEST(SefWriter, OneVariableAFileInTheFormatsOwnForm) {
    const auto files = sefFiles(testing::station(), register1926(), "hill");
    EXPECT_THAT(names(files),
                ElementsAre("hill_19260301-19260303_ta.tsv 5", "hill_19260301-19260303_tb.tsv 4",
                            "hill_19260302-19260302_ibt.tsv 1", "hill_19260301-19260301_p.tsv 1"));
    const std::string& dry = files.front().bytes;
    EXPECT_TRUE(dry.starts_with("SEF\t1.0.0\nID\thill\n"));
    EXPECT_THAT(dry, HasSubstr("\nVbl\tta\nStat\tpoint\nUnits\tC\n"));
    EXPECT_THAT(
        dry,
        HasSubstr("\nYear\tMonth\tDay\tHour\tMinute\tPeriod\tValue\tMeta\n1926\t3\t1\t9\t4\t0\t16.4\t\n"));
    // 61.5 °F is 16.39 °C (a degree Fahrenheit is 5/9 K, the ice point 32 °F).
    EXPECT_THAT(dry, HasSubstr("1926\t3\t1\t21\t4\t0\t16.39\torig=61.5F\n"));
    EXPECT_THAT(dry, HasSubstr("10.1\tqc=doubtful\n"));
    EXPECT_THAT(dry, HasSubstr("10.2\tqc=erroneous\n"));
    EXPECT_EQ(dry.find("10.3"), std::string::npos); // an estimate was not observed
    EXPECT_THAT(files.back().bytes, HasSubstr("\nUnits\thPa\n"));
}

TEST(SefWriter, ThereAndBackAreTheSameBytes) {
    const auto station = testing::station();
    const auto files = sefFiles(station, register1926(), "hill");
    std::vector<SefFile> readBack;
    for (const SefOutFile& file : files) {
        auto one = readSef(file.bytes);
        ASSERT_TRUE(one) << file.name;
        EXPECT_TRUE(one->rejected.empty());
        one->name = file.name;
        readBack.push_back(std::move(*one));
    }
    const auto plan = joinSef(readBack, station);
    ASSERT_TRUE(plan);
    EXPECT_TRUE(plan->rejected.empty());
    ASSERT_EQ(plan->observations.size(), 5U);
    std::vector<record::StoredObservation> again;
    for (const PlannedObservation& planned : plan->observations) {
        again.push_back({});
        again.back().values = planned.values;
    }
    EXPECT_EQ(again[1].values.dry.value, fahrenheit(615, 1));
    EXPECT_EQ(again[2].values.wick, record::WickState::Ice);
    EXPECT_EQ(again[3].values.quality, record::Quality::Doubtful);
    EXPECT_EQ(again[4].values.quality, record::Quality::Erroneous);
    EXPECT_EQ(again[0].values.pressure, (units::Decimal{10012, 1}));
    const auto twice = sefFiles(station, again, "hill");
    ASSERT_EQ(twice.size(), files.size());
    for (std::size_t i = 0; i < files.size(); ++i) {
        EXPECT_EQ(twice[i].bytes, files[i].bytes);
        EXPECT_EQ(twice[i].name, files[i].name);
    }
}

TEST(SefWriter, AStationThatMovedHasASetForEachPlace) {
    record::StationFacts facts = testing::station().facts();
    record::PeriodChange moved;
    moved.id = record::Uuid::fromSeed(3, 3);
    moved.from = record::Instant{date::sys_days{date::year{1926} / 3 / 2}};
    moved.position = record::Position{51.0, -2.5};
    facts.periods.push_back(moved);
    auto readings = register1926();
    readings[2].values.wick = record::WickState::Water;
    const auto files = sefFiles(record::StationRecord{facts}, readings, "hill");
    EXPECT_THAT(names(files),
                ElementsAre("hill_19260301-19260301_ta.tsv 2", "hill_19260301-19260301_tb.tsv 2",
                            "hill_19260301-19260301_p.tsv 1", "hill_19260302-19260303_ta.tsv 3",
                            "hill_19260302-19260303_tb.tsv 3"));
    EXPECT_THAT(files.back().bytes, HasSubstr("\nLat\t51\nLon\t-2.5\n"));
}

TEST(SefWriter, NothingReadIsNoFile) {
    EXPECT_TRUE(sefFiles(testing::station(), {}, "hill").empty());
}

} // namespace
} // namespace wickbook::exchange
