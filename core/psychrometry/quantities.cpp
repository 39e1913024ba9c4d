// SPDX-License-Identifier: GPL-3.0-or-later
// Symbols: e vapour pressure hPa, T dry bulb K, p air pressure hPa, R gas constant, M_w / M_d molar mass of
//          water / dry air.
// Source:  gas law of water vapour. 216.67 g K/J = 1e5 / R_v hPa→Pa and kg→g, R_v = R / M_w = 461.52 J/(kg K)
//          (R = 8.314462618 J/(mol K), CODATA 2018; M_w = 18.01528 g/mol); 621.98 g/kg = 1000 M_w / M_d
//          (M_d = 28.9645 g/mol, as in the ICAO standard atmosphere).
// Range:   any e below p; the gases are taken as ideal.
#include "core/psychrometry/quantities.h"

namespace wickbook::psychrometry {

double absoluteHumidity(units::VapourPressure vapourPressure, units::Temperature dry) {
    return 216.67 * vapourPressure.hectopascals() / dry.kelvin();
}

tl::expected<double, PsychrometryError> mixingRatio(units::VapourPressure vapourPressure,
                                                    units::Pressure pressure) {
    const double dryAir = pressure.hectopascals() - vapourPressure.hectopascals();
    if (!(dryAir > 0.0)) {
        return tl::unexpected(PsychrometryError::PressureOutOfRange);
    }
    return 621.98 * vapourPressure.hectopascals() / dryAir;
}

} // namespace wickbook::psychrometry
