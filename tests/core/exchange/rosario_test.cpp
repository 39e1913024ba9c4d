// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_plan.h"
#include "core/record/derived_reading.h"
#include "tests/core/exchange/stations.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>

/// A real register of 7,746 readings, Rosario de Santa Fe 1886 to 1900 (Copernicus C3S data rescue), merged
/// from files of the Station Exchange Format. The data stay outside the project: WICKBOOK_DATASETS names
/// their folder.

namespace wickbook::exchange {
namespace {

std::filesystem::path rosario() {
    const char* folder = std::getenv("WICKBOOK_DATASETS");
    return std::filesystem::path(folder == nullptr ? WICKBOOK_DATASETS : folder) /
           "rosario_1886_1900_dry_wet_pressure.csv";
}

TEST(Rosario, ComesInWholeWithoutAMapping) {
    if (!std::filesystem::exists(rosario())) {
        GTEST_SKIP() << "The Rosario register is not here; set WICKBOOK_DATASETS to the folder that holds "
                        "rosario_1886_1900_dry_wet_pressure.csv.";
    }
    // Local mean time as the data set used it is 4 h 17 min behind UTC; the zone of Córdoba was 4:16:48
    // behind, so readings lie 12 s off their hours. Hours: 07, 08, 14, 18, 21 in turn over the years.
    auto facts = testing::newStation("America/Argentina/Cordoba", record::HourRule::Clock,
                                     {std::chrono::hours{8}, std::chrono::hours{18}});
    facts.elevation = units::Elevation::fromMetres(35.7);
    const auto station = testing::stationOf(facts);

    std::ifstream input(rosario(), std::ios::binary);
    const auto plan = planCsvImport(input, "rosario.csv", station, {});
    ASSERT_TRUE(plan);
    std::string columns;
    for (const auto& column : plan->columns) {
        columns += (column.field ? std::string(fieldName(*column.field)) : "-") + " ";
    }
    EXPECT_EQ(columns, "time dry wet pressure - - ");
    RecordProperty("planned", static_cast<int>(plan->observations.size()));
    RecordProperty("rejected", static_cast<int>(plan->rejected.size()));
    EXPECT_EQ(plan->lines, 7746);
    EXPECT_EQ(plan->observations.size(), 7746U);
    EXPECT_EQ(plan->rejected.size(), 0U);

    const auto count = [&plan](auto wanted) {
        return std::count_if(plan->observations.begin(), plan->observations.end(),
                             [&wanted](const PlannedObservation& line) { return wanted(line.values); });
    };
    // Counted in the file itself: lines without a wet bulb, without a pressure.
    EXPECT_EQ(count([](const record::Observation& o) { return o.dry.given() && !o.wet.given(); }), 18);
    EXPECT_EQ(count([](const record::Observation& o) { return !o.pressure; }), 19);
    EXPECT_EQ(count([](const record::Observation& o) { return !o.dry.given(); }), 0);
    const auto& first = plan->observations.front().values;
    EXPECT_EQ(first.dry.value, testing::celsius(243));
    EXPECT_EQ(first.pressure, (units::Decimal{10'051, 1}));
    EXPECT_EQ(record::instantText(first.instant), "1886-03-18T12:17:00Z");
    ASSERT_TRUE(first.hour);
    EXPECT_EQ(record::hourText(first.hour->hour), "08:00");
}

} // namespace
} // namespace wickbook::exchange
