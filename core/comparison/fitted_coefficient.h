// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/comparison/compared_pair.h"
#include "core/comparison/estimate.h"

#include <span>
#include <string_view>
#include <vector>

/// The station's own psychrometer coefficient out of pairs read beside a reference, water and ice apart.
///
///   e = e_s(t_w) − A p (t − t_w)   so   y = A x   with   x = p (t − t_w),   y = e_s(t_w) − e_ref
///   A = Σxy / Σx²      SE(A) = s / √Σx²      (least squares through the origin; f = 1 as for every own A)
///
/// The noise is taken to be the reference's (the pair's own reading error enters x and y alike and is small
/// where depressions are large). Only depressions of 3 K or more take part: below, A hardly shows.
/// The evidence is refused where it is thin; the numbers are given all the same, with the reason.

namespace wickbook::comparison {

inline constexpr std::size_t kFewestForCoefficient = 30;
inline constexpr double kLeastDepression = 3.0;      ///< K
inline constexpr double kLeastDepressionRange = 3.0; ///< K between the smallest and the largest

enum class ThinEvidence {
    TooFew,           ///< fewer than 30 pairs with a depression of 3 K or more
    DepressionsSmall, ///< pairs there are, but most of their depressions lie below 3 K
    NarrowRange,      ///< the depressions used span less than 3 K
    NotACoefficient   ///< the number is not positive, or above 5e-3 per kelvin
};
std::string_view thinEvidenceName(ThinEvidence reason); ///< "too-few"

struct FittedCoefficient {
    psychrometry::Surface bulb = psychrometry::Surface::Water;
    std::size_t given = 0;           ///< pairs over this surface
    std::size_t smallDepression = 0; ///< of which left out for a depression under 3 K
    std::optional<OriginFit>
        fit;                    ///< slope A per kelvin, residual deviation in hPa; none where nothing to fit
    double leastDepression = 0; ///< K, of those used
    double largestDepression = 0;
    /// What the reference's common uncertainty adds, per kelvin: |Σ x δ| / Σx² with δ = u(U) e_w(t)/100.
    double fromReference = 0;
    /// √(SE² + fromReference²) / A: what a period keeps as u(A)/A.
    double relativeUncertainty = 0;
    /// Residuals y − A x, hPa: against the depression (K) and the wind (Beaufort). A slope whose interval
    /// leaves out 0 says that one number does not serve everywhere.
    std::optional<LineFit> residualOnDepression;
    std::optional<LineFit> residualOnWind;
    std::vector<ThinEvidence> refused; ///< empty: the evidence is enough to use it

    [[nodiscard]] bool usable() const { return refused.empty(); }
};

/// pairs: of one exposure; those over the other surface are passed over. A pair above 0 °C with no wick given
/// counts as water, one at or below 0 °C without is passed over. humidityUncertainty: the reference's
/// standard uncertainty common to all its readings, % RH.
FittedCoefficient fitCoefficient(std::span<const ComparedPair> pairs, psychrometry::Surface bulb,
                                 double humidityUncertainty = 0);

} // namespace wickbook::comparison
