// SPDX-License-Identifier: GPL-3.0-or-later
// The table of exposures, the standard atmosphere, other quantities, and the observer's printed table.
#include "core/psychrometry/humidity_table.h"
#include "core/psychrometry/quantities.h"
#include "core/psychrometry/standard_atmosphere.h"
#include "tests/core/psychrometry/reference_tools.h"

#include <limits>
#include <set>

using namespace wickbook::psychrometry;
using namespace wickbook::psychrometry::testing;
using wickbook::units::Elevation;
using wickbook::units::TemperatureUnit;
using wickbook::units::VapourPressure;

TEST(Exposures, NamesAndEntries) {
    std::set<std::string_view> names;
    for (const ExposureEntry& entry : exposureTable()) {
        EXPECT_TRUE(names.insert(entry.name).second);
        EXPECT_EQ(exposureFromName(entry.name), entry.exposure);
        EXPECT_EQ(entryOf(entry.exposure).name, entry.name);
        EXPECT_FALSE(entry.source.empty());
        if (entry.exposure != Exposure::Own) {
            // The ice coefficient is the water one times the ratio of the latent heats, 0.88 (2501 / 2835
            // kJ/kg, WMO- No. 8), within what the different sources' rounding and age make of it.
            EXPECT_NEAR(entry.iceCoefficient / entry.waterCoefficient, 0.88, 0.025) << entry.name;
        }
    }
    EXPECT_FALSE(exposureFromName("Whirled"));
    EXPECT_FALSE(exposureFromName(""));
}

// AMS Glossary: A = 6.60e-4 (1 + 0.00115 t_w); WMO-No. 8, Annex 4.B: 6.53e-4 (1 + 0.000944 t_w).
TEST(Exposures, CoefficientFollowsTheWetBulb) {
    const auto p = hectopascals(1000);
    EXPECT_NEAR(coefficientFor(Exposure::SlingUs, Surface::Water, celsius(20), p).perKelvin, 6.7518e-4, 1e-9);
    EXPECT_NEAR(coefficientFor(Exposure::Aspirated, Surface::Water, celsius(10), p).perKelvin, 6.5916e-4,
                1e-8);
    EXPECT_NEAR(coefficientFor(Exposure::Aspirated, Surface::Ice, celsius(-10), p).perKelvin, 5.75e-4, 1e-12);
    EXPECT_NEAR(coefficientFor(Exposure::Aspirated, Surface::Ice, celsius(-10), p).enhancement, 1.004676,
                1e-12);
    EXPECT_DOUBLE_EQ(coefficientFor(Exposure::Screen, Surface::Water, celsius(-10), p).enhancement, 1.0);
}

TEST(PsychrometryErrors, HaveStableNames) {
    EXPECT_EQ(name(PsychrometryError::NoVapour), "no-vapour");
    EXPECT_EQ(name(PsychrometryError::WickStateUnknown), "wick-state-unknown");
    EXPECT_EQ(name(PsychrometryError::WetAboveDry), "wet-above-dry");
    EXPECT_EQ(name(PsychrometryError::IceOverDry), "ice-over-dry");
}

// ICAO Doc 7488 (geopotential height): 1013.250 / 954.608 / 898.746 / 794.952 / 701.085 / 540.199 / 307.425
// hPa (from memory; the formula's rounded constants leave 0.02 hPa).
TEST(StandardAtmosphere, Icao) {
    const std::vector<std::pair<double, double>> levels{{0, 1013.250},   {500, 954.608},  {1000, 898.746},
                                                        {2000, 794.952}, {3000, 701.085}, {5000, 540.199},
                                                        {9000, 307.425}};
    for (const auto& [h, p] : levels) {
        EXPECT_NEAR(standardPressure(Elevation::fromMetres(h))->hectopascals(), p, 0.02) << h;
    }
    EXPECT_GT(standardPressure(Elevation::fromMetres(-400))->hectopascals(), 1060);
    for (const double h : {-501.0, 9001.0, std::numeric_limits<double>::quiet_NaN(),
                           std::numeric_limits<double>::infinity()}) {
        EXPECT_EQ(standardPressure(Elevation::fromMetres(h)).error(), PsychrometryError::PressureOutOfRange);
    }
}

// Saturated air: 17.3 g/m³ and 14.7 g/kg at 20 °C (1013.25 hPa), 4.85 g/m³ at 0 °C (textbook values, from
// memory).
TEST(Quantities, SaturatedAir) {
    const auto at = [](double t) { return VapourPressure::fromHectopascals(saturation(t, Surface::Water)); };
    EXPECT_NEAR(absoluteHumidity(at(20), celsius(20)), 17.3, 0.05);
    EXPECT_NEAR(absoluteHumidity(at(0), celsius(0)), 4.85, 0.01);
    EXPECT_NEAR(*mixingRatio(at(20), hectopascals(1013.25)), 14.7, 0.05);
    EXPECT_FALSE(mixingRatio(VapourPressure::fromHectopascals(10), hectopascals(10)));
    EXPECT_FALSE(mixingRatio(VapourPressure::fromHectopascals(10), hectopascals(std::nan(""))));
}

