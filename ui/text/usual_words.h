// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/month_report.h"

#include <QLocale>
#include <QString>
#include <QStringList>

/// How a month stands to the station's own other years, in words. Drier or moister than usual is only said
/// where five other years have a mean and the month lies further from their average than they do on average
/// from one another (one standard deviation); "normal" only from thirty years on.

namespace wickbook::ui {

/// For the paragraph: a sentence or two, empty where nothing may be said.
QString usualSentences(const QLocale& locale, const report::MonthReport& report, units::TemperatureUnit unit);

/// For the page and the return: averages, numbers of years and departures; where there is none yet, why.
QStringList departureSentences(const QLocale& locale, const report::MonthReport& report,
                               units::TemperatureUnit unit);

} // namespace wickbook::ui
