// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/punctuality.h"

#include "core/record/observing_hours.h"

#include <chrono>

namespace wickbook::checks {

std::optional<double> minutesLate(const ReadingContext& context) {
    const auto& values = context.reading.values();
    if (!values.hour) {
        return std::nullopt;
    }
    const auto moment = record::momentOf(context.station, *values.hour);
    if (!moment) {
        return std::nullopt;
    }
    return static_cast<double>((values.instant - *moment).count()) / 60.0;
}

} // namespace wickbook::checks