TEST(HumidityTable, CelsiusCellsAreTheDerivation) {
    const auto table = humidityTable({});
    ASSERT_TRUE(table);
    ASSERT_EQ(table->waterRows.size(), 46U); // −10…35
    ASSERT_EQ(table->depressions.size(), 25U);
    EXPECT_DOUBLE_EQ(table->depressions.back(), 12.0);
    int cells = 0;
    for (const auto* rows : {&table->waterRows, &table->iceRows}) {
        for (const auto& row : *rows) {
            ASSERT_EQ(row.cells.size(), table->depressions.size());
            for (std::size_t i = 0; i < row.cells.size(); ++i) {
                PairInput input;
                input.dry = celsius(row.dry);
                input.wet = celsius(row.dry - table->depressions[i]);
                input.wick = row.bulb == Surface::Ice ? WickState::Ice : WickState::Water;
                if (row.bulb == Surface::Ice && input.wet.celsius() > 0) {
                    EXPECT_FALSE(row.cells[i].humidity) << row.dry << " " << i;
                    continue;
                }
                const auto derived = derive(input);
                ASSERT_EQ(row.cells[i].humidity.has_value(), derived.relativeHumidity.has_value());
                ASSERT_EQ(row.cells[i].dewPoint.has_value(), derived.dewPoint.has_value());
                if (row.cells[i].humidity) {
                    ++cells;
                    EXPECT_NEAR(row.cells[i].humidity->percent(), derived.relativeHumidity->percent(), 1e-9);
                }
            }
        }
    }
    EXPECT_GT(cells, 700);
    // Above 10.2 °C a wick at sea level can't be ice: no rows for it.
    ASSERT_FALSE(table->iceRows.empty());
    EXPECT_DOUBLE_EQ(table->iceRows.front().dry, -10.0);
    EXPECT_DOUBLE_EQ(table->iceRows.back().dry, 10.0);
}

// United States Celsius-and-Fahrenheit sling tables (the rows of psychrometer_checks.csv): 60/5 → 73, 64/8 →
// 61, 68/3 → 85, 72/10 → 57, 76/6 → 75, 80/2 → 92, 84/9 → 66, 88/7 → 74 at 29.0 inHg. Tolerance as there.
TEST(HumidityTable, Fahrenheit) {
    HumidityTableRequest request;
    request.unit = TemperatureUnit::Fahrenheit;
    request.lowestDry = 20;
    request.highestDry = 100;
    request.highestDepression = 20;
    request.depressionStep = 1;
    request.pressure = hectopascals(982.05);
    request.coefficient.exposure = Exposure::SlingUs;
    const auto table = humidityTable(request);
    ASSERT_TRUE(table);
    ASSERT_EQ(table->waterRows.size(), 81U);
    const std::vector<std::tuple<std::size_t, std::size_t, double>> printed{
        {60, 5, 73}, {64, 8, 61}, {68, 3, 85}, {72, 10, 57},
        {76, 6, 75}, {80, 2, 92}, {84, 9, 66}, {88, 7, 74}};
    for (const auto& [dry, depression, rh] : printed) {
        const auto& row = table->waterRows.at(dry - 20);
        EXPECT_DOUBLE_EQ(row.dry, static_cast<double>(dry));
        EXPECT_NEAR(row.cells.at(depression).humidity->percent(), rh, 1.2) << dry;
    }
    // 32 °F dry, 0 °F depression: an ice bulb at exactly 0 °C is one.
    const auto& freezing = table->iceRows.at(12);
    EXPECT_DOUBLE_EQ(freezing.dry, 32.0);
    EXPECT_TRUE(freezing.cells.front().humidity);
}

TEST(HumidityTable, WhatCanNotBe) {
    const auto errorOf = [](auto change) {
        HumidityTableRequest request;
        change(request);
        const auto table = humidityTable(request);
        return table ? std::nullopt : std::optional{table.error()};
    };
    constexpr double kNan = std::numeric_limits<double>::quiet_NaN();
    for (const double bad : {0.0, -1.0, kNan, std::numeric_limits<double>::infinity(), 1e-9}) {
        EXPECT_EQ(errorOf([&](auto& r) { r.dryStep = bad; }), PsychrometryError::NoSolution) << bad;
        EXPECT_EQ(errorOf([&](auto& r) { r.depressionStep = bad; }), PsychrometryError::NoSolution) << bad;
    }
    EXPECT_EQ(errorOf([&](auto& r) { r.lowestDry = kNan; }), PsychrometryError::NoSolution);
    EXPECT_EQ(errorOf([](auto& r) { r.highestDepression = -1; }), PsychrometryError::NoSolution);
    EXPECT_EQ(errorOf([](auto& r) { r.highestDry = -11; }), PsychrometryError::NoSolution);
    EXPECT_EQ(errorOf([](auto& r) { r.highestDry = 61; }), PsychrometryError::TemperatureOutOfRange);
    EXPECT_EQ(errorOf([](auto& r) { r.pressure = hectopascals(200); }),
              PsychrometryError::PressureOutOfRange);
    EXPECT_EQ(errorOf([](auto& r) { r.coefficient.exposure = Exposure::Own; }),
              PsychrometryError::CoefficientOutOfRange);
    EXPECT_FALSE(errorOf([](auto& r) {
        r.dryStep = 0.1;
        r.depressionStep = 0.1;
        r.lowestDry = -10;
        r.highestDry = 39.9;
    }));
}
