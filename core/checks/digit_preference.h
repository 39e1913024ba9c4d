// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/finding.h"
#include "core/checks/limits.h"
#include "core/record/derived_reading.h"

#include <optional>
#include <span>

/// Whether an observer favours some final digits (0 and 5, mostly). A private note to the observer, never a
/// mark on a reading: it is asked for a series, not for a reading.

namespace wickbook::checks {

enum class Bulb { Dry, Wet };

/// Chi-square of the final digits of the readings written to tenths of a Celsius degree, against equal
/// shares. None with fewer than 500 such readings, or below the 1 % point of 9 degrees of freedom (the shares
/// of digits being equal is common practice, no source). Arguments: bulb "dry" / "wet"; count; chi-square;
/// digit, the most frequent; share of it, %.
std::optional<Finding> digitPreference(std::span<const record::DerivedReading> series, Bulb bulb,
                                       const Limits& limits);

} // namespace wickbook::checks
