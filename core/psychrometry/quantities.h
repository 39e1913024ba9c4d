// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/psychrometry/psychrometry_error.h"
#include "core/units/pressure.h"
#include "core/units/temperature.h"

#include <tl/expected.hpp>

/// Other measures of the same vapour. Constants: 216.67 g K/J = 100 / R_v with R_v = 461.52 J/(kg K),
/// 621.98 g/kg = 1000 × ratio of the molar masses of water and dry air.

namespace wickbook::psychrometry {

/// Absolute humidity, g/m³: 216.67 e / T (e hPa, T K).
double absoluteHumidity(units::VapourPressure vapourPressure, units::Temperature dry);

/// Mixing ratio, g/kg: 621.98 e / (p − e). Error PressureOutOfRange where e ≥ p.
tl::expected<double, PsychrometryError> mixingRatio(units::VapourPressure vapourPressure,
                                                    units::Pressure pressure);

} // namespace wickbook::psychrometry
