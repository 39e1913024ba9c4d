// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/psychrometry/psychrometry_error.h"
#include "core/units/elevation.h"
#include "core/units/pressure.h"

#include <tl/expected.hpp>

namespace wickbook::psychrometry {

inline constexpr double kStandardSeaLevelHectopascals = 1013.25;

/// ICAO standard atmosphere (Doc 7488), troposphere: p = 1013.25 (1 − 2.25577e-5 h)^5.25588, −500…9000 m.
/// Error PressureOutOfRange outside.
tl::expected<units::Pressure, PsychrometryError> standardPressure(units::Elevation elevation);

} // namespace wickbook::psychrometry
