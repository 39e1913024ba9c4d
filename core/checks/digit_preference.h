// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/finding.h"
#include "core/checks/limits.h"
#include "core/record/derived_reading.h"

#include <array>
#include <cstdint>
#include <optional>
#include <span>

/// Whether an observer favours some final digits (0 and 5, mostly). A private note to the observer, never a
/// mark on a reading: it is asked for a series, not for a reading.

namespace wickbook::checks {

enum class Bulb { Dry, Wet };

/// How often each final digit was written. Only readings to tenths of a Celsius degree have one that tells of
/// the observer: a scale of whole or half degrees, and °F, leave no choice of ten.
class FinalDigits {
public:
    void add(const record::Observation& values, Bulb bulb);

    [[nodiscard]] std::int64_t total() const { return total_; }
    /// Share of the digits 0 and 5, of 1; a fifth where none is favoured. 0 without readings.
    [[nodiscard]] double shareOfRound() const;
    /// The most frequent digit, the smallest of equals, and its share of 1.
    [[nodiscard]] int mostFrequent() const;
    [[nodiscard]] double shareOf(int digit) const;
    /// Against equal shares, 9 degrees of freedom.
    [[nodiscard]] double chiSquare() const;

private:
    std::array<std::int64_t, 10> counts_{};
    std::int64_t total_ = 0;
};

/// Chi-square of the final digits of the readings written to tenths of a Celsius degree, against equal
/// shares. None with fewer than 500 such readings, or below the 1 % point of 9 degrees of freedom (the shares
/// of digits being equal is common practice, no source). Arguments: bulb "dry" / "wet"; count; chi-square;
/// digit, the most frequent; share of it, %.
std::optional<Finding> digitPreference(std::span<const record::DerivedReading> series, Bulb bulb,
                                       const Limits& limits);
/// The same of digits counted already.
std::optional<Finding> digitPreference(const FinalDigits& digits, Bulb bulb, const Limits& limits);

} // namespace wickbook::checks
