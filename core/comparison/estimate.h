// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <span>

/// An estimated number with what is known of its error, and the few regressions the comparisons need.
///
/// Symbols: n pairs, s residual standard deviation, t Student's quantile with the degrees of freedom left.
/// Errors are taken as independent and alike from pair to pair.

namespace wickbook::comparison {

/// value ± t(0.975, degrees) × standardError is the 95 % interval.
struct Estimate {
    double value = 0;
    double standardError = 0;
    double lower95 = 0;
    double upper95 = 0;
    [[nodiscard]] bool includes(double number) const { return lower95 <= number && number <= upper95; }
};

/// Student's t with this probability below. Pre: degrees ≥ 1, 0 < probability < 1.
double studentQuantile(double probability, std::size_t degrees);

/// Mean of values with its standard error s/√n. None for fewer than two.
std::optional<Estimate> meanOf(std::span<const double> values);

/// Sample standard deviation, n − 1 in the denominator. None for fewer than two.
std::optional<double> deviationOf(std::span<const double> values);

/// y = slope × x.
struct OriginFit {
    std::size_t n = 0;
    Estimate slope;               ///< Σxy / Σx², standard error s / √Σx²
    double residualDeviation = 0; ///< s, n − 1 degrees of freedom
};
/// None for fewer than two points, sizes that differ, or where every x is 0.
std::optional<OriginFit> fitThroughOrigin(std::span<const double> x, std::span<const double> y);

/// y = intercept + slope × x, by least squares.
struct LineFit {
    std::size_t n = 0;
    Estimate slope;
    Estimate intercept;
    double residualDeviation = 0; ///< s, n − 2 degrees of freedom
};
/// None for fewer than three points, sizes that differ, or where all x are equal.
std::optional<LineFit> fitLine(std::span<const double> x, std::span<const double> y);

} // namespace wickbook::comparison
