// SPDX-License-Identifier: GPL-3.0-or-later
// A point is neither above nor below a length.
#include "core/units/temperature.h"

using namespace wickbook::units;

constexpr auto t = Temperature::fromCelsius(10);
constexpr auto d = TemperatureDifference::fromKelvins(10);

#ifdef MUST_NOT_COMPILE
bool above = t > d;
#else
bool above = t > t - d;
#endif
