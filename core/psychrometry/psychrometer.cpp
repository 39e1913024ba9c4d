// SPDX-License-Identifier: GPL-3.0-or-later
// Symbols: t dry bulb °C, t_w wet bulb °C, p air pressure hPa, e vapour pressure hPa, e_w / e_i saturation
// over
//          water / ice hPa (e_s either, by the bulb), A coefficient per kelvin, f enhancement factor, U
//          relative humidity %.
// Source:  psychrometer equation, WMO-No. 8, Annex 4.B; A and f from core/psychrometry/exposure.h.
//            e = f e_s(t_w) − A p (t − t_w)        U = 100 e / (f e_w(t))
// Range:   bulbs −60…60 °C (ice to 0.01 °C), 300…1100 hPa, 0 < A ≤ 5e−3.
#include "core/psychrometry/psychrometer.h"

#include "core/psychrometry/ranges.h"

#include <algorithm>
#include <cmath>

namespace wickbook::psychrometry {

namespace {

/// The left side of the equation with everything that may go wrong already looked at.
double vapourPressureUnchecked(double dry, double wet, double saturation, double pressure,
                               const Coefficient& c) {
    return c.enhancement * saturation - c.perKelvin * pressure * (dry - wet);
}

/// e that the bulb would show minus the wanted e; or why there is none.
tl::expected<double, PsychrometryError> excessAt(double wet, units::Temperature dry, double wanted,
                                                 Surface bulb, units::Pressure pressure,
                                                 const CoefficientRule& rule) {
    const auto wetBulb = units::Temperature::fromCelsius(wet);
    const auto coefficient = rule.at(bulb, wetBulb, pressure);
    if (!coefficient) {
        return tl::unexpected(coefficient.error());
    }
    const auto saturation = saturationVapourPressure(wetBulb, bulb);
    if (!saturation) {
        return tl::unexpected(saturation.error());
    }
    return vapourPressureUnchecked(dry.celsius(), wet, saturation->hectopascals(), pressure.hectopascals(),
                                   *coefficient) -
           wanted;
}

} // namespace

tl::expected<units::VapourPressure, PsychrometryError> vapourPressure(units::Temperature dry,
                                                                      units::Temperature wet, Surface bulb,
                                                                      units::Pressure pressure,
                                                                      const Coefficient& coefficient) {
    if (!isInRange(dry)) {
        return tl::unexpected(PsychrometryError::TemperatureOutOfRange);
    }
    const auto saturation = saturationVapourPressure(wet, bulb);
    if (!saturation) {
        return tl::unexpected(saturation.error());
    }
    if (!isInRange(pressure)) {
        return tl::unexpected(PsychrometryError::PressureOutOfRange);
    }
    if (!isCoefficient(coefficient.perKelvin) || !isPositive(coefficient.enhancement)) {
        return tl::unexpected(PsychrometryError::CoefficientOutOfRange);
    }
    const double e = vapourPressureUnchecked(dry.celsius(), wet.celsius(), saturation->hectopascals(),
                                             pressure.hectopascals(), coefficient);
    if (e <= 0.0) {
        return tl::unexpected(PsychrometryError::NoVapour);
    }
    return units::VapourPressure::fromHectopascals(e);
}

tl::expected<units::RelativeHumidity, PsychrometryError>
relativeHumidity(units::VapourPressure vapourPressure, units::Temperature dry, double enhancement) {
    if (!isPositive(enhancement)) {
        return tl::unexpected(PsychrometryError::CoefficientOutOfRange);
    }
    if (!isPositive(vapourPressure.hectopascals())) {
        return tl::unexpected(PsychrometryError::NoVapour);
    }
    return saturationVapourPressure(dry, Surface::Water).map([&](units::VapourPressure saturation) {
        return units::RelativeHumidity::fromPercent(100.0 * vapourPressure.hectopascals() /
                                                    (enhancement * saturation.hectopascals()));
    });
}

tl::expected<units::VapourPressure, PsychrometryError>
vapourPressureOf(units::RelativeHumidity humidity, units::Temperature dry, double enhancement) {
    if (!isPositive(enhancement)) {
        return tl::unexpected(PsychrometryError::CoefficientOutOfRange);
    }
    // 0 % is a limit worth asking for: it bounds the depression.
    if (!isNotNegative(humidity.percent())) {
        return tl::unexpected(PsychrometryError::NoVapour);
    }
    return saturationVapourPressure(dry, Surface::Water).map([&](units::VapourPressure saturation) {
        return units::VapourPressure::fromHectopascals(humidity.fraction() * enhancement *
                                                       saturation.hectopascals());
    });
}

tl::expected<Coefficient, PsychrometryError> CoefficientRule::at(Surface bulb, units::Temperature wetBulb,
                                                                 units::Pressure pressure) const {
    if (!isInRange(wetBulb)) {
        return tl::unexpected(PsychrometryError::TemperatureOutOfRange);
    }
    if (!isInRange(pressure)) {
        return tl::unexpected(PsychrometryError::PressureOutOfRange);
    }
    Coefficient result = coefficientFor(exposure, bulb, wetBulb, pressure);
    const auto& given = bulb == Surface::Ice && perKelvinIce ? perKelvinIce : perKelvin;
    if (given) {
        result.perKelvin = *given;
        result.enhancement = 1.0;
    }
    if (relativeUncertainty) {
        result.relativeUncertainty = *relativeUncertainty;
    }
    if (!isCoefficient(result.perKelvin) || !isNotNegative(result.relativeUncertainty)) {
        return tl::unexpected(PsychrometryError::CoefficientOutOfRange);
    }
    return result;
}

tl::expected<units::Temperature, PsychrometryError> wetBulbFor(units::Temperature dry,
                                                               units::RelativeHumidity humidity, Surface bulb,
                                                               units::Pressure pressure,
                                                               const CoefficientRule& rule) {
    // 0 °C lies in every surface's range, and f does not depend on the bulb.
    const auto coefficient = rule.at(bulb, units::Temperature::fromCelsius(0.0), pressure);
    if (!coefficient) {
        return tl::unexpected(coefficient.error());
    }
    const auto wanted = vapourPressureOf(humidity, dry, coefficient->enhancement);
    if (!wanted) {
        return tl::unexpected(wanted.error());
    }
    const auto excess = [&](double wet) {
        return excessAt(wet, dry, wanted->hectopascals(), bulb, pressure, rule);
    };

    double low = kLowestCelsius;
    double high = bulb == Surface::Water ? kHighestCelsius : kTriplePointCelsius;
    const auto atLow = excess(low);
    const auto atHigh = excess(high);
    if (!atLow || !atHigh) {
        return tl::unexpected(atLow ? atHigh.error() : atLow.error());
    }
    // The last digits must not deny saturation at 60 °C its bulb of 60 °C.
    constexpr double kRounding = 1e-9; // hPa
    if (*atLow > kRounding || *atHigh < -kRounding) {
        return tl::unexpected(PsychrometryError::NoSolution);
    }

    // The excess rises with the bulb and curves upward, so Newton from above walks down to the root; where it
    // would leave the bracket, halving takes over.
    constexpr double kEnough = 1e-10; // kelvins
    constexpr int kMostSteps = 100;
    double wet = std::clamp(dry.celsius(), low, high);
    for (int i = 0; i < kMostSteps; ++i) {
        const auto here = excess(wet);
        const auto slope = saturationSlope(units::Temperature::fromCelsius(wet), bulb);
        if (!here || !slope) {
            return tl::unexpected(here ? slope.error() : here.error());
        }
        (*here > 0.0 ? high : low) = wet;
        double next = wet - *here / (coefficient->enhancement * *slope +
                                     coefficient->perKelvin * pressure.hectopascals());
        if (next < low || next > high) {
            next = low + (high - low) / 2.0;
        }
        if (std::abs(next - wet) < kEnough) {
            return units::Temperature::fromCelsius(next);
        }
        wet = next;
    }
    return units::Temperature::fromCelsius(wet);
}

tl::expected<units::Temperature, PsychrometryError> warmestDryBulbForIce(units::Pressure pressure,
                                                                         const CoefficientRule& rule) {
    const auto melting = units::Temperature::fromCelsius(0.0);
    const auto coefficient = rule.at(Surface::Ice, melting, pressure);
    if (!coefficient) {
        return tl::unexpected(coefficient.error());
    }
    return saturationVapourPressure(melting, Surface::Ice).map([&](units::VapourPressure saturation) {
        return units::Temperature::fromCelsius(coefficient->enhancement * saturation.hectopascals() /
                                               (coefficient->perKelvin * pressure.hectopascals()));
    });
}

tl::expected<units::TemperatureDifference, PsychrometryError> largestDepression(units::Temperature dry,
                                                                                Surface bulb,
                                                                                units::Pressure pressure,
                                                                                const CoefficientRule& rule) {
    return wetBulbFor(dry, units::RelativeHumidity::fromPercent(0.0), bulb, pressure, rule)
        .map([&](units::Temperature wet) { return dry - wet; });
}

} // namespace wickbook::psychrometry
