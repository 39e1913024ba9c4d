// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cmath>

namespace wickbook::checks {

/// ln(eᵃ + eᵇ) without overflow: how the weights of two explanations add.
inline double logSum(double a, double b) {
    const double high = std::max(a, b);
    return high + std::log(std::exp(a - high) + std::exp(b - high));
}

} // namespace wickbook::checks
