// SPDX-License-Identifier: GPL-3.0-or-later
// The accessor must say the unit.
#include "core/units/temperature.h"

using namespace wickbook::units;

constexpr auto t = Temperature::fromCelsius(20);

#ifdef MUST_NOT_COMPILE
double value = t;
#else
double value = t.celsius();
#endif
