// SPDX-License-Identifier: GPL-3.0-or-later
// Symbols: h height above mean sea level m, p air pressure hPa.
// Source:  ICAO Doc 7488, Manual of the ICAO Standard Atmosphere, the layer below 11 km:
//            p = 1013.25 (1 − 2.25577e−5 h)^5.25588
// Range:   −500…9000 m, which keeps p within 300…1100 hPa.
#include "core/psychrometry/standard_atmosphere.h"

#include <cmath>

namespace wickbook::psychrometry {

tl::expected<units::Pressure, PsychrometryError> standardPressure(units::Elevation elevation) {
    constexpr double kLowestMetres = -500.0;
    constexpr double kHighestMetres = 9000.0;
    const double h = elevation.metres();
    if (!(h >= kLowestMetres && h <= kHighestMetres)) {
        return tl::unexpected(PsychrometryError::PressureOutOfRange);
    }
    return units::Pressure::fromHectopascals(kStandardSeaLevelHectopascals *
                                             std::pow(1.0 - 2.25577e-5 * h, 5.25588));
}

} // namespace wickbook::psychrometry
