// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/psychrometry/elementary.h"

/// Sonntag's two equations and their inverses, written once for one reading and for whole columns.
///
/// Symbols: T temperature K, t = T − 273.15 °C, e_w / e_i saturation vapour pressure over water / ice hPa.
/// Source:  D. Sonntag, Important new values of the physical constants of 1986, vapour pressure formulations
///          based on the ITS-90, and psychrometer formulae. Z. Meteorol. 70 (1990) 340–344, the water and the
///          ice formula; pressures in hPa.
///            ln e_w = −6096.9385/T + 16.635794 − 2.711193e−2 T + 1.673952e−5 T² + 2.433502 ln T
///            ln e_i = −6024.5282/T + 24.7219 + 1.0613868e−2 T − 1.3198825e−5 T² − 0.49382577 ln T
///          (24.7219 is 29.32707 − ln 100 of the form in Pa; it gives 6.1115 hPa over ice at 0 °C.)
/// Range:   −60…60 °C. Callers ask for the range first; outside, the numbers mean nothing.

namespace wickbook::psychrometry {

inline constexpr double kZeroCelsius = 273.15; ///< K, definition of the Celsius scale

/// ln e = a/T + b + c T + d T² + g ln T.
struct Sonntag {
    double a;
    double b;
    double c;
    double d;
    double g;
};

inline constexpr Sonntag kSonntagWater{-6096.9385, 16.635794, -2.711193e-2, 1.673952e-5, 2.433502};
inline constexpr Sonntag kSonntagIce{-6024.5282, 24.7219, 1.0613868e-2, -1.3198825e-5, -0.49382577};

/// ln e and its derivative per kelvin.
struct LogSaturation {
    double value;
    double slope;
};

/// ln T is taken about 273.15 K, ln T = ln 273.15 + 2 artanh((T − 273.15) / (T + 273.15)), so that one
/// division gives 1/T too: both = 1 / (T (T + 273.15)).
WICKBOOK_INLINE LogSaturation logSaturationWith(double celsius, double both, const Sonntag& k) {
    constexpr double kLogOfZeroCelsius = 0x1.670a95eb0dc7fp2; // ln 273.15
    const double kelvin = celsius + kZeroCelsius;
    const double reciprocal = both * (kelvin + kZeroCelsius); // 1/T
    const double z = celsius * (both * kelvin);
    const double s = z * z; // ≤ 0.0153
    const double s2 = s * s;
    const double s4 = s2 * s2;
    // What is left out is under 2e-18.
    const double a = (1.0 / 3) + s * (1.0 / 5);
    const double b = (1.0 / 7) + s * (1.0 / 9);
    const double c = (1.0 / 11) + s * (1.0 / 13);
    const double d = (1.0 / 15) + s * (1.0 / 17);
    const double tail = (a + s2 * b) + s4 * (c + s2 * d);
    const double twice = z + z;
    const double logKelvin = kLogOfZeroCelsius + (twice + twice * s * tail);
    const double linear = k.a * reciprocal + k.b;
    const double value = (linear + kelvin * (k.c + k.d * kelvin)) + k.g * logKelvin;
    const double slope = (k.c + (k.d + k.d) * kelvin) + reciprocal * (k.g - k.a * reciprocal);
    return {value, slope};
}

/// T (T + 273.15), what logSaturationWith wants the reciprocal of.
WICKBOOK_INLINE double kelvinProduct(double celsius) {
    const double kelvin = celsius + kZeroCelsius;
    return kelvin * (kelvin + kZeroCelsius);
}

WICKBOOK_INLINE LogSaturation logSaturationAt(double celsius, const Sonntag& k) {
    return logSaturationWith(celsius, 1.0 / kelvinProduct(celsius), k);
}

/// Temperature, °C, at which e_w has this logarithm. Within 1e-11 K of the root for −60…60 °C: a polynomial
/// (interpolation at Chebyshev points over −60.5…60.5 °C, within 4e-6 K) and one step of Newton's, which
/// squares what is left (ln e is nearly straight: an error δ leaves δ²/T).
WICKBOOK_INLINE double waterTemperatureOf(double logPressure) {
    const double x = logPressure - 1.0;
    const double x2 = x * x;
    const double x4 = x2 * x2;
    const double a = -10.664538896114796 + x * 12.58838423648792;
    const double b = 0.67436256500921082 + x * 0.038874791172548674;
    const double c = 0.0023216601977029115 + x * 0.00013912002444541534;
    const double d = 8.3642313972265127e-6 + x * 5.1370367010500482e-7;
    const double start = (a + x2 * b) + x4 * ((c + x2 * d) + x4 * 2.2456877626929858e-8);
    const LogSaturation at = logSaturationAt(start, kSonntagWater);
    return start - (at.value - logPressure) / at.slope;
}

/// The same over ice, −60…0.01 °C; the polynomial over −60.5…0.5 °C is within 5e-6 K.
WICKBOOK_INLINE double iceTemperatureOf(double logPressure) {
    const double x = logPressure + 1.0;
    const double x2 = x * x;
    const double a = -30.310938727164755 + x * 9.5848729686937786;
    const double b = 0.37837576117036409 + x * 0.015345110361202053;
    const double c = 0.00065766577477989028 + x * 3.1073164242882579e-5;
    const double start = (a + x2 * b) + x2 * x2 * (c + x2 * 1.3406846971221448e-6);
    const LogSaturation at = logSaturationAt(start, kSonntagIce);
    return start - (at.value - logPressure) / at.slope;
}

} // namespace wickbook::psychrometry
