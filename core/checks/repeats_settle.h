// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/observation.h"
#include "core/units/temperature.h"

#include <cstddef>
#include <optional>
#include <span>

/// Whirl by whirl: when the wet bulb has settled, and which whirl is the reading.
/// Two successive wet bulbs that agree within max(0.2 K, one scale step) have settled; the lowest settled wet
/// bulb with the dry bulb of its own whirl is the reading. A wet bulb that rises again says that the wick is
/// drying. Rows without a wet bulb are passed over. Pure: holds nothing, judges nothing but these rows.

namespace wickbook::checks {

/// Agreement asked of two successive wet bulbs, K (common practice, no source).
inline constexpr double kSettledWithinKelvins = 0.2;

struct RepeatsVerdict {
    /// Two successive wet bulbs agree.
    bool settled = false;
    /// The wet bulb stands higher than it did: stop, wet the wick, begin again.
    bool rising = false;
    /// Which row, from 0, is the reading: the lowest settled one, of equals the later; before any has settled
    /// the lowest so far. None while no row has a wet bulb.
    std::optional<std::size_t> row;
    /// Rows with a wet bulb.
    std::size_t whirls = 0;
};

/// wetStep: scale step of the wet thermometer.
[[nodiscard]] RepeatsVerdict settle(std::span<const record::Repeat> rows,
                                    units::TemperatureDifference wetStep);

/// max(0.2 K, one scale step).
[[nodiscard]] units::TemperatureDifference settledWithin(units::TemperatureDifference wetStep);

} // namespace wickbook::checks
