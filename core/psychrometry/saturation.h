// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/psychrometry/psychrometry_error.h"
#include "core/units/pressure.h"
#include "core/units/temperature.h"

#include <tl/expected.hpp>

/// Saturation vapour pressure after Sonntag 1990, and its exact inverses.
/// Range −60…60 °C over water (supercooled below 0 °C, extrapolated below −20 °C), −60…0.01 °C over ice.
/// Largest error against IAPWS-95 / IAPWS R14-08: 0.007 % over water 0.5…50 °C, 0.10 % −20…0 °C,
/// 0.05 % over ice −50…0 °C.

namespace wickbook::psychrometry {

/// The surface the vapour is in equilibrium with.
enum class Surface { Water, Ice };

inline constexpr double kLowestCelsius = -60.0;
inline constexpr double kHighestCelsius = 60.0;
/// Triple point of water, °C: ice in equilibrium with its vapour is no warmer.
inline constexpr double kTriplePointCelsius = 0.01;

/// e_w or e_i, hPa. Error TemperatureOutOfRange outside the range above or for a value that is not finite.
tl::expected<units::VapourPressure, PsychrometryError>
saturationVapourPressure(units::Temperature temperature, Surface surface);

/// d e_s / d t in hPa per kelvin, the analytic derivative of the same equation.
tl::expected<double, PsychrometryError> saturationSlope(units::Temperature temperature, Surface surface);

/// Dew point: temperature at which e = enhancement × e_w. Within 0.001 K of the root everywhere in range.
/// Errors: NoVapour for e ≤ 0, BelowRange, AboveRange.
tl::expected<units::Temperature, PsychrometryError> dewPoint(units::VapourPressure vapourPressure,
                                                             double enhancement = 1.0);

/// Frost point: the same over ice. AboveRange where it would lie above 0.01 °C (there is no frost then).
tl::expected<units::Temperature, PsychrometryError> frostPoint(units::VapourPressure vapourPressure,
                                                               double enhancement = 1.0);

/// Enhancement factor f(p) = 1.0016 + 3.15e-6 p − 0.074 / p (WMO-No. 8, Annex 4.B), p in hPa.
double enhancementFactor(units::Pressure pressure);

/// WMO-No. 8 Annex 4.B Magnus forms, for comparison and WMO-conforming output; no range check beyond −60…60.
tl::expected<units::VapourPressure, PsychrometryError> magnusVapourPressure(units::Temperature temperature,
                                                                            Surface surface);

} // namespace wickbook::psychrometry
