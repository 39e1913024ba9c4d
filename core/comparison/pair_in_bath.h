// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/station_record.h"

#include <optional>
#include <string>
#include <vector>

/// Both thermometers without wick in one stirred bath. At the ice point each shows its own error; elsewhere
/// only the difference between the two is known, and it does not say which of them errs.

namespace wickbook::comparison {

/// A pair of like thermometers should differ by no more than this, K, or one scale step if that is coarser
/// (common practice, no source).
inline constexpr double kPairTolerance = 0.1;
/// How well slush of crushed ice of distilled water, well packed and stirred, keeps 0.00 °C: standard
/// uncertainty, K (our judgement).
inline constexpr double kIcePointUncertainty = 0.02;
/// The same for the water of the bath being alike at both bulbs, K (our judgement).
inline constexpr double kBathUncertainty = 0.02;

/// One thermometer at the ice point, in kelvins.
struct IcePoint {
    double off = 0;                 ///< reading − ice point
    double standardUncertainty = 0; ///< half a step as a rectangle, and the ice's
    /// What the check asks to add, in the thermometer's own unit.
    double correction = 0;
};

/// A difference of the two, dry − wet, K.
struct PairDifference {
    double value = 0;
    double expandedUncertainty = 0; ///< k = 2
    /// Beyond the tolerance.
    bool large = false;
};

struct PairVerdict {
    double tolerance = kPairTolerance; ///< K
    std::optional<IcePoint> dryAtIce;
    std::optional<IcePoint> wetAtIce;
    std::optional<PairDifference> atIce;
    std::optional<PairDifference> inBath; ///< as read
    /// In the bath once each is corrected by its own ice point: what is left is of the scale above 0 °C.
    std::optional<PairDifference> inBathCorrected;
    [[nodiscard]] bool anything() const { return dryAtIce || wetAtIce || inBath; }
    /// Some difference is larger than a pair's should be.
    [[nodiscard]] bool differs() const {
        return (atIce && atIce->large) || (inBath && inBath->large) ||
               (inBathCorrected && inBathCorrected->large);
    }
};

/// dry and wet: the thermometers of the check, for their steps and units.
PairVerdict judgePair(const record::PairCheck& check, const record::Thermometer& dry,
                      const record::Thermometer& wet);

/// The correction that an ice point asks for: the points in force moved as a whole so that the ice point
/// reads right (a glass thermometer's zero moves all its marks alike), or one point where none is known.
/// standardUncertainty is in the thermometer's unit. known: the correction in force, nullptr for none.
record::Correction correctionFromIce(const IcePoint& ice, const record::Thermometer& thermometer,
                                     const record::Correction* known);

/// The corrections that a check's ice points ask for, from the check's day on; none where it has no ice point
/// or its thermometers are not known. source: as kept with them.
std::vector<record::Correction> iceCorrections(const record::StationRecord& station,
                                               const record::PairCheck& check, const std::string& source);

} // namespace wickbook::comparison
