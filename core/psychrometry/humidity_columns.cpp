// SPDX-License-Identifier: GPL-3.0-or-later
// Symbols: t dry bulb °C, t_w wet bulb °C, p air pressure hPa, e vapour pressure hPa, e_w / e_i saturation
// over
//          water / ice hPa (e_s either, by the bulb), A coefficient per kelvin, f enhancement factor, U
//          relative humidity %, t_d dew point °C.
// Source:  psychrometer equation, WMO-No. 8, Annex 4.B; saturation after Sonntag 1990 (sonntag.h).
//            e = f e_s(t_w) − A p (t − t_w)      U = 100 e / (f e_w(t))      e_w(t_d) = e / f
// Range:   bulbs and dew point −60…60 °C, an ice bulb to 0.01 °C.
//
// Compiled with options of its own (core/CMakeLists.txt): the compiler turns the loop over a block of rows
// into vector instructions, × and + are never contracted, and every width gives the same bits.
#include "core/psychrometry/humidity_columns.h"

#include "core/psychrometry/sonntag.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <limits>

namespace wickbook::psychrometry {

namespace {

constexpr double kMissing = std::numeric_limits<double>::quiet_NaN();
/// ln e_w at −60 and 60 °C, with the last digits lost in e / f: the ends of the range belong to it.
constexpr double kLowestLogarithm = -3.9381409908756923 - 1e-12;
constexpr double kHighestLogarithm = 5.2956971148386772 + 1e-12;

/// All bits of a double, or none of them.
using Mask = std::uint64_t;

WICKBOOK_INLINE Mask maskOf(bool condition) {
    return condition ? ~Mask{0} : Mask{0};
}

/// One where all bits of the mask are set, the other where none is.
WICKBOOK_INLINE double chosen(Mask mask, double one, double other) {
    const auto first = std::bit_cast<Mask>(one);
    const auto second = std::bit_cast<Mask>(other);
    return std::bit_cast<double>((mask & (first ^ second)) ^ second);
}

// One row goes through three steps, each without a branch: what is missing is worked with too and dropped at
// the end. For a column each step is a loop of its own: its chain of dependent operations is short, so that
// the processor works on several rows at a time.

struct Reduced {
    double vapourPressure;
    double reduced; ///< e / f
    double relativeHumidity;
};

/// The constants for the bulb, taken bit by bit, so that rows of water and of ice go through together.
WICKBOOK_INLINE Sonntag blended(Mask ice) {
    return {chosen(ice, kSonntagIce.a, kSonntagWater.a), chosen(ice, kSonntagIce.b, kSonntagWater.b),
            chosen(ice, kSonntagIce.c, kSonntagWater.c), chosen(ice, kSonntagIce.d, kSonntagWater.d),
            chosen(ice, kSonntagIce.g, kSonntagWater.g)};
}

WICKBOOK_INLINE Reduced throughEquation(double dry, double wet, const Sonntag& bulb, double pressure,
                                        double perKelvin, double enhancement) {
    const double ofWet = kelvinProduct(wet);
    const double ofDry = kelvinProduct(dry);
    const double shared = 1.0 / (ofWet * ofDry); // divisions are dear
    const double saturationAtWet = exponential(logSaturationWith(wet, shared * ofDry, bulb).value);
    const double saturationAtDry = exponential(logSaturationWith(dry, shared * ofWet, kSonntagWater).value);
    const double vapour = enhancement * saturationAtWet - perKelvin * pressure * (dry - wet);
    const double reduced = vapour / enhancement;
    // Equal bulbs give 100 to the last bit.
    return {vapour, reduced, 100.0 * vapour / (enhancement * saturationAtDry)};
}

WICKBOOK_INLINE double dewPointOf(double logarithm) {
    const double root = waterTemperatureOf(logarithm);
    const double notBelow = root < kLowestCelsius ? kLowestCelsius : root;
    return notBelow > kHighestCelsius ? kHighestCelsius : notBelow;
}

/// Zero where the bulbs and the vapour pressure can be had, else not a number: added, it keeps or drops.
/// Written so that not a number fails every test. & and not &&: no jump.
WICKBOOK_INLINE double keepPair(double dry, double wet, Mask ice, double vapour) {
    const double highest = chosen(ice, kTriplePointCelsius, kHighestCelsius);
    return bool((dry >= kLowestCelsius) & (dry <= kHighestCelsius) & (wet >= kLowestCelsius) &
                (wet <= highest) & (vapour > 0.0))
               ? 0.0
               : kMissing;
}

WICKBOOK_INLINE double keepDewPoint(double logarithm) {
    return bool((logarithm >= kLowestLogarithm) & (logarithm <= kHighestLogarithm)) ? 0.0 : kMissing;
}

/// Rows taken together. A whole number of any vector, and small enough to stay beside the processor.
constexpr std::size_t kBlock = 64;

/// The columns of one block do not overlap; __restrict says so to the compiler.
WICKBOOK_INLINE void workRows(const double* __restrict dry, const double* __restrict wet,
                              const Mask* __restrict ice, const double* __restrict pressure,
                              const double* __restrict perKelvin, const double* __restrict enhancement,
                              double* __restrict vapourPressure, double* __restrict relativeHumidity,
                              double* __restrict dewPoint) {
    alignas(64) double reduced[kBlock];
    alignas(64) double keep[kBlock];
    for (std::size_t i = 0; i < kBlock; ++i) {
        const Reduced result =
            throughEquation(dry[i], wet[i], blended(ice[i]), pressure[i], perKelvin[i], enhancement[i]);
        vapourPressure[i] = result.vapourPressure;
        reduced[i] = result.reduced;
        relativeHumidity[i] = result.relativeHumidity;
    }
    for (std::size_t i = 0; i < kBlock; ++i) {
        keep[i] = keepPair(dry[i], wet[i], ice[i], vapourPressure[i]);
        vapourPressure[i] += keep[i];
        relativeHumidity[i] += keep[i];
        reduced[i] = naturalLogarithm(reduced[i]);
    }
    for (std::size_t i = 0; i < kBlock; ++i) {
        dewPoint[i] = dewPointOf(reduced[i]) + (keep[i] + keepDewPoint(reduced[i]));
    }
}

void workBaseline(const double* dry, const double* wet, const Mask* ice, const double* pressure,
                  const double* perKelvin, const double* enhancement, double* vapourPressure,
                  double* relativeHumidity, double* dewPoint) {
    workRows(dry, wet, ice, pressure, perKelvin, enhancement, vapourPressure, relativeHumidity, dewPoint);
}

#if defined(__x86_64__) && defined(__GNUC__)
__attribute__((target("avx2"))) void workWide(const double* dry, const double* wet, const Mask* ice,
                                              const double* pressure, const double* perKelvin,
                                              const double* enhancement, double* vapourPressure,
                                              double* relativeHumidity, double* dewPoint) {
    workRows(dry, wet, ice, pressure, perKelvin, enhancement, vapourPressure, relativeHumidity, dewPoint);
}
bool hasWide() {
    return __builtin_cpu_supports("avx2");
}
#else
constexpr auto workWide = workBaseline;
bool hasWide() {
    return false;
}
#endif

} // namespace

EquationHumidity humidityOf(const EquationPair& pair) {
    const Mask ice = maskOf(pair.bulb == Surface::Ice);
    const Reduced result =
        throughEquation(pair.dry, pair.wet, pair.bulb == Surface::Ice ? kSonntagIce : kSonntagWater,
                        pair.pressure, pair.perKelvin, pair.enhancement);
    const double keep = keepPair(pair.dry, pair.wet, ice, result.vapourPressure);
    const double logarithm = naturalLogarithm(result.reduced);
    return {result.vapourPressure + keep, result.relativeHumidity + keep,
            dewPointOf(logarithm) + (keep + keepDewPoint(logarithm))};
}

void humidityOf(const PairColumns& pairs, const HumidityColumns& results, Width width) {
    const auto work = width == Width::Widest && hasWide() ? workWide : workBaseline;
    const std::size_t rows = pairs.dry.size();
    std::array<Mask, kBlock> ice{};
    const auto iceFrom = [&](std::size_t from, std::size_t count) {
        for (std::size_t i = 0; i < count; ++i) {
            ice[i] = maskOf(pairs.bulb[from + i] == Surface::Ice);
        }
    };
    std::size_t from = 0;
    for (; from + kBlock <= rows; from += kBlock) {
        iceFrom(from, kBlock);
        work(pairs.dry.data() + from, pairs.wet.data() + from, ice.data(), pairs.pressure.data() + from,
             pairs.perKelvin.data() + from, pairs.enhancement.data() + from,
             results.vapourPressure.data() + from, results.relativeHumidity.data() + from,
             results.dewPoint.data() + from);
    }
    if (from == rows) {
        return;
    }
    // What is left over goes through a whole block too, filled up with rows that nobody asks for.
    const std::size_t count = rows - from;
    std::array<std::array<double, kBlock>, 8> rest{};
    const auto take = [&](std::span<const double> column, std::size_t at) {
        std::copy_n(column.data() + from, count, rest[at].data());
        return rest[at].data();
    };
    iceFrom(from, count);
    work(take(pairs.dry, 0), take(pairs.wet, 1), ice.data(), take(pairs.pressure, 2),
         take(pairs.perKelvin, 3), take(pairs.enhancement, 4), rest[5].data(), rest[6].data(),
         rest[7].data());
    std::copy_n(rest[5].data(), count, results.vapourPressure.data() + from);
    std::copy_n(rest[6].data(), count, results.relativeHumidity.data() + from);
    std::copy_n(rest[7].data(), count, results.dewPoint.data() + from);
}

} // namespace wickbook::psychrometry
