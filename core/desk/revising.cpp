// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/read_back.h"

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

} // namespace wickbook::desk
