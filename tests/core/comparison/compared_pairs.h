// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/comparison/compared_pair.h"
#include "tests/support/reference_csv.h"

#include <map>
#include <string>
#include <vector>

/// The invented pairs of tests/reference/beside_pairs.csv, and what numpy makes of them.

namespace wickbook::comparison::testing {

inline ComparedPair comparedPair(double dry, double wet, bool ice, double pressure, double humidity,
                                 std::optional<int> wind = {}) {
    ComparedPair pair;
    pair.own.dry = units::Temperature::fromCelsius(dry);
    pair.own.wet = units::Temperature::fromCelsius(wet);
    pair.own.wick = ice ? psychrometry::WickState::Ice : psychrometry::WickState::Water;
    pair.own.pressure = units::Pressure::fromHectopascals(pressure);
    pair.own.coefficient.exposure = psychrometry::Exposure::Screen;
    pair.referenceHumidity = humidity;
    pair.windBeaufort = wind;
    return pair;
}

inline std::vector<ComparedPair> besidePairs() {
    std::vector<ComparedPair> pairs;
    for (const auto& row : support::readReference("beside_pairs.csv")) {
        pairs.push_back(comparedPair(row.need("dry"), row.need("wet"), row.text("wick") == "ice",
                                     row.need("pressure"), row.need("reference_rh"),
                                     static_cast<int>(row.need("wind"))));
    }
    return pairs;
}

/// Blank cells are left out.
inline std::map<std::string, double> besideExpected() {
    std::map<std::string, double> expected;
    for (const auto& row : support::readReference("beside_expected.csv")) {
        if (const auto value = row.number("value")) {
            expected[row.text("quantity")] = *value;
        }
    }
    return expected;
}

} // namespace wickbook::comparison::testing
