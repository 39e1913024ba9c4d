// SPDX-License-Identifier: GPL-3.0-or-later
// frozen-read-as-water: water was given well below 0 °C, where a wick is seldom still liquid, and ice would
// give a humidity more than 5 % away (computed). Soft.
// Arguments: humidity % as water; humidity-ice %; difference % (water less ice); wet °C.
#include "core/checks/rules.h"

#include <cmath>

namespace wickbook::checks::rules {

void frozenReadAsWaterPair(const PairView& pair, Findings& findings) {
    const auto& water = pair.derivation.relativeHumidity;
    if (pair.input.wick != psychrometry::WickState::Water || !water ||
        pair.input.wet.celsius() >= pair.limits.value("frozen-read-as-water.wet-below")) {
        return;
    }
    psychrometry::PairInput asIce = pair.input;
    asIce.wick = psychrometry::WickState::Ice;
    const auto ice = psychrometry::derive(asIce).relativeHumidity;
    if (!ice) {
        return;
    }
    const double difference = water->percent() - ice->percent();
    if (std::abs(difference) > pair.limits.value("frozen-read-as-water.humidity")) {
        findings.push_back({"frozen-read-as-water",
                            Severity::Soft,
                            Root::FrozenWick,
                            {{"humidity", water->percent()},
                             {"humidity-ice", ice->percent()},
                             {"difference", difference},
                             {"wet", pair.input.wet.celsius()}},
                            {}});
    }
}

void frozenReadAsWater(const ReadingContext& context, Findings& findings) {
    if (context.reading.derivation) {
        frozenReadAsWaterPair({context.reading.input, *context.reading.derivation, context.limits}, findings);
    }
}

} // namespace wickbook::checks::rules
