// SPDX-License-Identifier: GPL-3.0-or-later
// A length minus a point is nothing.
#include "core/units/temperature.h"

using namespace wickbook::units;

constexpr auto t = Temperature::fromCelsius(20);
constexpr auto d = TemperatureDifference::fromKelvins(7);

#ifdef MUST_NOT_COMPILE
auto rest = d - t;
#else
auto rest = t - d;
#endif
