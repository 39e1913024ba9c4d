// SPDX-License-Identifier: GPL-3.0-or-later
// Symbols: t temperature °C, e_w / e_i saturation vapour pressure over water / ice hPa, f enhancement factor,
//          p air pressure hPa.
// Source:  Sonntag 1990, the equations and their inverses in sonntag.h. Magnus forms and f(p): WMO-No. 8,
// Annex
//          4.B.
// Range:   −60…60 °C over water, −60…0.01 °C over ice. Below −20 °C over supercooled water every formula is
//          extrapolated: at −50 °C this one stands 1.9 % above Murphy and Koop 2005.
#include "core/psychrometry/saturation.h"

#include "core/psychrometry/sonntag.h"

#include <algorithm>
#include <cmath>

namespace wickbook::psychrometry {

namespace {

/// e = 6.112 exp(slope t / (offset + t)).
struct Magnus {
    double slope;
    double offset;
};

constexpr double kMagnusAtZero = 6.112;
constexpr Magnus kMagnusWater{17.62, 243.12};
constexpr Magnus kMagnusIce{22.46, 272.62};

constexpr const Sonntag& sonntag(Surface surface) {
    return surface == Surface::Water ? kSonntagWater : kSonntagIce;
}

constexpr const Magnus& magnus(Surface surface) {
    return surface == Surface::Water ? kMagnusWater : kMagnusIce;
}

constexpr double highestCelsius(Surface surface) {
    return surface == Surface::Water ? kHighestCelsius : kTriplePointCelsius;
}

bool inRange(units::Temperature temperature, Surface surface) {
    // Written so that NaN falls outside.
    return temperature.celsius() >= kLowestCelsius && temperature.celsius() <= highestCelsius(surface);
}

LogSaturation logSaturation(double celsius, Surface surface) {
    return logSaturationAt(celsius, sonntag(surface));
}

tl::expected<units::Temperature, PsychrometryError> inverse(units::VapourPressure vapourPressure,
                                                            double enhancement, Surface surface) {
    if (!(enhancement > 0.0) || !std::isfinite(enhancement)) {
        return tl::unexpected(PsychrometryError::CoefficientOutOfRange);
    }
    if (!(vapourPressure.hectopascals() > 0.0)) {
        return tl::unexpected(PsychrometryError::NoVapour);
    }
    // The last digits lost in e / f must not push the ends of the range out of it.
    constexpr double kRounding = 1e-12;
    const double logPressure = naturalLogarithm(vapourPressure.hectopascals() / enhancement);
    const double highest = highestCelsius(surface);
    if (logPressure < logSaturation(kLowestCelsius, surface).value - kRounding) {
        return tl::unexpected(PsychrometryError::BelowRange);
    }
    if (logPressure > logSaturation(highest, surface).value + kRounding) {
        return tl::unexpected(PsychrometryError::AboveRange);
    }
    const double root =
        surface == Surface::Water ? waterTemperatureOf(logPressure) : iceTemperatureOf(logPressure);
    return units::Temperature::fromCelsius(std::clamp(root, kLowestCelsius, highest));
}

} // namespace

tl::expected<units::VapourPressure, PsychrometryError>
saturationVapourPressure(units::Temperature temperature, Surface surface) {
    if (!inRange(temperature, surface)) {
        return tl::unexpected(PsychrometryError::TemperatureOutOfRange);
    }
    return units::VapourPressure::fromHectopascals(
        exponential(logSaturation(temperature.celsius(), surface).value));
}

tl::expected<double, PsychrometryError> saturationSlope(units::Temperature temperature, Surface surface) {
    if (!inRange(temperature, surface)) {
        return tl::unexpected(PsychrometryError::TemperatureOutOfRange);
    }
    const LogSaturation at = logSaturation(temperature.celsius(), surface);
    return exponential(at.value) * at.slope;
}

tl::expected<units::Temperature, PsychrometryError> dewPoint(units::VapourPressure vapourPressure,
                                                             double enhancement) {
    return inverse(vapourPressure, enhancement, Surface::Water);
}

tl::expected<units::Temperature, PsychrometryError> frostPoint(units::VapourPressure vapourPressure,
                                                               double enhancement) {
    return inverse(vapourPressure, enhancement, Surface::Ice);
}

double enhancementFactor(units::Pressure pressure) {
    return 1.0016 + 3.15e-6 * pressure.hectopascals() - 0.074 / pressure.hectopascals();
}

tl::expected<units::VapourPressure, PsychrometryError> magnusVapourPressure(units::Temperature temperature,
                                                                            Surface surface) {
    const double t = temperature.celsius();
    if (!(t >= kLowestCelsius && t <= kHighestCelsius)) {
        return tl::unexpected(PsychrometryError::TemperatureOutOfRange);
    }
    const Magnus& k = magnus(surface);
    return units::VapourPressure::fromHectopascals(kMagnusAtZero * std::exp(k.slope * t / (k.offset + t)));
}

} // namespace wickbook::psychrometry
