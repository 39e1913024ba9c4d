// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>

namespace wickbook::units {

/// Height above mean sea level, metres.
class Elevation {
public:
    static constexpr Elevation fromMetres(double value) { return Elevation{value}; }
    [[nodiscard]] constexpr double metres() const { return metres_; }
    constexpr auto operator<=>(const Elevation&) const = default;

private:
    explicit constexpr Elevation(double value) : metres_(value) {}
    double metres_;
};

} // namespace wickbook::units
