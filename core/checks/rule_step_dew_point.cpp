// SPDX-License-Identifier: GPL-3.0-or-later
// step-dew-point: the dew point moved further than it usually does in the time (WMO-No. 305, chapter 6): 8,
// 12, 20 K in 3, 6, 12 h; other intervals take the next longer one's limit, beyond 12 h there is none. Always
// soft. A neighbour whose own wick is in doubt (standing at 0.0 in air cold enough for ice, or saturated in
// weather noted as fine) tells nothing of the moisture and is not compared with. Arguments: value °C;
// previous °C; change K (signed); hours since; limit K.
#include "core/checks/rules.h"
#include "core/checks/step_rule.h"
#include "core/psychrometry/psychrometer.h"

#include <cmath>

namespace wickbook::checks::rules {

namespace {

constexpr double kSaturated = 98; // %, as fine-but-saturated has it built in

bool hasDoubtfulWick(const record::DerivedReading& reading) {
    if (reading.humidityPercent().value_or(0) >= kSaturated && reading.values().weather &&
        !hasWetWeather(reading)) {
        return true;
    }
    if (std::abs(reading.input.wet.celsius()) > reading.input.resolution.kelvins() + kBinaryFraction ||
        reading.values().wick != record::WickState::Ice) {
        return false;
    }
    const auto warmest =
        psychrometry::warmestDryBulbForIce(reading.input.pressure, reading.input.coefficient);
    return warmest && reading.input.dry <= *warmest;
}

} // namespace

void stepDewPoint(const ReadingContext& context, Findings& findings) {
    const SoundValue sound = [](const record::DerivedReading& reading) {
        return isSoundNeighbour(reading) && !hasDoubtfulWick(reading) ? reading.dewPointCelsius()
                                                                      : std::nullopt;
    };
    checkStep(context, "step-dew-point", sound, context.reading.dewPointCelsius(), findings);
}

} // namespace wickbook::checks::rules
