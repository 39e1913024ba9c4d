// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/observe/thermometer_scale.h"

#include <algorithm>
#include <cmath>

namespace wickbook::ui {

namespace {

/// Marks nearer to each other than this run together on a screen.
constexpr double kNearestMarkPixels = 3.0;
constexpr double kMargin = 2.0;

double spanFor(const ThermometerScale& scale) {
    const bool fahrenheit = scale.unit == units::TemperatureUnit::Fahrenheit;
    const double celsius = scale.step >= 1 ? 40.0 : scale.step >= 0.5 ? 35.0 : 25.0;
    return fahrenheit ? celsius * 2 : celsius;
}

/// A window of the span round a middle, snapped to numbered marks and kept on the engraved scale.
ThermometerScale around(ThermometerScale scale, double middle, double span) {
    const double every = scale.numberedEvery();
    span = std::ceil(span / every) * every;
    double low = std::round((middle - span / 2) / every) * every;
    low = std::min(low, scale.highestMark - span);
    low = std::max(low, scale.lowestMark);
    scale.low = low;
    scale.high = std::min(low + span, std::max(scale.highestMark, low + every));
    return scale;
}

} // namespace

double ThermometerScale::numberedEvery() const {
    return unit == units::TemperatureUnit::Fahrenheit ? 10.0 : 5.0;
}

double ThermometerScale::markEvery(double pixelsPerDegree) const {
    for (const double every : {0.1, 0.2, 0.5, 1.0, 2.0}) {
        if (every >= step - 1e-9 && every * pixelsPerDegree >= kNearestMarkPixels) {
            return every;
        }
    }
    return numberedEvery();
}

bool ThermometerScale::sameThermometer(const ThermometerScale& other) const {
    return unit == other.unit && step == other.step && lowestMark == other.lowestMark &&
           highestMark == other.highestMark;
}

ThermometerScale ThermometerScale::showing(std::optional<double> dry, std::optional<double> wet) const {
    if (!dry && !wet) {
        return *this;
    }
    const double lowest =
        std::clamp(std::min(dry.value_or(*(wet ? wet : dry)), wet.value_or(*(dry ? dry : wet))), lowestMark,
                   highestMark);
    const double highest =
        std::clamp(std::max(dry.value_or(*(wet ? wet : dry)), wet.value_or(*(dry ? dry : wet))), lowestMark,
                   highestMark);
    const bool fits = lowest - kMargin >= low - (low <= lowestMark ? kMargin : 0) &&
                      highest + kMargin <= high + (high >= highestMark ? kMargin : 0);
    if (fits) {
        return *this;
    }
    return around(*this, (lowest + highest) / 2, std::max(spanFor(*this), highest - lowest + 3 * kMargin));
}

ThermometerScale scaleOf(const record::Thermometer* thermometer, double aroundValue) {
    ThermometerScale scale;
    if (thermometer != nullptr) {
        scale.unit = thermometer->unit;
        scale.lowestMark = thermometer->lowestMark.toDouble();
        scale.highestMark = thermometer->highestMark.toDouble();
        scale.step = std::max(0.01, thermometer->step.toDouble());
        scale.decimals = thermometer->step.decimals;
    }
    return around(scale, std::clamp(aroundValue, scale.lowestMark, scale.highestMark), spanFor(scale));
}

} // namespace wickbook::ui
