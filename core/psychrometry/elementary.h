// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <bit>
#include <cstdint>

/// exp and ln for the ranges of this room, without a branch and without a call, so that a loop over a column
/// turns into vector instructions by itself; and since nothing but +, −, ×, ÷ in a written order is used, one
/// reading and a column of them give the same bits on every machine that rounds as IEEE 754 does.
/// Source: reduction to 2^k and the series of exp and artanh (NIST Digital Library of Mathematical Functions,
/// 4.2.19 and 4.6.4); ln 2 in two parts (W. J. Cody, W. Waite: Software Manual for the Elementary Functions,
/// 1980).

#if defined(__GNUC__)
#define WICKBOOK_INLINE [[gnu::always_inline]] inline
#else
#define WICKBOOK_INLINE inline
#endif

namespace wickbook::psychrometry {

inline constexpr double kLn2High = 0x1.62e42fefa0000p-1; ///< the first 40 bits: k × this is exact
inline constexpr double kLn2Low = 0x1.cf79abc9e3b3ap-40;

/// e^x for −700 < x < 700, within two units of the last place. Not a number stays not a number.
WICKBOOK_INLINE double exponential(double x) {
    constexpr double kPerLn2 = 0x1.71547652b82fep0; // 1 / ln 2
    constexpr double kRounder = 0x1.8p52; // adding it leaves the nearest whole number in the low bits
    const double shifted = x * kPerLn2 + kRounder;
    const double k = shifted - kRounder;
    const double r = (x - k * kLn2High) - k * kLn2Low; // |r| ≤ ln 2 / 2
    const double r2 = r * r;
    const double r4 = r2 * r2;
    const double r8 = r4 * r4;
    // 1/n! for n = 2…13; what is left out is under 5e-18.
    const double a = (1.0 / 2) + r * (1.0 / 6);
    const double b = (1.0 / 24) + r * (1.0 / 120);
    const double c = (1.0 / 720) + r * (1.0 / 5040);
    const double d = (1.0 / 40320) + r * (1.0 / 362880);
    const double e = (1.0 / 3628800) + r * (1.0 / 39916800);
    const double f = (1.0 / 479001600) + r * (1.0 / 6227020800.0);
    const double tail = (a + r2 * b) + r4 * (c + r2 * d) + r8 * (e + r2 * f);
    const double scale = std::bit_cast<double>((std::bit_cast<std::uint64_t>(shifted) + 1023U) << 52U);
    return (1.0 + (r + r2 * tail)) * scale;
}

/// (artanh z / z − 1) / s, s = z², up to s⁷: 1/3 + s/5 + … + s⁷/17.
WICKBOOK_INLINE double artanhSeries(double s) {
    const double s2 = s * s;
    const double s4 = s2 * s2;
    const double a = (1.0 / 3) + s * (1.0 / 5);
    const double b = (1.0 / 7) + s * (1.0 / 9);
    const double c = (1.0 / 11) + s * (1.0 / 13);
    const double d = (1.0 / 15) + s * (1.0 / 17);
    return (a + s2 * b) + s4 * (c + s2 * d);
}

/// ln x for a positive normal number, within two units of the last place of the larger of 1 and |ln x|.
/// Anything else gives no meaningful number: ask first.
WICKBOOK_INLINE double naturalLogarithm(double x) {
    constexpr std::uint64_t kOne = 0x3ff0000000000000U;
    constexpr std::uint64_t kRootOfHalf = 0x3fe6a09e667f3bcdU;
    constexpr std::uint64_t kTwoTo52 = 0x4330000000000000U;
    const std::uint64_t bits = std::bit_cast<std::uint64_t>(x);
    const std::uint64_t exponent = (bits + (kOne - kRootOfHalf)) >> 52U;        // k + 1023
    const double m = std::bit_cast<double>(bits - ((exponent - 1023U) << 52U)); // √½ ≤ m < √2
    const double k = std::bit_cast<double>(kTwoTo52 | exponent) - (0x1p52 + 1023.0);
    const double z = (m - 1.0) / (m + 1.0);
    const double s = z * z; // ≤ 0.0295
    const double s4 = (s * s) * (s * s);
    const double tail = artanhSeries(s) + (s4 * s4) * ((1.0 / 19) + s * (1.0 / 21)); // left out: under 2e-18
    const double twice = z + z;
    return k * kLn2High + (twice + (twice * s * tail + k * kLn2Low));
}

} // namespace wickbook::psychrometry
