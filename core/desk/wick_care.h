// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/book.h"

#include <optional>
#include <string>
#include <vector>

/// What was done to the wick and the water: ticked with a reading, or written into the diary apart from one.

namespace wickbook::desk {

using store::Result;

enum class WickDeed { NewWick, Wetted, Water };
std::string_view wickDeedName(WickDeed deed); ///< "new-wick", "wetted", "water"

struct WickCareLine {
    record::StationDate date{};
    WickDeed deed = WickDeed::NewWick;
    std::string observer;
    std::string note;
};

/// A wick is looked at after so many days: weekly or oftener is good practice (from memory), a fortnight is
/// when a reminder is in order.
inline constexpr int kWickDays = 14;

/// Oldest first, over the dates [from, to].
Result<std::vector<WickCareLine>> wickCare(const store::Book& book, const record::StationRecord& station,
                                           record::StationDate from, record::StationDate to);

/// The day of the last new wick in a log; none where there is none.
std::optional<record::StationDate> lastNewWick(const std::vector<WickCareLine>& log);

} // namespace wickbook::desk
