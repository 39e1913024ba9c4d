// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/comparison/estimate.h"
#include "core/psychrometry/derive.h"

#include <date/date.h>

#include <optional>
#include <span>
#include <string_view>
#include <vector>

/// A new instrument or site side by side with the old one: by how much the new differs, and whether the two
/// records may be joined as they are.

namespace wickbook::comparison {

/// The old pair and the new one at the same hour, each with its own coefficient.
struct OverlapPair {
    psychrometry::PairInput station; ///< the old one, which the register keeps
    psychrometry::PairInput other;   ///< the new one
    date::year_month month{};
};

/// Fewer common readings than a month of daily ones decide nothing (common practice, no source).
inline constexpr std::size_t kFewestForOverlap = 30;
/// What a mean difference may be for the records to be joined as they are: the measurement uncertainty that
/// WMO-No. 8, Annex 1.A calls achievable for temperature, K, and humidity, % RH (from memory).
inline constexpr double kJoinTemperature = 0.2;
inline constexpr double kJoinHumidity = 3.0;
/// An overlap shows all seasons after so many months (from memory: a year at least).
inline constexpr std::size_t kMonthsOfAYear = 12;

enum class JoinVerdict {
    TooFew,   ///< fewer than 30 common readings
    Alike,    ///< both intervals lie within the limits: the records may be joined as they are
    Differs,  ///< a mean difference lies beyond its limit, and its interval leaves out 0: a break
    Undecided ///< the intervals reach across the limits: go on side by side
};
std::string_view joinVerdictName(JoinVerdict verdict); ///< "alike"

struct Overlap {
    std::size_t n = 0;
    std::size_t months = 0;                  ///< different calendar months of the year with a common reading
    std::optional<Estimate> dry;             ///< new − old, K
    std::optional<Estimate> wet;             ///< K
    std::optional<Estimate> humidity;        ///< % RH
    std::optional<Estimate> dewPoint;        ///< K
    std::optional<double> humidityDeviation; ///< of one difference, % RH
    JoinVerdict verdict = JoinVerdict::TooFew;
    [[nodiscard]] bool showsAllSeasons() const { return months >= kMonthsOfAYear; }
};

/// A pair whose humidity can't be had on either side counts in none of the differences.
Overlap compareOverlap(std::span<const OverlapPair> pairs);

} // namespace wickbook::comparison
