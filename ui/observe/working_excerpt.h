// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/derived_reading.h"

#include <cstddef>
#include <optional>
#include <vector>

/// The part of this station's humidity table round one reading: same coefficient, pressure and wick as the
/// answer. The lines of the printed table are there, and between them the reading's own row and column, so
/// that the marked cell is the answer itself and the printed neighbours show between what it lies. A value.

namespace wickbook::ui {

struct WorkingExcerpt {
    bool ice = false;                ///< the table's ice part
    std::vector<double> dryBulbs;    ///< in the station's unit, rising
    std::vector<double> depressions; ///< in the station's unit, rising
    std::size_t row = 0;             ///< the reading's own
    std::size_t column = 0;
    std::vector<std::vector<std::optional<double>>> humidity; ///< per cent, [row][column]; none: no such air
};

/// None where the table has no place for the reading: an ice bulb above the dry bulb, a reading that no
/// humidity follows from for another reason than a depression too wide.
std::optional<WorkingExcerpt> workingExcerpt(const record::DerivedReading& reading,
                                             units::TemperatureUnit unit);

/// The wet bulb that the equation used: melting ice read a little above 0 °C stands at 0 °C.
units::Temperature wetBulbUsed(const record::DerivedReading& reading);

} // namespace wickbook::ui
