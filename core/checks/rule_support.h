// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/rule.h"
#include "core/units/binary_fraction.h"

#include <initializer_list>

/// What several rules need to ask of a reading. No state, no ownership; nothing here judges.

namespace wickbook::checks {

using units::kBinaryFraction;

/// Scale steps up to here count as tenths, K: a fifth of a degree, half a Fahrenheit degree.
inline constexpr double kTenthsUpTo = 0.3;

/// Hours from one reading to the other; positive where the second is later.
double hoursBetween(const record::DerivedReading& earlier, const record::DerivedReading& later);

/// Calendar month (1…12) the reading is filed under.
unsigned monthOf(const record::DerivedReading& reading);

std::optional<double> dryCelsius(const record::DerivedReading& reading);
std::optional<double> wetCelsius(const record::DerivedReading& reading);

/// The coarser scale step of the pair, K.
double coarserStep(const record::DerivedReading& reading);

/// Fit to compare others with: a person has not judged it bad, it is no estimate, and its pair can be.
bool isSoundNeighbour(const record::DerivedReading& reading);
/// The same for the dry bulb alone: a pair that lacks only the wick's state still has a dry bulb.
bool hasSoundDryBulb(const record::DerivedReading& reading);

bool hasAnyWeather(const record::DerivedReading& reading, std::initializer_list<record::Weather> kinds);
/// Fog, mist, precipitation, dew, rime: what makes a pair equal without a fault.
bool hasWetWeather(const record::DerivedReading& reading);

/// The same pair of digits as read.
bool samePairRead(const record::DerivedReading& a, const record::DerivedReading& b);

/// Summer half-year at the latitude in force: April to September north, October to March south (our
/// division of the year; the source names only summer and winter).
bool isSummer(const record::DerivedReading& reading, double latitude);

/// "summer" limits and the like: reads the four gross limits of temperature in force.
struct GrossLimits {
    double doubtfulLow, doubtfulHigh, erroneousLow, erroneousHigh;
    /// Severity of a value, none within.
    [[nodiscard]] std::optional<Severity> judge(double value) const;
    /// The limit that the value passed (the gravest).
    [[nodiscard]] double passed(double value) const;
};
GrossLimits grossTemperatureLimits(const ReadingContext& context);

} // namespace wickbook::checks
