// SPDX-License-Identifier: GPL-3.0-or-later
// step-temperature: the dry bulb moved further than air usually does in the time (WMO-No. 305, chapter 6): 9,
// 15, 25 K in 3, 6, 12 h; other intervals take the next longer one's limit, beyond 12 h there is none. Always
// soft: at a dry inland station one reading in twenty-five does it honestly. Arguments: value °C; previous
// °C; change K (signed); hours since; limit K.
#include "core/checks/rules.h"
#include "core/checks/step_rule.h"

namespace wickbook::checks::rules {

void stepTemperature(const ReadingContext& context, Findings& findings) {
    const SoundValue sound = [](const record::DerivedReading& reading) {
        return hasSoundDryBulb(reading) ? dryCelsius(reading) : std::nullopt;
    };
    if (!context.reading.dry.offScale) {
        checkStep(context, "step-temperature", sound, dryCelsius(context.reading), findings);
    }
}

} // namespace wickbook::checks::rules
