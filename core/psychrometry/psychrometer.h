// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/psychrometry/exposure.h"
#include "core/units/humidity.h"

/// The psychrometer equation and its inverse, on values already corrected.
///   e = f e_s(t_w) − A p (t − t_w)        U = 100 e / (f e_w(t))
/// e_s over water for a water bulb, over ice for an ice bulb; U always over water.

namespace wickbook::psychrometry {

/// e from the pair. Errors: TemperatureOutOfRange, PressureOutOfRange, CoefficientOutOfRange, NoVapour.
/// Takes the numbers as they are: whether a wet bulb above the dry one can be is judged in derive().
tl::expected<units::VapourPressure, PsychrometryError> vapourPressure(units::Temperature dry,
                                                                      units::Temperature wet, Surface bulb,
                                                                      units::Pressure pressure,
                                                                      const Coefficient& coefficient);

/// U from e and the dry bulb; may exceed 100 where e does.
tl::expected<units::RelativeHumidity, PsychrometryError>
relativeHumidity(units::VapourPressure vapourPressure, units::Temperature dry, double enhancement = 1.0);

/// e = U f e_w(t) / 100.
tl::expected<units::VapourPressure, PsychrometryError>
vapourPressureOf(units::RelativeHumidity humidity, units::Temperature dry, double enhancement = 1.0);

/// Gives A and f at a wet-bulb temperature; an exposure's coefficient may depend on it.
struct CoefficientRule {
    Exposure exposure = Exposure::Whirled;
    std::optional<double> perKelvin;           ///< a number given by hand or fitted: f is 1
    std::optional<double> perKelvinIce;        ///< own coefficient for ice where it differs
    std::optional<double> relativeUncertainty; ///< replaces the table's u(A)/A

    /// Error CoefficientOutOfRange where Own has no number, or the number can't be one.
    [[nodiscard]] tl::expected<Coefficient, PsychrometryError> at(Surface bulb, units::Temperature wetBulb,
                                                                  units::Pressure pressure) const;
};

/// The wet bulb that air of this humidity gives: the inverse of vapourPressure. U in 0…100 or a little above.
/// Errors as vapourPressure, and NoSolution where no bulb in −60…60 °C (ice: up to 0.01 °C) belongs to it.
tl::expected<units::Temperature, PsychrometryError> wetBulbFor(units::Temperature dry,
                                                               units::RelativeHumidity humidity, Surface bulb,
                                                               units::Pressure pressure,
                                                               const CoefficientRule& rule);

/// The warmest dry bulb at which a wick can still be ice, in air without vapour: t = e_i(0) f / (A_i p).
tl::expected<units::Temperature, PsychrometryError> warmestDryBulbForIce(units::Pressure pressure,
                                                                         const CoefficientRule& rule);

/// The depression at which the vapour pressure reaches 0, water bulb: past it a pair can't be.
tl::expected<units::TemperatureDifference, PsychrometryError> largestDepression(units::Temperature dry,
                                                                                Surface bulb,
                                                                                units::Pressure pressure,
                                                                                const CoefficientRule& rule);

} // namespace wickbook::psychrometry
