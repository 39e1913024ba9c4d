// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/finding.h"
#include "core/checks/limits.h"
#include "core/checks/station_model.h"

#include <span>
#include <vector>

/// Which single slip would explain a reading. Every slip of the list is tried on what was written; each gives
/// a pair that may have stood on the thermometers. By Bayes: belief in a slip ∝ how common it is × how
/// probable it would have made this writing × how well its pair fits the neighbours and the season
/// (station_model.h). "Read right" and "misread in another way" are judged alongside, so a weight is a share
/// of all belief. Densities are taken per cell of the two scales, ∂(T, D)/∂(dry, wet) included, so that slips
/// that keep or lose digits compare.
///
/// Codes: swapped; {dry, wet}-{ten-high, ten-low, five-high, five-low, sign, decimal-point, digits-exchanged,
/// digit-dropped, digit-doubled, digit-extra, tenths-downwards}; both-{ten-high, ten-low, sign,
/// decimal-point}; fahrenheit-as-celsius; celsius-as-fahrenheit; ice-taken-for-water; water-taken-for-ice;
/// line-above-copied (no pair: what stood there is not known); dry-wick (dry bulb only); {dry,
/// wet}-column-broken. Nothing is ever applied: at a live entry the first advice is to read again.

namespace wickbook::checks {

struct Explanation {
    double readRight = 1;            ///< share of belief
    std::vector<LikelyCause> causes; ///< best first, at most three; empty where none is clearly better
    bool unlikely = false;           ///< a slip explains the reading clearly better than the weather does
};

/// The reading's full judgement. before newest last, after nearest first. A reading without two numbers has
/// none.
Explanation explain(const record::DerivedReading& reading, std::span<const record::DerivedReading> before,
                    std::span<const record::DerivedReading> after, const StationModel& model,
                    const Limits& limits = Limits{});

/// Only the causes of explain().
std::vector<LikelyCause> likelyCauses(const record::DerivedReading& reading,
                                      std::span<const record::DerivedReading> before,
                                      std::span<const record::DerivedReading> after,
                                      const StationModel& model);

/// Whether the pair fits its neighbours so well that no slip could be more likely: cheap, asked before
/// explain(). Never true for a pair that can't be, or one equal to the line above.
bool fitsWell(const record::DerivedReading& reading, std::span<const record::DerivedReading> before,
              std::span<const record::DerivedReading> after, const StationModel& model);

} // namespace wickbook::checks
