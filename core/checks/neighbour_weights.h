// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

/// Best linear expectation of a station's departures from those of its neighbours in time (simple kriging of
/// two variables that go together). Symbols and covariance as in station_model.h.

namespace wickbook::checks {

/// A neighbour's departures; hours from the moment in question, of either sign.
struct NeighbourDeparture {
    double hours = 0;
    double temperature = 0, dewPoint = 0;
    std::optional<double> pressure = std::nullopt; ///< not used here (neighbour_habits.h)
};

struct ExpectedDeparture {
    double temperature = 0, dewPoint = 0;
    double varianceTemperature = 1, varianceDewPoint = 1, covariance = 0;
};

inline constexpr std::size_t kMostNeighbours = 8;

/// Pre: at most kMostNeighbours. None: the station's own spread.
ExpectedDeparture expectedDeparture(std::span<const NeighbourDeparture> neighbours);

} // namespace wickbook::checks
