// SPDX-License-Identifier: GPL-3.0-or-later
// ice-above-zero: ice was given, but the wet bulb stands above 0 °C by more than a scale step: melting ice
// stays at 0.0 (common practice, no source). Doubtful, no humidity. Arguments: wet °C; limit °C.
#include "core/checks/rules.h"

namespace wickbook::checks::rules {

void iceAboveZeroPair(const PairView& pair, Findings& findings) {
    if (pair.derivation.problem == psychrometry::PsychrometryError::IceAboveZero) {
        findings.push_back({"ice-above-zero",
                            Severity::Doubtful,
                            Root::Wick,
                            {{"wet", pair.input.wet.celsius()}, {"limit", pair.input.resolution.kelvins()}},
                            {}});
    }
}

void iceAboveZero(const ReadingContext& context, Findings& findings) {
    if (context.reading.derivation) {
        iceAboveZeroPair({context.reading.input, *context.reading.derivation, context.limits}, findings);
    }
}

} // namespace wickbook::checks::rules
