// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/derived_reading.h"

#include <optional>
#include <span>
#include <vector>

namespace wickbook::climate {

/// Robust description of the station's own sound readings of one calendar month and hour, over the years.
/// Called "station average, n years", not a normal. Quantiles are of type 7 (quantile.h), means are over the
/// readings alike; years are those of the dates the readings are filed under.
struct StationAverage {
    int years = 0;
    int readings = 0;
    double meanHumidity = 0;                                                                  ///< %
    double meanDewPoint = 0;                                                                  ///< °C
    double lowerQuartileTemperature = 0, medianTemperature = 0, upperQuartileTemperature = 0; ///< °C
    double lowerQuartileDewPoint = 0, medianDewPoint = 0, upperQuartileDewPoint = 0;          ///< °C
    double lowerQuartileHumidity = 0, medianHumidity = 0, upperQuartileHumidity = 0;          ///< %
};

/// From readings of the same calendar month and hour in any years (the caller has chosen them and left out
/// what is set aside). Only readings with a dew point take part, so that every number is of the same ones.
/// None with fewer than the years asked for, or without a reading. Readings are borrowed for the call.
std::optional<StationAverage> stationAverage(std::span<const record::DerivedReading* const> readings,
                                             int fewestYears);

} // namespace wickbook::climate
