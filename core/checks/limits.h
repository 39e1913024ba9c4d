// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/station.h"

#include <functional>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// One table of every limit the rules use: name, value, unit, what a station may set, and source. A station
/// may differ from it from a moment on; its own values are kept in the book. A reading is judged by the
/// limits in force when it was made, as it is derived with the coefficient in force then.

namespace wickbook::checks {

struct LimitEntry {
    std::string_view name; ///< "very-dry.lowest-humidity"
    double value;
    std::string_view unit; ///< "%", "K", "h", "hPa", ""
    double lowest;         ///< what a station may set: [lowest, highest] (our judgement)
    double highest;
    std::string_view source;
};

std::span<const LimitEntry> limitTable();
/// nullptr: no limit of that name.
const LimitEntry* limitEntry(std::string_view name);
/// A station can't set it: the humidity itself is worked out with it.
bool isFixed(const LimitEntry& entry);
/// Counts of readings or years have no decimals.
bool isWhole(const LimitEntry& entry);

/// Built-in values with the station's own laid over, as they hold at one moment.
class Limits {
public:
    using Own = std::map<std::string, double, std::less<>>;

    Limits() = default;
    explicit Limits(Own own) : own_(std::move(own)) {}
    /// Pre: name stands in the table.
    [[nodiscard]] double value(std::string_view name) const;

private:
    Own own_;
};

/// From a moment on (none: from the beginning) these limits hold.
struct LimitSpan {
    std::optional<record::Instant> from;
    Limits limits;
};

/// The limits of a station over the years.
class StationLimits {
public:
    /// The built-in ones, always.
    StationLimits() = default;
    /// The same ones always. Implicit: where nothing changes with time, Limits are enough.
    StationLimits(Limits always) : spans_{{std::nullopt, std::move(always)}} {}
    explicit StationLimits(const record::LimitChanges& changes);

    /// In force at a moment. The reference lives as long as this.
    [[nodiscard]] const Limits& at(record::Instant instant) const;
    /// The lowest value the limit has at any time.
    [[nodiscard]] double lowest(std::string_view name) const;
    /// In time order, the first from the beginning; never empty.
    [[nodiscard]] std::span<const LimitSpan> spans() const { return spans_; }

private:
    std::vector<LimitSpan> spans_{{std::nullopt, Limits{}}};
};

} // namespace wickbook::checks
