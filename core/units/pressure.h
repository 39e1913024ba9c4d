// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>

/// Air pressure at the station and the partial pressure of water vapour are both
/// pressures, yet swapping them is a slip no compiler would see: two types.

namespace wickbook::units {

/// Air pressure, hPa. Station pressure everywhere in this program, never reduced to sea level.
class Pressure {
public:
    static constexpr Pressure fromHectopascals(double value) { return Pressure{value}; }
    [[nodiscard]] constexpr double hectopascals() const { return hectopascals_; }
    constexpr auto operator<=>(const Pressure&) const = default;

private:
    explicit constexpr Pressure(double value) : hectopascals_(value) {}
    double hectopascals_;
};

/// Partial pressure of water vapour, hPa.
class VapourPressure {
public:
    static constexpr VapourPressure fromHectopascals(double value) { return VapourPressure{value}; }
    [[nodiscard]] constexpr double hectopascals() const { return hectopascals_; }
    constexpr auto operator<=>(const VapourPressure&) const = default;

private:
    explicit constexpr VapourPressure(double value) : hectopascals_(value) {}
    double hectopascals_;
};

} // namespace wickbook::units
