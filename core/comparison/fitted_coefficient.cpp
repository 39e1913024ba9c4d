// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/fitted_coefficient.h"

#include <algorithm>
#include <cmath>

namespace wickbook::comparison {

namespace {

using psychrometry::Surface;
using psychrometry::WickState;

/// Largest coefficient that can be one, per kelvin; as psychrometry refuses it.
constexpr double kMostPerKelvin = 5e-3;

/// What a pair adds to the sums.
struct Points {
    std::vector<double> x;          ///< p (t − t_w), hPa K
    std::vector<double> y;          ///< e_s(t_w) − e_ref, hPa
    std::vector<double> depression; ///< K
    std::vector<double> saturation; ///< e_w(t)/100: hPa per % RH
    std::vector<std::optional<int>> wind;
};

bool isOver(const psychrometry::PairInput& pair, Surface bulb) {
    if (pair.wick == WickState::NotGiven) {
        return bulb == Surface::Water &&
               !psychrometry::wickStateNeeded(pair.wet, pair.resolution, pair.wetCorrection);
    }
    return (pair.wick == WickState::Ice) == (bulb == Surface::Ice);
}

void residuals(FittedCoefficient& result, const Points& points) {
    std::vector<double> off;
    std::vector<double> wind;
    std::vector<double> offInWind;
    for (std::size_t i = 0; i < points.x.size(); ++i) {
        off.push_back(points.y[i] - result.fit->slope.value * points.x[i]);
        if (points.wind[i]) {
            wind.push_back(*points.wind[i]);
            offInWind.push_back(off.back());
        }
    }
    result.residualOnDepression = fitLine(points.depression, off);
    result.residualOnWind = fitLine(wind, offInWind);
}

void uncertainties(FittedCoefficient& result, const Points& points, double humidityUncertainty) {
    double shift = 0;
    double squares = 0;
    for (std::size_t i = 0; i < points.x.size(); ++i) {
        shift += points.x[i] * humidityUncertainty * points.saturation[i];
        squares += points.x[i] * points.x[i];
    }
    result.fromReference = std::abs(shift) / squares;
    result.relativeUncertainty =
        std::hypot(result.fit->slope.standardError, result.fromReference) / std::abs(result.fit->slope.value);
}

void judge(FittedCoefficient& result) {
    const std::size_t used = result.given - result.smallDepression;
    if (used < kFewestForCoefficient) {
        result.refused.push_back(ThinEvidence::TooFew);
        if (result.smallDepression > used) {
            result.refused.push_back(ThinEvidence::DepressionsSmall);
        }
    }
    if (!result.fit) {
        return;
    }
    if (result.largestDepression - result.leastDepression < kLeastDepressionRange) {
        result.refused.push_back(ThinEvidence::NarrowRange);
    }
    if (!(result.fit->slope.value > 0) || result.fit->slope.value > kMostPerKelvin) {
        result.refused.push_back(ThinEvidence::NotACoefficient);
    }
}

} // namespace

std::string_view thinEvidenceName(ThinEvidence reason) {
    switch (reason) {
    case ThinEvidence::TooFew:
        return "too-few";
    case ThinEvidence::DepressionsSmall:
        return "depressions-small";
    case ThinEvidence::NarrowRange:
        return "narrow-range";
    case ThinEvidence::NotACoefficient:
        return "not-a-coefficient";
    }
    return {};
}

FittedCoefficient fitCoefficient(std::span<const ComparedPair> pairs, Surface bulb,
                                 double humidityUncertainty) {
    FittedCoefficient result;
    result.bulb = bulb;
    Points points;
    for (const ComparedPair& pair : pairs) {
        const auto saturation = psychrometry::saturationVapourPressure(pair.own.wet, bulb);
        const auto reference = referenceVapourPressure(pair);
        const auto overDry = psychrometry::saturationVapourPressure(pair.own.dry, Surface::Water);
        if (!isOver(pair.own, bulb) || !saturation || !reference || !overDry) {
            continue;
        }
        ++result.given;
        const double depression = (pair.own.dry - pair.own.wet).kelvins();
        // Tenths make 2.9999… of 3.0: what was read as 3 counts as 3.
        if (depression < kLeastDepression - 1e-9) {
            ++result.smallDepression;
            continue;
        }
        points.x.push_back(pair.own.pressure.hectopascals() * depression);
        points.y.push_back(saturation->hectopascals() - *reference);
        points.depression.push_back(depression);
        points.saturation.push_back(overDry->hectopascals() / 100.0);
        points.wind.push_back(pair.windBeaufort);
    }
    result.fit = fitThroughOrigin(points.x, points.y);
    if (result.fit) {
        const auto [least, most] = std::ranges::minmax(points.depression);
        result.leastDepression = least;
        result.largestDepression = most;
        uncertainties(result, points, humidityUncertainty);
        residuals(result, points);
    }
    judge(result);
    return result;
}

} // namespace wickbook::comparison
