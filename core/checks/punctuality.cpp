// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/punctuality.h"

#include "core/record/observing_hours.h"

#include <chrono>

namespace wickbook::checks {

std::optional<double> minutesLate(const ReadingContext& context) {
    return minutesLate(context.reading.values(), context.station);
}

std::optional<double> minutesLate(const record::Observation& values, const record::StationRecord& station) {
    if (!values.hour) {
        return std::nullopt;
    }
    const auto moment = record::momentOf(station, *values.hour);
    if (!moment) {
        return std::nullopt;
    }
    return static_cast<double>((values.instant - *moment).count()) / 60.0;
}

} // namespace wickbook::checks
