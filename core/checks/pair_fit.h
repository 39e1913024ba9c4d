// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/station_model.h"

#include <optional>

/// How probable a pair of bulbs is at a station at a moment: the density of station_model.h carried from
/// (dry, dew point) to (dry, wet), for one cell of the two scales.

namespace wickbook::checks {

/// Log probability of a pair that can't be: below anything the weather does.
inline constexpr double kImpossible = -1e3;

class PairFit {
public:
    /// neighbour: where the reading itself has no usable pair, another reading of the station, for its
    /// coefficient.
    PairFit(const record::DerivedReading& reading, const record::DerivedReading* neighbour,
            const Expectation& expectation);

    /// Log probability of writing this pair; °C, corrected. A wick state not given near zero counts half
    /// each.
    [[nodiscard]] double logProbability(double dry, double wet, record::WickState wick) const;
    /// Log probability of the dry bulb alone, per cell.
    [[nodiscard]] double logProbabilityDry(double dry) const;
    /// Log probability of the wet bulb alone, roughly: it stands midway between dry bulb and dew point.
    [[nodiscard]] double logProbabilityWet(double wet) const;
    [[nodiscard]] psychrometry::Derivation derive(double dry, double wet, record::WickState wick) const;
    [[nodiscard]] const Expectation& expectation() const { return expectation_; }
    [[nodiscard]] double dryStep() const { return dryStep_; }
    [[nodiscard]] double wetStep() const { return wetStep_; }

private:
    [[nodiscard]] double logProbability(double dry, double wet, psychrometry::Surface bulb) const;
    psychrometry::PairInput input_;
    Expectation expectation_;
    double dryStep_, wetStep_;
};

} // namespace wickbook::checks
