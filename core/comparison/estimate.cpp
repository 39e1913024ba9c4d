// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/estimate.h"

#include <gsl/gsl_cdf.h>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace wickbook::comparison {

namespace {

Estimate estimate(double value, double standardError, std::size_t degrees) {
    const double half = studentQuantile(0.975, degrees) * standardError;
    return {value, standardError, value - half, value + half};
}

double average(std::span<const double> values) {
    return std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
}

} // namespace

double studentQuantile(double probability, std::size_t degrees) {
    return gsl_cdf_tdist_Pinv(probability, static_cast<double>(degrees));
}

std::optional<double> deviationOf(std::span<const double> values) {
    if (values.size() < 2) {
        return std::nullopt;
    }
    const double mean = average(values);
    double squares = 0;
    for (const double value : values) {
        squares += (value - mean) * (value - mean);
    }
    return std::sqrt(squares / static_cast<double>(values.size() - 1));
}

std::optional<Estimate> meanOf(std::span<const double> values) {
    const auto deviation = deviationOf(values);
    if (!deviation) {
        return std::nullopt;
    }
    return estimate(average(values), *deviation / std::sqrt(static_cast<double>(values.size())),
                    values.size() - 1);
}

std::optional<OriginFit> fitThroughOrigin(std::span<const double> x, std::span<const double> y) {
    if (x.size() != y.size() || x.size() < 2) {
        return std::nullopt;
    }
    const double squares = std::inner_product(x.begin(), x.end(), x.begin(), 0.0);
    if (!(squares > 0)) {
        return std::nullopt;
    }
    const double slope = std::inner_product(x.begin(), x.end(), y.begin(), 0.0) / squares;
    double residuals = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        const double residual = y[i] - slope * x[i];
        residuals += residual * residual;
    }
    OriginFit fit;
    fit.n = x.size();
    fit.residualDeviation = std::sqrt(residuals / static_cast<double>(fit.n - 1));
    fit.slope = estimate(slope, fit.residualDeviation / std::sqrt(squares), fit.n - 1);
    return fit;
}

std::optional<LineFit> fitLine(std::span<const double> x, std::span<const double> y) {
    if (x.size() != y.size() || x.size() < 3) {
        return std::nullopt;
    }
    // Round the means: the sums lose nothing to a far origin.
    const double meanX = average(x);
    const double meanY = average(y);
    double squares = 0;
    double products = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        squares += (x[i] - meanX) * (x[i] - meanX);
        products += (x[i] - meanX) * (y[i] - meanY);
    }
    const auto [least, most] = std::ranges::minmax(x);
    if (!(most > least) || !(squares > 0)) {
        return std::nullopt;
    }
    const double slope = products / squares;
    double residuals = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        const double residual = y[i] - meanY - slope * (x[i] - meanX);
        residuals += residual * residual;
    }
    LineFit fit;
    fit.n = x.size();
    const auto n = static_cast<double>(fit.n);
    fit.residualDeviation = std::sqrt(residuals / (n - 2));
    fit.slope = estimate(slope, fit.residualDeviation / std::sqrt(squares), fit.n - 2);
    fit.intercept = estimate(meanY - slope * meanX,
                             fit.residualDeviation * std::sqrt(1 / n + meanX * meanX / squares), fit.n - 2);
    return fit;
}

} // namespace wickbook::comparison
