// SPDX-License-Identifier: GPL-3.0-or-later
// Symbols: t temperature °C, T = t + 273.15 K, e_w / e_i saturation vapour pressure over water / ice hPa,
//          f enhancement factor, p air pressure hPa.
// Source:  D. Sonntag, Important new values of the physical constants of 1986, vapour pressure formulations
//          based on the ITS-90, and psychrometer formulae. Z. Meteorol. 70 (1990) 340–344, the water and the
//          ice formula; pressures in hPa.
//            ln e_w = −6096.9385/T + 16.635794 − 2.711193e−2 T + 1.673952e−5 T² + 2.433502 ln T
//            ln e_i = −6024.5282/T + 24.7219 + 1.0613868e−2 T − 1.3198825e−5 T² − 0.49382577 ln T
//          (24.7219 is 29.32707 − ln 100 of the form in Pa; it gives 6.1115 hPa over ice at 0 °C.)
//          Magnus forms and f(p): WMO-No. 8, Annex 4.B.
// Range:   −60…60 °C over water, −60…0.01 °C over ice. Below −20 °C over supercooled water every formula is
//          extrapolated: at −50 °C this one stands 1.9 % above Murphy and Koop 2005.
#include "core/psychrometry/saturation.h"

#include <algorithm>
#include <cmath>

namespace wickbook::psychrometry {

namespace {

/// ln e = a/T + b + c T + d T² + g ln T.
struct Sonntag {
    double a;
    double b;
    double c;
    double d;
    double g;
};

constexpr Sonntag kSonntagWater{-6096.9385, 16.635794, -2.711193e-2, 1.673952e-5, 2.433502};
constexpr Sonntag kSonntagIce{-6024.5282, 24.7219, 1.0613868e-2, -1.3198825e-5, -0.49382577};

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

double logSaturation(double celsius, Surface surface) {
    const Sonntag& k = sonntag(surface);
    const double kelvin = units::Temperature::fromCelsius(celsius).kelvin();
    return k.a / kelvin + k.b + k.c * kelvin + k.d * kelvin * kelvin + k.g * std::log(kelvin);
}

/// d ln e / dT, per kelvin.
double logSaturationSlope(double celsius, Surface surface) {
    const Sonntag& k = sonntag(surface);
    const double kelvin = units::Temperature::fromCelsius(celsius).kelvin();
    return -k.a / (kelvin * kelvin) + k.c + 2.0 * k.d * kelvin + k.g / kelvin;
}

/// Root of ln e_s(t) = logPressure between the two bounds. ln e_s is nearly straight, so Newton from the
/// Magnus inverse needs two or three steps; the shrinking bracket makes it safe whatever the start.
double solve(double logPressure, Surface surface, double low, double high) {
    constexpr double kEnough = 1e-10; // kelvins
    constexpr int kMostSteps = 60;
    const Magnus& start = magnus(surface);
    const double ratio = logPressure - std::log(kMagnusAtZero);
    double t = std::clamp(start.offset * ratio / (start.slope - ratio), low, high);
    for (int i = 0; i < kMostSteps; ++i) {
        const double excess = logSaturation(t, surface) - logPressure;
        (excess > 0 ? high : low) = t;
        double next = t - excess / logSaturationSlope(t, surface);
        if (next < low || next > high) {
            next = low + (high - low) / 2.0;
        }
        if (std::abs(next - t) < kEnough) {
            return next;
        }
        t = next;
    }
    return t;
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
    const double logPressure = std::log(vapourPressure.hectopascals() / enhancement);
    const double highest = highestCelsius(surface);
    if (logPressure < logSaturation(kLowestCelsius, surface) - kRounding) {
        return tl::unexpected(PsychrometryError::BelowRange);
    }
    if (logPressure > logSaturation(highest, surface) + kRounding) {
        return tl::unexpected(PsychrometryError::AboveRange);
    }
    return units::Temperature::fromCelsius(solve(logPressure, surface, kLowestCelsius, highest));
}

} // namespace

tl::expected<units::VapourPressure, PsychrometryError>
saturationVapourPressure(units::Temperature temperature, Surface surface) {
    if (!inRange(temperature, surface)) {
        return tl::unexpected(PsychrometryError::TemperatureOutOfRange);
    }
    return units::VapourPressure::fromHectopascals(std::exp(logSaturation(temperature.celsius(), surface)));
}

tl::expected<double, PsychrometryError> saturationSlope(units::Temperature temperature, Surface surface) {
    if (!inRange(temperature, surface)) {
        return tl::unexpected(PsychrometryError::TemperatureOutOfRange);
    }
    const double t = temperature.celsius();
    return std::exp(logSaturation(t, surface)) * logSaturationSlope(t, surface);
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
