// SPDX-License-Identifier: GPL-3.0-or-later
// wick-state-unknown: the wet bulb stands at or below 0 °C, or half a scale step or the correction could
// bring it there, and neither water nor ice is given. Nothing is inferred from the numbers, so there is no
// humidity (AMS Glossary of Meteorology, psychrometer: the wick may be ice above and water below). Doubtful.
// Arguments: wet °C; humidity-water % and humidity-ice %, what each answer would give, where it can be had.
#include "core/checks/rules.h"

namespace wickbook::checks::rules {

void wickStateUnknownPair(const PairView& pair, Findings& findings) {
    if (pair.derivation.problem != psychrometry::PsychrometryError::WickStateUnknown) {
        return;
    }
    Finding finding{
        "wick-state-unknown", Severity::Doubtful, Root::Wick, {{"wet", pair.input.wet.celsius()}}, {}};
    const auto answer = [&](psychrometry::WickState wick, std::string name) {
        psychrometry::PairInput input = pair.input;
        input.wick = wick;
        if (const auto derived = psychrometry::derive(input); derived.relativeHumidity) {
            finding.arguments.push_back({std::move(name), derived.relativeHumidity->percent()});
        }
    };
    answer(psychrometry::WickState::Water, "humidity-water");
    answer(psychrometry::WickState::Ice, "humidity-ice");
    findings.push_back(std::move(finding));
}

void wickStateUnknown(const ReadingContext& context, Findings& findings) {
    if (context.reading.derivation) {
        wickStateUnknownPair({context.reading.input, *context.reading.derivation, context.limits}, findings);
    }
}

} // namespace wickbook::checks::rules
