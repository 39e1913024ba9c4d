// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/month_report.h"

#include <QLocale>
#include <QString>
#include <QStringList>

namespace wickbook::ui {

/// Who signed the month off and when, and what has changed since; empty where nobody has.
QStringList signingSentences(const QLocale& locale, const report::MonthReport& report);

/// A column of the summary in words: "mean_dew_point_c" is "mean dew point, °C".
QString summaryColumnWords(const std::string& column);

} // namespace wickbook::ui
