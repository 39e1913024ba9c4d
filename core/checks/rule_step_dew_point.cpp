// SPDX-License-Identifier: GPL-3.0-or-later
// step-dew-point: the dew point moved further than it usually does in the time (WMO-No. 305, chapter 6): 8,
// 12, 20 K in 3, 6, 12 h; other intervals take the next longer one's limit, beyond 12 h there is none. Always
// soft. Arguments: value °C; previous °C; change K (signed); hours since; limit K.
#include "core/checks/rules.h"
#include "core/checks/step_rule.h"

namespace wickbook::checks::rules {

void stepDewPoint(const ReadingContext& context, Findings& findings) {
    const SoundValue sound = [](const record::DerivedReading& reading) {
        return isSoundNeighbour(reading) ? reading.dewPointCelsius() : std::nullopt;
    };
    checkStep(context, "step-dew-point", sound, context.reading.dewPointCelsius(), findings);
}

} // namespace wickbook::checks::rules
