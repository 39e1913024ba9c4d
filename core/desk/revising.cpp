// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/revising.h"

#include <utility>

namespace wickbook::desk {

bool tellsTheSame(const record::Observation& a, const record::Observation& b) {
    return a.dry == b.dry && a.wet == b.wet && a.wick == b.wick && a.weather == b.weather &&
           a.windBeaufort == b.windBeaufort && a.pressure == b.pressure && a.maximum == b.maximum &&
           a.minimum == b.minimum && a.repeats == b.repeats && a.note == b.note &&
           a.missingReason == b.missingReason && a.origin == b.origin && a.withdrawn == b.withdrawn;
}

record::Observation withTickOf(const record::Observation& before, record::Observation after) {
    // A withdrawn line keeps its tick, and has it again should it come back as it was.
    after.readBack = before.readBack && (after.withdrawn || tellsTheSame(before, after));
    return after;
}

record::Observation asRevised(const record::Observation& before, record::Observation after, bool estimate) {
    const bool readAgain = after.dry != before.dry || after.wet != before.wet || after.wick != before.wick ||
                           after.pressure != before.pressure;
    if (estimate) {
        after.origin = record::Origin::Estimated;
    } else if (before.origin == record::Origin::Estimated || before.origin == record::Origin::Missing) {
        after.origin = record::Origin::Observed;
    } else if (readAgain || after.weather != before.weather || after.windBeaufort != before.windBeaufort) {
        after.origin = record::Origin::Corrected;
    }
    after.missingReason.clear();
    if (readAgain) {
        after.quality = record::Quality::NotJudged;
    }
    return withTickOf(before, std::move(after));
}

} // namespace wickbook::desk
