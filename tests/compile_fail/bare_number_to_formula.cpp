// SPDX-License-Identifier: GPL-3.0-or-later
// A formula takes no number without a unit.
#include "core/psychrometry/saturation.h"

using namespace wickbook::units;
using namespace wickbook::psychrometry;

#ifdef MUST_NOT_COMPILE
auto e = saturationVapourPressure(20.0, Surface::Water);
#else
auto e = saturationVapourPressure(Temperature::fromCelsius(20.0), Surface::Water);
#endif
