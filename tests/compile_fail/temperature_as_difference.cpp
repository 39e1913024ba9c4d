// SPDX-License-Identifier: GPL-3.0-or-later
// A reading of 0.3 °C must never be taken for a correction of 0.3 K.
#include "core/units/temperature.h"

using namespace wickbook::units;

#ifdef MUST_NOT_COMPILE
TemperatureDifference correction = Temperature::fromCelsius(0.3);
#else
TemperatureDifference correction = TemperatureDifference::fromKelvins(0.3);
#endif
