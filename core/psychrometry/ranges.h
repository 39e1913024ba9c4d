// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/psychrometry/saturation.h"

#include <cmath>

/// The one place for the bounds that every function of this room refuses to step over, so that a value that
/// is not finite ends as an error and never as NaN. Every test is written so that NaN fails it.

namespace wickbook::psychrometry {

inline constexpr double kLowestHectopascals = 300.0;
inline constexpr double kHighestHectopascals = 1100.0;
inline constexpr double kHighestCoefficient = 5e-3; ///< per kelvin; four times that of still air

inline bool isInRange(units::Temperature temperature) {
    return temperature.celsius() >= kLowestCelsius && temperature.celsius() <= kHighestCelsius;
}

inline bool isInRange(units::Pressure pressure) {
    return pressure.hectopascals() >= kLowestHectopascals && pressure.hectopascals() <= kHighestHectopascals;
}

inline bool isCoefficient(double perKelvin) {
    return perKelvin > 0.0 && perKelvin <= kHighestCoefficient;
}

inline bool isPositive(double value) {
    return value > 0.0 && std::isfinite(value);
}

inline bool isNotNegative(double value) {
    return value >= 0.0 && std::isfinite(value);
}

} // namespace wickbook::psychrometry
