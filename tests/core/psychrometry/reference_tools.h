// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/psychrometry/derive.h"
#include "tests/support/reference_csv.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>
#include <string>
#include <string_view>

/// What the tests against published values share: the old coefficient names of those files, and how far the
/// saturation formula itself may stand from the reference, carried through to humidity, dew point and wet
/// bulb. A tolerance here is always printed rounding + formula error, both known beforehand.

namespace wickbook::psychrometry::testing {

inline units::Temperature celsius(double value) {
    return units::Temperature::fromCelsius(value);
}
inline units::Pressure hectopascals(double value) {
    return units::Pressure::fromHectopascals(value);
}
inline units::RelativeHumidity percent(double value) {
    return units::RelativeHumidity::fromPercent(value);
}

inline double saturation(double t, Surface surface) {
    return saturationVapourPressure(celsius(t), surface).value().hectopascals();
}

inline Surface surfaceOf(const std::string& bulb) {
    if (bulb != "ice" && bulb != "water") {
        throw std::runtime_error("unknown bulb " + bulb);
    }
    return bulb == "ice" ? Surface::Ice : Surface::Water;
}

/// The four instruments that the files call by an older name.
inline std::optional<Exposure> exposureOfReference(std::string_view name) {
    if (name == "aspirated_666") {
        return Exposure::Whirled;
    }
    if (name == "screen_799") {
        return Exposure::Screen;
    }
    if (name == "wmo_assmann") {
        return Exposure::Aspirated;
    }
    return name == "us_sling" ? std::optional{Exposure::SlingUs} : std::nullopt;
}

inline CoefficientRule ruleOfReference(std::string_view name) {
    CoefficientRule rule;
    rule.exposure = exposureOfReference(name).value();
    return rule;
}

/// Largest relative error of Sonntag 1990 against IAPWS-95, Murphy and Koop 2005 (supercooled) and IAPWS
/// R14-08 (ice), stated for each range before any test is run: 0.007 % over water from 0 °C, 0.10 % to −20
/// °C, then growing to 1.94 % at −50 °C (svp_water.csv); 0.05 % over ice to −50 °C (svp_ice.csv), below that
/// what its trend of 0.0015 % per kelvin leads to; each with half a unit of its last digit.
inline double formulaError(double t, Surface surface) {
    if (surface == Surface::Ice) {
        return t >= -50.0 ? 5.5e-4 : 7e-4;
    }
    if (t >= 0.0) {
        return 7.5e-5;
    }
    if (t >= -20.0) {
        return 1.05e-3;
    }
    if (t >= -30.0) {
        return 1.9e-3;
    }
    return t >= -40.0 ? 6.4e-3 : 1.94e-2;
}

/// Formula error carried to first order through the psychrometer equation.
struct CarriedError {
    double vapour = 0;   ///< hPa
    double humidity = 0; ///< %
    double dewPoint = 0; ///< K
    double wetBulb = 0;  ///< K, of the inverse
};

inline CarriedError carriedError(double dry, double wet, Surface bulb, double perKelvinHectopascals,
                                 double humidity) {
    CarriedError result;
    const double atDry = saturation(dry, Surface::Water);
    result.vapour = formulaError(wet, bulb) * saturation(wet, bulb);
    result.humidity = 100.0 * result.vapour / atDry + humidity * formulaError(dry, Surface::Water);
    const double e = humidity / 100.0 * atDry;
    if (const auto dew = dewPoint(units::VapourPressure::fromHectopascals(e))) {
        result.dewPoint = (result.vapour + e * formulaError(dew->celsius(), Surface::Water)) /
                          saturationSlope(*dew, Surface::Water).value();
    }
    result.wetBulb = (result.vapour + e * formulaError(dry, Surface::Water)) /
                     (saturationSlope(celsius(wet), bulb).value() + perKelvinHectopascals);
    return result;
}

/// U straight from the equation, also where it lies above 100 % or below 0 %: what the files' finite
/// differences use.
inline double bareHumidity(double dry, double wet, Surface bulb, double pressure,
                           const CoefficientRule& rule) {
    const auto c = rule.at(bulb, celsius(wet), hectopascals(pressure)).value();
    const double e = c.enhancement * saturation(wet, bulb) - c.perKelvin * pressure * (dry - wet);
    return 100.0 * e / (c.enhancement * saturation(dry, Surface::Water));
}

/// Remembers the largest deviation seen and says it when the test ends.
class Worst {
public:
    explicit Worst(std::string what) : what_(std::move(what)) {}
    Worst(const Worst&) = delete;
    Worst& operator=(const Worst&) = delete;
    ~Worst() {
        std::printf("[ worst    ] %s: %.6g where %.6g is allowed (%s), %d values\n", what_.c_str(),
                    deviation_, allowed_, where_.c_str(), count_);
    }
    void see(double got, double expected, double allowed, const std::string& where) {
        EXPECT_NEAR(got, expected, allowed) << where << " " << what_;
        ++count_;
        const double share = std::abs(got - expected) / allowed;
        if (!(share <= share_)) {
            share_ = share;
            deviation_ = std::abs(got - expected);
            allowed_ = allowed;
            where_ = where;
        }
    }
    [[nodiscard]] int count() const { return count_; }

private:
    std::string what_;
    std::string where_ = "nothing seen";
    double share_ = -1;
    double deviation_ = 0;
    double allowed_ = 0;
    int count_ = 0;
};

} // namespace wickbook::psychrometry::testing
