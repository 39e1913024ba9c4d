// SPDX-License-Identifier: GPL-3.0-or-later
// Symbols: a departures (T, D) at the neighbours, stacked; C their covariance; c covariance with the moment
// in
//          question; the expectation is cᵀ C⁻¹ a, its covariance (B + N − cᵀ C⁻¹ c) (8 + aᵀ C⁻¹ a) / (8 +
//          2n).
// Source:  simple kriging, and the scale of a Student t process given its neighbours (textbooks of
// geostatistics); B, N and the 85 h were fitted by likelihood to 1,200
//          readings of a manual register (dry and wet bulb twice and three times a day, fifteen years).
// Range:   up to eight neighbours; C is positive definite because N is.
#include "core/checks/neighbour_weights.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace wickbook::checks {

namespace {

constexpr double kFadeHours = 85;
// Lasting part B and momentary part N of the covariance: T with T, T with D, D with D.
constexpr double kLastingT = 0.891, kLastingTD = 0.835, kLastingD = 1.064;
constexpr double kMomentaryT = 0.177, kMomentaryTD = 0.031, kMomentaryD = 0.086;

/// How many values of ordinary weather the neighbours' own restlessness is weighed against.
constexpr double kSettledCount = 8;

constexpr std::size_t kMost = 2 * kMostNeighbours;
using Column = std::array<double, kMost>;
using Square = std::array<Column, kMost>;

/// In place: lower triangle of the Cholesky factor of a positive definite matrix.
void factorise(Square& matrix, std::size_t size) {
    for (std::size_t j = 0; j < size; ++j) {
        for (std::size_t k = 0; k < j; ++k) {
            for (std::size_t i = j; i < size; ++i) {
                matrix[i][j] -= matrix[i][k] * matrix[j][k];
            }
        }
        const double root = std::sqrt(std::max(matrix[j][j], 1e-9));
        for (std::size_t i = j; i < size; ++i) {
            matrix[i][j] /= root;
        }
    }
}

/// y with L y = x.
Column forward(const Square& lower, const Column& x, std::size_t size) {
    Column y{};
    for (std::size_t i = 0; i < size; ++i) {
        double sum = x[i];
        for (std::size_t k = 0; k < i; ++k) {
            sum -= lower[i][k] * y[k];
        }
        y[i] = sum / lower[i][i];
    }
    return y;
}

double dot(const Column& a, const Column& b, std::size_t size) {
    double sum = 0;
    for (std::size_t i = 0; i < size; ++i) {
        sum += a[i] * b[i];
    }
    return sum;
}

} // namespace

ExpectedDeparture expectedDeparture(std::span<const NeighbourDeparture> neighbours) {
    ExpectedDeparture result;
    result.varianceTemperature = kLastingT + kMomentaryT;
    result.varianceDewPoint = kLastingD + kMomentaryD;
    result.covariance = kLastingTD + kMomentaryTD;
    const std::size_t n = std::min(neighbours.size(), kMostNeighbours);
    if (n == 0) {
        return result;
    }
    Square covariance{};
    Column values{};
    Column withT{};
    Column withD{};
    for (std::size_t i = 0; i < n; ++i) {
        values[i] = neighbours[i].temperature;
        values[n + i] = neighbours[i].dewPoint;
        const double near = std::exp(-std::abs(neighbours[i].hours) / kFadeHours);
        withT[i] = kLastingT * near;
        withT[n + i] = kLastingTD * near;
        withD[i] = kLastingTD * near;
        withD[n + i] = kLastingD * near;
        for (std::size_t j = 0; j < n; ++j) {
            const double fade = std::exp(-std::abs(neighbours[i].hours - neighbours[j].hours) / kFadeHours);
            const double own = i == j ? 1.0 : 0.0;
            covariance[i][j] = kLastingT * fade + kMomentaryT * own;
            covariance[n + i][j] = kLastingTD * fade + kMomentaryTD * own;
            covariance[i][n + j] = covariance[n + i][j];
            covariance[n + i][n + j] = kLastingD * fade + kMomentaryD * own;
        }
    }
    const std::size_t size = 2 * n;
    factorise(covariance, size);
    const Column v = forward(covariance, values, size);
    const Column t = forward(covariance, withT, size);
    const Column d = forward(covariance, withD, size);
    result.temperature = dot(t, v, size);
    result.dewPoint = dot(d, v, size);
    result.varianceTemperature -= dot(t, t, size);
    result.varianceDewPoint -= dot(d, d, size);
    result.covariance -= dot(t, d, size);
    // In restless weather the neighbours stand further from one another than C says, and so may this reading.
    const double restless = (kSettledCount + dot(v, v, size)) / (kSettledCount + static_cast<double>(size));
    result.varianceTemperature *= restless;
    result.varianceDewPoint *= restless;
    result.covariance *= restless;
    return result;
}

} // namespace wickbook::checks
