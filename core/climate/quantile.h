// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

namespace wickbook::climate {

/// Sample quantile of Hyndman and Fan 1996, type 7: linear between order statistics, x at h = (n − 1) p
/// counted from 0. None of an empty sample. Pre: 0 ≤ p ≤ 1, values finite.
std::optional<double> quantile(std::vector<double> values, double p);

/// The quantile at one half: of an even count the mean of the two in the middle.
std::optional<double> median(std::vector<double> values);

} // namespace wickbook::climate
