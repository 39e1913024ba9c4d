// SPDX-License-Identifier: GPL-3.0-or-later
// Symbols: n count, p share below, h place among the sorted values from 0.
// Source:  Hyndman and Fan 1996, Sample quantiles in statistical packages, The American Statistician 50,
//          361–365, definition 7.
// Range:   0 ≤ p ≤ 1, n ≥ 1.
#include "core/climate/quantile.h"

#include <algorithm>
#include <cmath>

namespace wickbook::climate {

std::optional<double> quantile(std::vector<double> values, double p) {
    if (values.empty()) {
        return std::nullopt;
    }
    std::sort(values.begin(), values.end());
    const double h = static_cast<double>(values.size() - 1) * p;
    const auto below = std::min(static_cast<std::size_t>(std::floor(h)), values.size() - 1);
    const auto above = std::min(below + 1, values.size() - 1);
    return values[below] + (h - static_cast<double>(below)) * (values[above] - values[below]);
}

std::optional<double> median(std::vector<double> values) {
    return quantile(std::move(values), 0.5);
}

} // namespace wickbook::climate
