// SPDX-License-Identifier: GPL-3.0-or-later
// very-dry: drier than this station usually is (10 % unless the station says otherwise; common practice, no
// source).
// Arguments: humidity %; limit %; depression K.
#include "core/checks/rules.h"

namespace wickbook::checks::rules {

void veryDryPair(const PairView& pair, Findings& findings) {
    const auto& humidity = pair.derivation.relativeHumidity;
    const double limit = pair.limits.value("very-dry.lowest-humidity");
    if (humidity && humidity->percent() < limit) {
        findings.push_back({"very-dry",
                            Severity::Soft,
                            Root::Pair,
                            {{"humidity", humidity->percent()},
                             {"limit", limit},
                             {"depression", pair.derivation.depression.kelvins()}},
                            {}});
    }
}

void veryDry(const ReadingContext& context, Findings& findings) {
    if (context.reading.derivation) {
        veryDryPair({context.reading.input, *context.reading.derivation, context.limits}, findings);
    }
}

} // namespace wickbook::checks::rules
