// SPDX-License-Identifier: GPL-3.0-or-later
// Two points on the scale have no sum.
#include "core/units/temperature.h"

using namespace wickbook::units;

constexpr auto a = Temperature::fromCelsius(20);
constexpr auto b = TemperatureDifference::fromKelvins(0.3);

#ifdef MUST_NOT_COMPILE
auto sum = a + a;
#else
auto sum = a + b;
#endif
