// SPDX-License-Identifier: GPL-3.0-or-later
// Arguments in the wrong order.
#include "core/psychrometry/psychrometer.h"

using namespace wickbook::units;
using namespace wickbook::psychrometry;

const auto t = Temperature::fromCelsius(20);
const auto u = RelativeHumidity::fromPercent(50);
const auto p = Pressure::fromHectopascals(1000);

#ifdef MUST_NOT_COMPILE
auto wet = wetBulbFor(t, u, Surface::Water, t, CoefficientRule{});
#else
auto wet = wetBulbFor(t, u, Surface::Water, p, CoefficientRule{});
#endif
