// SPDX-License-Identifier: GPL-3.0-or-later
// The same the other way round.
#include "core/psychrometry/saturation.h"

using namespace wickbook::units;
using namespace wickbook::psychrometry;

const auto p = Pressure::fromHectopascals(1000);
const auto e = VapourPressure::fromHectopascals(1000);

#ifdef MUST_NOT_COMPILE
auto f = enhancementFactor(e);
#else
auto f = enhancementFactor(p);
#endif
