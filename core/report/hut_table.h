// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/psychrometry/humidity_table.h"
#include "core/record/station_record.h"

namespace wickbook::report {

/// The table for a station's hut: its coefficient, its mean pressure or the standard atmosphere's at its
/// elevation. step: of the depression, in degrees of the unit.
psychrometry::HumidityTableRequest hutTable(const record::StationPeriod& period, units::TemperatureUnit unit,
                                            double step);

} // namespace wickbook::report
