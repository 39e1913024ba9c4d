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
    const double s = z * z; // ≤ 0.0153: what the series leaves out is under 2e-18
    const double twice = z + z;
    const double logKelvin = kLogOfZeroCelsius + (twice + twice * s * artanhSeries(s));
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

/// Temperature, °C, at which e_w has this logarithm, −60…60 °C: the polynomial of degree 17 that meets the
/// inverse at the Chebyshev points of −60.5…60.5 °C, within 2e-12 K of the root everywhere between. A
/// polynomial, and not the steps of an iteration, since its terms don't wait for one another.
WICKBOOK_INLINE double waterTemperatureOf(double logPressure) {
    const double x = logPressure - 0.65;
    const double x2 = x * x;
    const double x4 = x2 * x2;
    const double x8 = x4 * x4;
    const double a = -14.989496660555292 + x * 12.130236068223946;
    const double b = 0.63519288391218969 + x * 0.035783590544762296;
    const double c = 0.0020927049318296933 + x * 0.00012355693880586423;
    const double d = 7.2008112680861267e-6 + x * 4.0491257261835125e-7;
    const double e = 2.1274767344231529e-8 + x * 9.7911073420767663e-10;
    const double f = 3.2077817215087213e-11 - x * 3.3247532694589963e-13;
    const double g = -2.1039004400004425e-13 - x * 2.625492090548321e-14;
    const double h = -2.0639598157143642e-15 - x * 1.8945475345535653e-16;
    const double i = -2.7703053907630495e-17 - x * 1.9178366886928599e-18;
    const double low = (a + x2 * b) + x4 * (c + x2 * d);
    const double high = (e + x2 * f) + x4 * (g + x2 * h);
    return (low + x8 * high) + (x8 * x8) * i;
}

/// The same over ice, −60…0.01 °C, of degree 12 over −60.5…0.5 °C: within 3e-12 K.
WICKBOOK_INLINE double iceTemperatureOf(double logPressure) {
    const double x = logPressure + 1.375;
    const double x2 = x * x;
    const double x4 = x2 * x2;
    const double x8 = x4 * x4;
    const double a = -33.852853410439672 + x * 9.3074208635265242;
    const double b = 0.3616509368427748 + x * 0.01440725130872958;
    const double c = 0.00060258371270105029 + x * 2.6846829991659772e-5;
    const double d = 1.2757683207770102e-6 + x * 6.407877744591254e-8;
    const double e = 3.3575370947397241e-9 + x * 1.8051106079691731e-10;
    const double f = 9.9702852669360752e-12 + x * 6.3061593252309048e-13;
    const double low = (a + x2 * b) + x4 * (c + x2 * d);
    return low + x8 * ((e + x2 * f) + x4 * 3.6089853219705742e-14);
}

} // namespace wickbook::psychrometry
