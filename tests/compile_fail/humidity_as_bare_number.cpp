// SPDX-License-Identifier: GPL-3.0-or-later
// 0…1 or 0…100: the accessor says which.
#include "core/units/humidity.h"

using namespace wickbook::units;

constexpr auto u = RelativeHumidity::fromPercent(48);

#ifdef MUST_NOT_COMPILE
double value = u;
#else
double value = u.percent();
#endif
