// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <date/date.h>
#include <tl/expected.hpp>

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

/// Moments and dates. Everything is kept in UTC to the second; what a clock showed is worked out
/// through a zone (zone.h). A date without a moment is a station's calendar day.

namespace wickbook::record {

using Instant = date::sys_seconds;      ///< a moment, UTC
using LocalTime = date::local_seconds;  ///< what a clock on the wall showed
using StationDate = date::local_days;   ///< a calendar day at the station
using HourOfDay = std::chrono::minutes; ///< nominal hour, minutes after midnight

std::string instantText(Instant instant);            ///< 2025-03-01T09:00:00Z
std::string dateText(StationDate date);              ///< 2025-03-01
std::string hourText(HourOfDay hour);                ///< 09:00
std::string offsetText(std::chrono::seconds offset); ///< +01:00, −04:16:48 with a plain hyphen
std::string localTimeText(LocalTime time);           ///< 2025-03-01T09:00:00

enum class TimeTextError { Empty, NotATime, NoSuchDate, NoSuchClockTime };

/// A time as ISO 8601 gives it: a local time, and its offset where one was written.
struct WrittenTime {
    LocalTime local;
    std::optional<std::chrono::seconds> offset; ///< 0 for Z
};

/// "2025-03-01T09:00", with seconds, 'T' or a blank between, "Z", "+01:00", "+0100", "-04:16:48" after it;
/// "20250301T0900Z" too. Years 1600…2200. A date alone is NotATime.
tl::expected<WrittenTime, TimeTextError> parseTime(std::string_view text);
/// "2025-03-01" or "20250301".
tl::expected<StationDate, TimeTextError> parseDate(std::string_view text);
/// "09:00", "9:00", "0900", "9", "9.00", "09:00:00".
tl::expected<HourOfDay, TimeTextError> parseHour(std::string_view text);
/// "2025-03", of the years 1600…2200.
std::string monthText(date::year_month month);
/// "2025-03".
tl::expected<date::year_month, TimeTextError> parseMonth(std::string_view text);

} // namespace wickbook::record
