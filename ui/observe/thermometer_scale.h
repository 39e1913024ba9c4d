// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/station.h"

#include <optional>

/// What part of the engraved scale the two drawn thermometers show, and how finely it is divided.
/// Both show the same part, so that the depression can be seen between the columns.
/// All values are in the thermometer's own unit.

namespace wickbook::ui {

struct ThermometerScale {
    double low = -5;  ///< lowest value shown
    double high = 30; ///< highest value shown
    double lowestMark = -40;
    double highestMark = 60;
    double step = 0.1; ///< finest step that is read
    int decimals = 1;
    units::TemperatureUnit unit = units::TemperatureUnit::Celsius;

    /// Distance of the numbered marks.
    [[nodiscard]] double numberedEvery() const;
    /// Finest division of the scale that can be told apart at so many pixels per degree.
    [[nodiscard]] double markEvery(double pixelsPerDegree) const;
    /// The same marks and unit, whatever part of them is shown.
    [[nodiscard]] bool sameThermometer(const ThermometerScale& other) const;
    /// Room for these readings with a margin; keeps the part shown while they fit, so that it does not jump
    /// at every digit.
    [[nodiscard]] ThermometerScale showing(std::optional<double> dry, std::optional<double> wet) const;
};

/// The scale of a thermometer round a usual reading; spans by how finely it is read.
ThermometerScale scaleOf(const record::Thermometer* thermometer, double aroundValue);

} // namespace wickbook::ui
