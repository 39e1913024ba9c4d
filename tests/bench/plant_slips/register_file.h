// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/derived_reading.h"
#include "core/record/station_record.h"
#include "core/sample/sample_station.h"

#include <algorithm>
#include <fstream>
#include <optional>
#include <sstream>
#include <string>
#include <vector>

/// A register kept as CSV with the columns time_utc, dry_bulb_C, wet_bulb_C, station_pressure_hPa: what the
/// measuring of likely causes reads. Hours are taken as they stand, local time = UTC + offset.

namespace wickbook::bench {

struct Register {
    record::StationRecord station;
    std::vector<record::DerivedReading> readings; ///< time order
};

namespace detail {

/// Córdoba mean time, which the register of the measuring kept: UTC − 4 h 17 min.
inline constexpr std::chrono::minutes kOffset{-(4 * 60 + 17)};

inline record::StationRecord makeStation() {
    record::NewStation station;
    station.name = "Register";
    station.position = {-32.9, -60.7};
    station.elevation = units::Elevation::fromMetres(35.7);
    station.zone = "UTC";
    station.exposure = psychrometry::Exposure::Screen;
    station.lowestMark = {-30, 0};
    station.highestMark = {60, 0};
    std::uint64_t counter = 0;
    return record::StationRecord{
        record::factsOf(station, [&counter] { return record::Uuid::fromSeed(1, ++counter); })};
}

inline std::optional<units::ReadTemperature> temperature(const std::string& cell) {
    const auto value = units::parseDecimal(cell);
    return value ? std::optional{units::ReadTemperature{*value, units::TemperatureUnit::Celsius}}
                 : std::nullopt;
}

} // namespace detail

/// A hundred years of the invented station, without the slips made for pictures.
inline Register sampleRegister() {
    sample::SamplePlan plan;
    plan.lastDay = record::StationDate{date::local_days{date::year{2024} / date::February / 29}};
    plan.years = 100;
    plan.slips = false;
    const sample::SampleStation sample = sample::makeSample(plan);
    Register result{record::StationRecord{sample.facts}, {}};
    for (const record::StoredObservation& stored : sample::storedObservations(sample)) {
        result.readings.push_back(record::deriveReading(stored, result.station));
    }
    return result;
}

/// None where the file can't be read.
inline std::optional<Register> readRegister(const std::string& path) {
    std::ifstream file(path);
    std::string line;
    if (!file || !std::getline(file, line)) {
        return std::nullopt;
    }
    Register result{detail::makeStation(), {}};
    while (std::getline(file, line)) {
        std::istringstream cells{line};
        std::string time;
        std::string dry;
        std::string wet;
        std::string pressure;
        std::getline(cells, time, ',');
        std::getline(cells, dry, ',');
        std::getline(cells, wet, ',');
        std::getline(cells, pressure, ',');
        const auto written = record::parseTime(time);
        if (!written) {
            continue;
        }
        record::Observation values;
        values.instant = record::Instant{written->local.time_since_epoch()};
        values.offset = detail::kOffset;
        const auto local = record::LocalTime{(values.instant + detail::kOffset).time_since_epoch()};
        const auto day = std::chrono::floor<date::days>(local);
        values.hour = record::ObservingHour{day, std::chrono::floor<std::chrono::minutes>(local - day)};
        values.dry.value = detail::temperature(dry);
        values.wet.value = detail::temperature(wet);
        if (const auto hectopascals = units::parseDecimal(pressure)) {
            values.pressure = *hectopascals;
        }
        result.readings.push_back(record::deriveReading(values, result.station));
    }
    std::stable_sort(result.readings.begin(), result.readings.end(),
                     [](const auto& a, const auto& b) { return a.values().instant < b.values().instant; });
    return result;
}

} // namespace wickbook::bench
