// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/derived_reading.h"
#include "ui/style/tokens.h"

#include <QString>

/// The equation with this reading's numbers, step by step, how sure the answer is line by line, and beside it
/// the excerpt of this station's humidity table with row, column and cell marked: the same answer twice, for
/// whoever learnt it from the table.

namespace wickbook::ui {

/// As rich text for the panel, for copying and for paper. about: the station and the hour, one line, or
/// empty. tokens: the colours of what it is shown on.
QString workingHtml(const record::DerivedReading& reading, const record::StationPeriod& period,
                    units::TemperatureUnit unit, const QString& about, const Tokens& tokens);

} // namespace wickbook::ui
