// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>

/// A temperature is a point on a scale; a temperature difference is a length on it.
/// They are different types because a correction of 0.3 must never be taken for a
/// reading of 0.3, and because °F differences convert without the 32.
/// Invariant: none on the value; whether a formula holds there is the formula's question.

namespace wickbook::units {

/// A length on the temperature scale, in kelvins (= degrees Celsius).
class TemperatureDifference {
public:
    static constexpr TemperatureDifference fromKelvins(double value) { return TemperatureDifference{value}; }
    static constexpr TemperatureDifference fromFahrenheitDegrees(double value) {
        return TemperatureDifference{value * 5.0 / 9.0};
    }

    [[nodiscard]] constexpr double kelvins() const { return kelvins_; }
    [[nodiscard]] constexpr double fahrenheitDegrees() const { return kelvins_ * 9.0 / 5.0; }

    constexpr auto operator<=>(const TemperatureDifference&) const = default;
    constexpr TemperatureDifference operator-() const { return TemperatureDifference{-kelvins_}; }
    friend constexpr TemperatureDifference operator+(TemperatureDifference a, TemperatureDifference b) {
        return TemperatureDifference{a.kelvins_ + b.kelvins_};
    }
    friend constexpr TemperatureDifference operator-(TemperatureDifference a, TemperatureDifference b) {
        return TemperatureDifference{a.kelvins_ - b.kelvins_};
    }
    friend constexpr TemperatureDifference operator*(TemperatureDifference a, double factor) {
        return TemperatureDifference{a.kelvins_ * factor};
    }

private:
    explicit constexpr TemperatureDifference(double kelvins) : kelvins_(kelvins) {}
    double kelvins_;
};

/// A point on the temperature scale, kept in degrees Celsius.
class Temperature {
public:
    static constexpr Temperature fromCelsius(double value) { return Temperature{value}; }
    static constexpr Temperature fromFahrenheit(double value) {
        return Temperature{(value - 32.0) * 5.0 / 9.0};
    }
    static constexpr Temperature fromKelvin(double value) { return Temperature{value - 273.15}; }

    [[nodiscard]] constexpr double celsius() const { return celsius_; }
    [[nodiscard]] constexpr double fahrenheit() const { return celsius_ * 9.0 / 5.0 + 32.0; }
    /// T = t + 273.15 (definition of the Celsius scale).
    [[nodiscard]] constexpr double kelvin() const { return celsius_ + 273.15; }

    constexpr auto operator<=>(const Temperature&) const = default;
    friend constexpr TemperatureDifference operator-(Temperature a, Temperature b) {
        return TemperatureDifference::fromKelvins(a.celsius_ - b.celsius_);
    }
    friend constexpr Temperature operator+(Temperature a, TemperatureDifference b) {
        return Temperature{a.celsius_ + b.kelvins()};
    }
    friend constexpr Temperature operator-(Temperature a, TemperatureDifference b) {
        return Temperature{a.celsius_ - b.kelvins()};
    }

private:
    explicit constexpr Temperature(double celsius) : celsius_(celsius) {}
    double celsius_;
};

} // namespace wickbook::units
