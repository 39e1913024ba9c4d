// SPDX-License-Identifier: GPL-3.0-or-later
// A correction is not a reading.
#include "core/units/temperature.h"

using namespace wickbook::units;

#ifdef MUST_NOT_COMPILE
Temperature reading = TemperatureDifference::fromKelvins(0.3);
#else
Temperature reading = Temperature::fromCelsius(0.3);
#endif
