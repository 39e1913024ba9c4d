// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/station_record.h"

#include <string>

namespace wickbook::exchange {

/// W3C "CSV on the Web" metadata for an observation CSV of this station, as JSON text: table, columns with CF
/// standard names and units, and the station block (periods, thermometers, corrections, how the numbers were
/// made).
std::string sidecarMetadata(const record::StationRecord& station, const std::string& csvFileName);

} // namespace wickbook::exchange
