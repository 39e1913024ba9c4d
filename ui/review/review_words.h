// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/register_review.h"

#include <QLocale>
#include <QString>

namespace wickbook::ui {

/// "3–9 Jan 1881", "3 Jan – 2 Feb 1881", "3 Jan 1881".
QString spanWords(const QLocale& locale, record::StationDate from, record::StationDate to);
/// "9 h", or "14:20" for an extra reading.
QString timeOfWords(const record::Observation& values);
/// "Wet bulb above dry bulb, 14 readings, 3–9 Jan 1881".
QString runWords(const QLocale& locale, const desk::ReviewRun& run, std::size_t open,
                 units::TemperatureUnit unit);
/// "14 readings", "1 reading".
QString readingsWords(std::size_t count);

} // namespace wickbook::ui
