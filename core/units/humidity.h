// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>

namespace wickbook::units {

/// Relative humidity, always with respect to liquid water, also below 0 °C.
/// CF conventions count it from 0 to 1, people from 0 to 100: the accessor says which.
class RelativeHumidity {
public:
    static constexpr RelativeHumidity fromPercent(double value) { return RelativeHumidity{value}; }
    [[nodiscard]] constexpr double percent() const { return percent_; }
    [[nodiscard]] constexpr double fraction() const { return percent_ / 100.0; }
    constexpr auto operator<=>(const RelativeHumidity&) const = default;

private:
    explicit constexpr RelativeHumidity(double value) : percent_(value) {}
    double percent_;
};

} // namespace wickbook::units
