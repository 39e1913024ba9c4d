// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/observation.h"
#include "core/record/station_record.h"
#include "core/sample/noise.h"
#include "core/sample/sample_weather.h"

#include <optional>

namespace wickbook::sample {

/// Channels of chance beside the weather's own; each purpose has one, so that none moves another.
enum class Chance : std::uint64_t {
    Minutes = 100,
    DryError,
    WetError,
    Supercooled,
    WeatherWords,
    WeatherNoted,
    PressureRead,
    Extremes,
    Missed,
    Extra
};

/// Reads the invented station's instruments as a person would. Borrows all three; they must outlive it.
class SampleObserver {
public:
    SampleObserver(const record::StationRecord& station, const SampleWeather& weather, const Noise& noise)
        : station_(station), weather_(weather), noise_(noise) {}

    /// A full reading near a moment; hour: the nominal hour it is kept under, none for an extra reading.
    [[nodiscard]] record::Observation read(record::Instant about,
                                           const std::optional<record::ObservingHour>& hour) const;
    /// A reading that was not made, with its reason.
    [[nodiscard]] record::Observation missed(record::Instant due, const record::ObservingHour& hour,
                                             const std::string& reason) const;
    /// "A" as a rule, "B" one week in nine.
    [[nodiscard]] static std::string initialsAt(record::Instant instant);
    /// What stands on a thermometer's scale where the truth is this, in tenths.
    [[nodiscard]] record::BulbReading onScale(const record::Thermometer* thermometer, double celsius,
                                              record::Instant instant) const;

private:
    [[nodiscard]] double chance(Chance purpose, record::Instant instant) const;
    void placeAt(record::Observation& values, record::Instant instant,
                 const std::optional<record::ObservingHour>& hour) const;
    void readBulbs(record::Observation& values, const Air& air, record::Instant about) const;
    void noteWeather(record::Observation& values, const Air& air, record::Instant about) const;
    void careForWick(record::Observation& values) const;

    const record::StationRecord& station_;
    const SampleWeather& weather_;
    const Noise& noise_;
};

} // namespace wickbook::sample
