// SPDX-License-Identifier: GPL-3.0-or-later
// A number without its unit.
#include "core/units/temperature.h"

using namespace wickbook::units;

#ifdef MUST_NOT_COMPILE
Temperature reading = 20.0;
#else
Temperature reading = Temperature::fromCelsius(20.0);
#endif
