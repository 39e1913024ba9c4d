// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/station_record.h"

#include <string>
#include <vector>

/// Invented stations for the tests of this room.

namespace wickbook::exchange::testing {

inline record::NewStation newStation(const std::string& zone, record::HourRule rule,
                                     std::vector<record::HourOfDay> hours = {std::chrono::hours{9},
                                                                             std::chrono::hours{21}}) {
    record::NewStation station;
    station.name = "Invented";
    station.elevation = units::Elevation::fromMetres(120);
    station.zone = zone;
    station.hours = std::move(hours);
    station.hourRule = rule;
    station.invented = true;
    return station;
}

inline record::StationRecord stationOf(const record::NewStation& station) {
    std::uint64_t counter = 0;
    return record::StationRecord{
        record::factsOf(station, [&counter] { return record::Uuid::fromSeed(7, ++counter); })};
}

inline record::StationRecord station(const std::string& zone = "Europe/London",
                                     record::HourRule rule = record::HourRule::Utc) {
    return stationOf(newStation(zone, rule));
}

inline units::ReadTemperature celsius(std::int64_t mantissa, int decimals = 1) {
    return {{mantissa, decimals}, units::TemperatureUnit::Celsius};
}
inline units::ReadTemperature fahrenheit(std::int64_t mantissa, int decimals = 1) {
    return {{mantissa, decimals}, units::TemperatureUnit::Fahrenheit};
}

} // namespace wickbook::exchange::testing
