// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/psychrometry/derive.h"
#include "core/record/revision.h"
#include "core/record/station_record.h"

#include <optional>

/// An observation with what follows from it: corrected values, pressure and coefficient in force, humidity.
/// Worked out afresh each time, so a correction found later re-derives the years it covers.

namespace wickbook::record {

enum class PressureSource { Read, StationMean, Elevation };
std::string_view pressureSourceName(PressureSource source); ///< "read", "station-mean", "elevation"

/// One bulb as used.
struct UsedBulb {
    std::optional<units::Temperature> temperature; ///< corrected; missing where nothing usable was read
    units::TemperatureDifference correction = units::TemperatureDifference::fromKelvins(0);
    units::TemperatureDifference step = units::TemperatureDifference::fromKelvins(0.1); ///< scale step, K
    bool offScale = false; ///< read outside the engraved scale, or below it
};

struct DerivedReading {
    StoredObservation stored;
    UsedBulb dry;
    UsedBulb wet;
    units::Pressure pressure = units::Pressure::fromHectopascals(1013.25);
    PressureSource pressureSource = PressureSource::Elevation;
    psychrometry::PairInput input;                      ///< what derive() was given, where there was a pair
    std::optional<psychrometry::Derivation> derivation; ///< none without a usable pair

    [[nodiscard]] const Observation& values() const { return stored.values; }
    [[nodiscard]] std::optional<double> humidityPercent() const;
    [[nodiscard]] std::optional<double> dewPointCelsius() const;
    [[nodiscard]] std::optional<double> vapourPressureHectopascals() const;
};

/// The coefficient of a period: its exposure's, or the station's own where the exposure is "own".
psychrometry::CoefficientRule coefficientRule(const StationPeriod& period);

/// Applies the corrections in force in the thermometer's unit, takes the pressure read, else the station's
/// mean, else the standard atmosphere at the elevation in force, the coefficient of the exposure in force,
/// and derives. A bulb off the scale, below it or absent leaves no derivation.
DerivedReading deriveReading(StoredObservation stored, const StationRecord& station);

/// The same for an entry not yet stored.
DerivedReading deriveReading(const Observation& observation, const StationRecord& station);

} // namespace wickbook::record
