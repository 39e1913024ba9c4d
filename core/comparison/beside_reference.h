// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/comparison/compared_pair.h"
#include "core/comparison/estimate.h"

#include <array>
#include <span>
#include <string_view>
#include <vector>

/// The station's psychrometer held against a reference beside it: how far its humidity lies off on the whole,
/// and where in the range.

namespace wickbook::comparison {

/// One pair as it entered.
struct HumidityDifference {
    std::size_t index = 0; ///< in the pairs given
    double own = 0;        ///< % RH
    double reference = 0;  ///< % RH
    double depression = 0; ///< K
    std::optional<int> windBeaufort;
    [[nodiscard]] double difference() const { return own - reference; }
};

/// Reference humidity from (included) to (excluded, but for 100).
struct BandSpread {
    double from = 0;
    double to = 0;
    std::size_t n = 0;
    std::optional<double> bias;      ///< mean difference, % RH
    std::optional<double> deviation; ///< standard deviation of the differences, % RH
};
inline constexpr std::array<double, 5> kBandEdges{0, 40, 60, 80, 100};

struct BesideReference {
    std::vector<HumidityDifference> differences;
    std::size_t withoutHumidity = 0; ///< pairs whose own humidity could not be had
    std::optional<Estimate> bias;    ///< own − reference, % RH; none for fewer than two
    std::optional<double> deviation; ///< of one difference, % RH
    std::array<BandSpread, 4> bands{};
    std::optional<LineFit> onDepression; ///< difference against the depression: % RH per K
    std::optional<LineFit> onWind;       ///< difference against the wind: % RH per Beaufort step
};

/// Humidity by derive() with the coefficient in force; a pair without it is counted, never guessed.
BesideReference compareWithReference(std::span<const ComparedPair> pairs);

} // namespace wickbook::comparison
