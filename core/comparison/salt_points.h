// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/instrument_checks.h"

#include <array>
#include <optional>
#include <vector>

/// Relative humidity over saturated salt solutions: it checks an electronic sensor, never a psychrometer.
/// Source: CRC Handbook of Chemistry and Physics, constant-humidity solutions, 25 °C, ± 2 % RH.

namespace wickbook::comparison {

struct SaltPoint {
    record::Salt salt;
    double humidity; ///< % RH at 25 °C
    bool isToxic;    ///< lithium chloride: not for everyone's kitchen
};
const std::array<SaltPoint, record::kSalts>& saltPoints();
inline constexpr double kSaltTolerance = 2.0; ///< % RH
/// The table is of 25 °C; within these it still holds to its ± 2 % (from memory), °C.
inline constexpr double kLowestSaltTemperature = 20.0;
inline constexpr double kHighestSaltTemperature = 30.0;

struct SaltResult {
    record::SaltReading reading;
    double published = 0; ///< % RH
    double off = 0;       ///< sensor − published, % RH
    bool within = false;  ///< no further off than the table's own tolerance
};

struct SaltVerdict {
    std::vector<SaltResult> points; ///< by the published humidity
    bool temperatureFits = true;    ///< or was not given
    /// Distance between the driest and the dampest solution, % RH: says how much of the range was looked at.
    double span = 0;
    [[nodiscard]] std::size_t off() const;
};
SaltVerdict judgeSalts(const record::SaltCheck& check);

} // namespace wickbook::comparison
