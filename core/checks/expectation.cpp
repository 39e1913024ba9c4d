// SPDX-License-Identifier: GPL-3.0-or-later
// Symbols: ν degrees of freedom, V covariance, q squared distance (x − m)ᵀ V⁻¹ (x − m).
// Source:  density of the bivariate Student t, 1 / (2π √|V|) (1 + q/ν)^(−(ν + 2)/2), and of the t in one
//          variable; ν and the scale of V were fitted by likelihood with the rest (neighbour_weights.cpp).
#include "core/checks/station_model.h"

#include <cmath>
#include <numbers>

namespace wickbook::checks {

namespace {

constexpr double kFreedom = 6.5;
/// The t's scale is smaller than the variance it is fitted to, for its tails are heavy.
constexpr double kScale = 0.78;

} // namespace

double Expectation::distance(double temperatureCelsius, double dewPointCelsius) const {
    const double x = temperatureCelsius - temperature;
    const double y = dewPointCelsius - dewPoint;
    const double determinant = varianceTemperature * varianceDewPoint - covariance * covariance;
    return (varianceDewPoint * x * x - 2 * covariance * x * y + varianceTemperature * y * y) /
           (determinant * kScale);
}

double Expectation::logDensity(double temperatureCelsius, double dewPointCelsius) const {
    const double determinant =
        kScale * kScale * (varianceTemperature * varianceDewPoint - covariance * covariance);
    return -std::log(2 * std::numbers::pi) - 0.5 * std::log(determinant) -
           (kFreedom + 2) / 2 * std::log1p(distance(temperatureCelsius, dewPointCelsius) / kFreedom);
}

double Expectation::logDensityTemperature(double temperatureCelsius) const {
    const double variance = kScale * varianceTemperature;
    const double x = temperatureCelsius - temperature;
    return std::lgamma((kFreedom + 1) / 2) - std::lgamma(kFreedom / 2) -
           0.5 * std::log(kFreedom * std::numbers::pi * variance) -
           (kFreedom + 1) / 2 * std::log1p(x * x / variance / kFreedom);
}

} // namespace wickbook::checks
