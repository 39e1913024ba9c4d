// SPDX-License-Identifier: GPL-3.0-or-later
// Twice 10 °C is not 20 °C in any other unit.
#include "core/units/temperature.h"

using namespace wickbook::units;

constexpr auto t = Temperature::fromCelsius(10);
constexpr auto d = TemperatureDifference::fromKelvins(10);

#ifdef MUST_NOT_COMPILE
auto twice = t * 2.0;
#else
auto twice = d * 2.0;
#endif
