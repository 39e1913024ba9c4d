// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/rule_support.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <optional>

/// By which hour, day and season the model of a station files a reading (station_model.h).

namespace wickbook::checks {

/// Nominal hour, else the true one, to the nearest full hour, 0…23.
inline int localHour(const record::DerivedReading& reading) {
    const auto& values = reading.values();
    if (values.hour) {
        return static_cast<int>((values.hour->hour.count() + 30) / 60) % 24;
    }
    const auto local = values.instant + values.offset;
    const auto minutes =
        std::chrono::floor<std::chrono::minutes>(local - std::chrono::floor<date::days>(local));
    return static_cast<int>((minutes.count() + 30) / 60) % 24;
}

/// Days since 1 January, 0…365.
inline int dayOfYear(const record::DerivedReading& reading) {
    const auto day = record::filedDate(reading.values());
    const date::year_month_day ymd{day};
    return (day - date::local_days{ymd.year() / date::January / 1}).count();
}

inline int daysApart(int a, int b) {
    const int apart = std::abs(a - b) % 365;
    return std::min(apart, 365 - apart);
}

/// Middle of month m (0…11) as a day of the year.
inline int middleDay(unsigned month) {
    return static_cast<int>(std::lround(15.2 + 30.42 * month));
}

/// hPa at the station, where it was read.
inline std::optional<double> pressureRead(const record::DerivedReading& reading) {
    return reading.pressureSource == record::PressureSource::Read
               ? std::optional{reading.pressure.hectopascals()}
               : std::nullopt;
}

inline unsigned pairOfMonths(const record::DerivedReading& reading) {
    return (monthOf(reading) - 1) / 2;
}

} // namespace wickbook::checks
