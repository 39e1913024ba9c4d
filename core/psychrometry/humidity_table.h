// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/psychrometry/psychrometer.h"
#include "core/units/read_temperature.h"

#include <optional>
#include <vector>

/// The printed table of an observer: down the dry bulb, across the depression, in the cell RH and dew point.

namespace wickbook::psychrometry {

/// Reach of the table in °F, in whole degrees about as far as the one in °C.
inline constexpr double kTableLowestFahrenheit = 14;
inline constexpr double kTableHighestFahrenheit = 95;
inline constexpr double kTableDepressionFahrenheit = 22;

struct HumidityTableRequest {
    units::TemperatureUnit unit = units::TemperatureUnit::Celsius;
    double lowestDry = -10;        ///< in unit
    double highestDry = 35;        ///< in unit
    double dryStep = 1;            ///< in unit
    double highestDepression = 12; ///< in unit
    double depressionStep = 0.5;   ///< in unit
    units::Pressure pressure = units::Pressure::fromHectopascals(1013.25);
    CoefficientRule coefficient;
};

struct HumidityTableCell {
    std::optional<units::RelativeHumidity> humidity; ///< missing where no such air exists
    std::optional<units::Temperature> dewPoint;
};

struct HumidityTableRow {
    double dry = 0; ///< in the request's unit
    Surface bulb = Surface::Water;
    std::vector<HumidityTableCell> cells; ///< one per depression
};

struct HumidityTable {
    HumidityTableRequest request;
    std::vector<double> depressions; ///< in unit, 0, step, 2 step …
    std::vector<HumidityTableRow> waterRows;
    std::vector<HumidityTableRow> iceRows; ///< only wet bulbs at or below 0 °C have cells
};

/// Steps must be positive and the table no larger than 500 × 200 cells: error NoSolution otherwise.
tl::expected<HumidityTable, PsychrometryError> humidityTable(const HumidityTableRequest& request);

} // namespace wickbook::psychrometry
