// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/derived_reading.h"

#include <QString>

/// The equation with this reading's numbers, step by step, how sure the answer is line by line, and the
/// excerpt of this station's humidity table with row, column and cell marked: the same answer twice.

namespace wickbook::ui {

/// As rich text for the panel, for copying and for paper. Colours are left to where it is shown.
QString workingHtml(const record::DerivedReading& reading, const record::StationPeriod& period,
                    units::TemperatureUnit unit);

} // namespace wickbook::ui
