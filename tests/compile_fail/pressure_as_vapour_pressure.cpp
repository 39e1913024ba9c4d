// SPDX-License-Identifier: GPL-3.0-or-later
// Air pressure and vapour pressure are both hPa, and never each other.
#include "core/psychrometry/saturation.h"

using namespace wickbook::units;
using namespace wickbook::psychrometry;

const auto p = Pressure::fromHectopascals(12);
const auto e = VapourPressure::fromHectopascals(12);

#ifdef MUST_NOT_COMPILE
auto dew = dewPoint(p);
#else
auto dew = dewPoint(e);
#endif
