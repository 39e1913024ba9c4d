// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

/// Chance that can be looked up: a number belongs to a seed, a purpose and a moment, not to how many were
/// drawn before. So a day's weather stays the same whichever span of days is asked for, and on every machine
/// (the distributions of the standard library differ between its makers).

namespace wickbook::sample {

class Noise {
public:
    explicit Noise(std::uint64_t seed) : seed_(seed) {}

    /// Evenly in (0, 1), neither end.
    [[nodiscard]] double uniform(std::uint64_t channel, std::int64_t index) const;
    /// Normal with mean 0 and standard deviation 1, by Box and Muller 1958.
    [[nodiscard]] double normal(std::uint64_t channel, std::int64_t index) const;
    [[nodiscard]] std::uint64_t bits(std::uint64_t channel, std::int64_t index) const;

private:
    std::uint64_t seed_;
};

} // namespace wickbook::sample
