// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/read_temperature.h"
#include "core/units/temperature.h"

#include <gtest/gtest.h>

using namespace wickbook::units;

// Fixed points by definition of the scales: 0 °C = 32 °F = 273.15 K, 100 °C = 212 °F, −40 is the same on
// both.
TEST(Temperature, FixedPoints) {
    EXPECT_DOUBLE_EQ(Temperature::fromFahrenheit(32).celsius(), 0.0);
    EXPECT_DOUBLE_EQ(Temperature::fromFahrenheit(212).celsius(), 100.0);
    EXPECT_DOUBLE_EQ(Temperature::fromFahrenheit(-40).celsius(), -40.0);
    EXPECT_DOUBLE_EQ(Temperature::fromCelsius(100).fahrenheit(), 212.0);
    EXPECT_DOUBLE_EQ(Temperature::fromCelsius(0).kelvin(), 273.15);
    EXPECT_DOUBLE_EQ(Temperature::fromKelvin(273.15).celsius(), 0.0);
}

TEST(Temperature, FahrenheitRoundTrip) {
    for (int tenths = -1000; tenths <= 1500; ++tenths) {
        const double f = tenths / 10.0;
        EXPECT_NEAR(Temperature::fromFahrenheit(f).fahrenheit(), f, 1e-12);
    }
}

// A difference has no 32 in it: 9 °F are 5 K.
TEST(TemperatureDifference, HasNoOffset) {
    EXPECT_DOUBLE_EQ(TemperatureDifference::fromFahrenheitDegrees(9).kelvins(), 5.0);
    EXPECT_DOUBLE_EQ(TemperatureDifference::fromKelvins(5).fahrenheitDegrees(), 9.0);
    const auto depression = Temperature::fromFahrenheit(68) - Temperature::fromFahrenheit(59);
    EXPECT_NEAR(depression.kelvins(), 5.0, 1e-12);
    EXPECT_NEAR((Temperature::fromCelsius(20) - depression).celsius(), 15.0, 1e-12);
    EXPECT_NEAR((Temperature::fromCelsius(20) + depression).celsius(), 25.0, 1e-12);
}

TEST(TemperatureDifference, Arithmetic) {
    const auto a = TemperatureDifference::fromKelvins(0.3);
    const auto b = TemperatureDifference::fromKelvins(0.1);
    EXPECT_DOUBLE_EQ((a - b).kelvins(), 0.3 - 0.1);
    EXPECT_DOUBLE_EQ((a + b).kelvins(), 0.3 + 0.1);
    EXPECT_DOUBLE_EQ((-a).kelvins(), -0.3);
    EXPECT_DOUBLE_EQ((a * 2).kelvins(), 0.6);
    EXPECT_LT(b, a);
}

TEST(ReadTemperature, KeepsDigitsAndScale) {
    const ReadTemperature read{{615, 1}, TemperatureUnit::Fahrenheit};
    EXPECT_EQ(read.value.toText(), "61.5");
    EXPECT_NEAR(read.temperature().celsius(), 16.3888888888889, 1e-12);
    EXPECT_NE(read, (ReadTemperature{{615, 1}, TemperatureUnit::Celsius}));
    EXPECT_NE(read, (ReadTemperature{{6150, 2}, TemperatureUnit::Fahrenheit}));
    EXPECT_DOUBLE_EQ(scaleDegrees(1, TemperatureUnit::Celsius).kelvins(), 1.0);
    EXPECT_DOUBLE_EQ(scaleDegrees(1, TemperatureUnit::Fahrenheit).kelvins(), 5.0 / 9.0);
}
