// SPDX-License-Identifier: GPL-3.0-or-later
// A height is not yet a pressure.
#include "core/psychrometry/standard_atmosphere.h"

using namespace wickbook::units;
using namespace wickbook::psychrometry;

const auto h = Elevation::fromMetres(500);

#ifdef MUST_NOT_COMPILE
Pressure p = h;
#else
auto p = standardPressure(h);
#endif
