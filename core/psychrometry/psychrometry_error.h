// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace wickbook::psychrometry {

/// Why a quantity has no value. A value that can't be had is an error, never NaN.
enum class PsychrometryError {
    TemperatureOutOfRange, ///< a temperature outside −60…60 °C, or ice asked for above its melting point
    PressureOutOfRange,    ///< pressure outside 300…1100 hPa
    CoefficientOutOfRange, ///< a coefficient that is not positive or above 5e-3 per kelvin
    WickStateUnknown,      ///< wet bulb at or near 0 °C and below, and neither water nor ice given
    WetAboveDry,           ///< a water bulb above the dry bulb by more than reading error
    IceOverDry,            ///< an ice bulb above the dry bulb with more than 100 % over water
    IceAboveZero,          ///< an ice bulb above 0 °C by more than a scale step
    NoVapour,              ///< the equation gives a vapour pressure of 0 or less
    BelowRange,            ///< the dew or frost point lies below −60 °C
    AboveRange,            ///< the dew point lies above 60 °C
    NoSolution             ///< no wet bulb in range belongs to this humidity
};

/// Stable short name for data and tests, such as "no-vapour".
std::string_view name(PsychrometryError error);

} // namespace wickbook::psychrometry
