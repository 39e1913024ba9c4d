// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/month_report.h"

#include <QLocale>
#include <QString>

namespace wickbook::ui {

/// The month in a few plain sentences, ready to paste into a newsletter: what the humidity and dew point were
/// at observing hours, extremes with date and hour, completeness, what was corrected, one caution. Marked
/// where invented.
QString monthParagraph(const QLocale& locale, const report::MonthReport& report, units::TemperatureUnit unit);

} // namespace wickbook::ui
