// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/decimal.h"
#include "core/units/temperature.h"

namespace wickbook::units {

enum class TemperatureUnit { Celsius, Fahrenheit };

/// What stood on a thermometer: digits as read and the unit of its scale. 61.5 °F stays 61.5 °F.
struct ReadTemperature {
    Decimal value;
    TemperatureUnit unit = TemperatureUnit::Celsius;

    [[nodiscard]] Temperature temperature() const {
        return unit == TemperatureUnit::Celsius ? Temperature::fromCelsius(value.toDouble())
                                                : Temperature::fromFahrenheit(value.toDouble());
    }
    bool operator==(const ReadTemperature&) const = default;
};

/// A length in scale degrees of the given unit as a temperature difference.
inline TemperatureDifference scaleDegrees(double degrees, TemperatureUnit unit) {
    return unit == TemperatureUnit::Celsius ? TemperatureDifference::fromKelvins(degrees)
                                            : TemperatureDifference::fromFahrenheitDegrees(degrees);
}

} // namespace wickbook::units
