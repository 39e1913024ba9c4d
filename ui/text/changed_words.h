// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/changed_months.h"

#include <QLocale>
#include <QString>

/// What a change of the station's facts would do, in words.

namespace wickbook::ui {

/// "Of 7 746 readings 812 would have another humidity or dew point, in 14 months. What was read stays."
QString changedRegisterWords(const QLocale& locale, const desk::ChangedRegister& changed);

/// One month's cells: month, readings, humidity before, after, dew point before, after, largest change.
struct ChangedMonthWords {
    QString month, readings, humidityBefore, humidityAfter, dewPointBefore, dewPointAfter, largest;
};
ChangedMonthWords changedMonthWords(const QLocale& locale, const desk::ChangedMonth& month,
                                    units::TemperatureUnit unit);

} // namespace wickbook::ui
