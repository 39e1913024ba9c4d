// SPDX-License-Identifier: GPL-3.0-or-later
// What was written has no unit until its scale is named.
#include "core/units/read_temperature.h"

using namespace wickbook::units;

#ifdef MUST_NOT_COMPILE
Temperature reading = Decimal{160, 1};
#else
Temperature reading = ReadTemperature{{160, 1}, TemperatureUnit::Celsius}.temperature();
#endif
