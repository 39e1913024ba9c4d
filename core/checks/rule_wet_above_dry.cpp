// SPDX-License-Identifier: GPL-3.0-or-later
// wet-above-dry: evaporation can't warm a wet bulb. Up to max(0.2 K, one scale step) it is reading error:
// taken as saturation and noted; above, doubtful and without humidity (common practice, no source). An ice
// bulb may rightly stand a little above: ice-over-dry judges that. Where the wick's state is not known, it
// speaks only of what neither water nor ice explains. Arguments: excess K; limit K; taken "saturation" where
// the pair was used as saturated.
#include "core/checks/rule_support.h"
#include "core/checks/rules.h"

#include <algorithm>

namespace wickbook::checks::rules {

void wetAboveDryPair(const PairView& pair, Findings& findings) {
    using psychrometry::PsychrometryError;
    const double excess = -pair.derivation.depression.kelvins();
    if (excess <= kBinaryFraction || pair.input.wick == psychrometry::WickState::Ice) {
        return;
    }
    const double limit =
        std::max(pair.limits.value("wet-above-dry.tolerance"), pair.input.resolution.kelvins());
    if (excess > limit + kBinaryFraction) {
        if (pair.derivation.problem == PsychrometryError::WickStateUnknown) {
            psychrometry::PairInput asIce = pair.input;
            asIce.wick = psychrometry::WickState::Ice;
            if (!psychrometry::derive(asIce).problem) {
                return;
            }
        }
        findings.push_back(
            {"wet-above-dry", Severity::Doubtful, Root::Pair, {{"excess", excess}, {"limit", limit}}, {}});
        return;
    }
    if (pair.derivation.takenAsSaturation) {
        findings.push_back({"wet-above-dry",
                            Severity::Note,
                            Root::Pair,
                            {{"excess", excess}, {"limit", limit}, {"taken", std::string{"saturation"}}},
                            {}});
    }
}

void wetAboveDry(const ReadingContext& context, Findings& findings) {
    if (context.reading.derivation) {
        wetAboveDryPair({context.reading.input, *context.reading.derivation, context.limits}, findings);
    }
}

} // namespace wickbook::checks::rules
