// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/neighbour_weights.h"

#include <array>
#include <map>
#include <optional>
#include <vector>

/// How this station's hours hang together beyond what one covariance for all hours can say: an afternoon
/// leans on other afternoons more than on the night between, a fall of the barometer foretells warmth. What
/// the covariance of neighbour_weights.h leaves over is put down to the nearest neighbours' departures, and
/// to the pressures where they were read, by ridge regression, for each pattern of hours that the station has
/// kept often enough. A pattern seldom seen has no habit: then nothing is added.

namespace wickbook::checks {

/// A reading's hour, and the nearest of its neighbours. Departures are in spreads (station_model.h).
struct NeighbourSituation {
    std::vector<int> pattern;  ///< hour of day, with pressures or not, hours to each neighbour taken
    std::vector<double> terms; ///< one and each neighbour's departures; the same number for equal patterns
};

/// pressure: the reading's own departure, where one was read. With pressures only if all taken have one.
/// None without a neighbour near enough, or where pressures are asked for and missing.
std::optional<NeighbourSituation> neighbourSituation(int hourOfDay, std::optional<double> pressure,
                                                     const std::vector<NeighbourDeparture>& neighbours,
                                                     bool withPressures);

/// What is added to the expected departure.
struct Habit {
    double temperature = 0, dewPoint = 0;
};

class NeighbourHabits {
public:
    /// left: what the reading stood away from its expected departure. Pre: settle() not yet called.
    void learn(const NeighbourSituation& situation, Habit left);
    /// Solves what was learnt, and forgets patterns seen too seldom.
    void settle();
    [[nodiscard]] std::optional<Habit> find(const NeighbourSituation& situation) const;

private:
    struct Learning {
        int count = 0;
        std::vector<double> products; ///< of terms with terms, row by row
        std::vector<double> withT, withD;
    };
    struct Weights {
        std::vector<double> temperature, dewPoint;
    };
    std::map<std::vector<int>, Learning> learning_;
    std::map<std::vector<int>, Weights> weights_;
};

} // namespace wickbook::checks
