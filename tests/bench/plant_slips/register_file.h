// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/derived_reading.h"

#include <optional>
#include <string>
#include <vector>

/// A register kept as CSV with the columns time_utc, dry_bulb_C, wet_bulb_C, station_pressure_hPa: what the
/// measuring of likely causes reads. Hours are taken as they stand, local time = UTC + offset.

namespace wickbook::bench {

struct Register {
    record::StationRecord station;
    std::vector<record::DerivedReading> readings; ///< time order
};

/// None where the file can't be read.
std::optional<Register> readRegister(const std::string& path);

} // namespace wickbook::bench
