// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/observation.h"
#include "core/record/station.h"

#include <QDate>
#include <QLocale>
#include <QString>
#include <date/date.h>

namespace wickbook::ui {

QDate toQDate(record::StationDate date);
record::StationDate fromQDate(QDate date);

/// "9 h" for a full hour, "9:30 h" otherwise.
QString hourWords(record::HourOfDay hour);
/// "Sunday 22 November 2026".
QString longDateWords(const QLocale& locale, record::StationDate date);
/// "22 Nov".
QString shortDateWords(const QLocale& locale, record::StationDate date);
/// "22 Nov 2026, 9 h".
QString hourAndDateWords(const QLocale& locale, const record::ObservingHour& hour);
/// "November 2026".
QString monthWords(const QLocale& locale, date::year_month month);
/// "08:52" by the offset given.
QString clockWords(record::Instant instant, std::chrono::seconds offset);

} // namespace wickbook::ui
