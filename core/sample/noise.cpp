// SPDX-License-Identifier: GPL-3.0-or-later
// Symbols: z state of the mixer.
// Source:  the output function of SplitMix64 (Steele, Lea and Flood 2014, Fast splittable pseudorandom number
//          generators), applied twice to seed, channel and index.
// Range:   any.
#include "core/sample/noise.h"

#include <cmath>
#include <numbers>

namespace wickbook::sample {

namespace {

std::uint64_t mix(std::uint64_t z) {
    z += 0x9E3779B97F4A7C15ULL;
    z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9ULL;
    z = (z ^ (z >> 27U)) * 0x94D049BB133111EBULL;
    return z ^ (z >> 31U);
}

} // namespace

std::uint64_t Noise::bits(std::uint64_t channel, std::int64_t index) const {
    return mix(mix(seed_ ^ (channel * 0xD1342543DE82EF95ULL)) + static_cast<std::uint64_t>(index));
}

double Noise::uniform(std::uint64_t channel, std::int64_t index) const {
    return (static_cast<double>(bits(channel, index) >> 11U) + 0.5) * 0x1.0p-53;
}

double Noise::normal(std::uint64_t channel, std::int64_t index) const {
    // Each deviate takes two places of its own channel, so neighbours share nothing.
    const double radius = std::sqrt(-2.0 * std::log(uniform(channel, 2 * index)));
    return radius * std::cos(2.0 * std::numbers::pi * uniform(channel, 2 * index + 1));
}

} // namespace wickbook::sample
