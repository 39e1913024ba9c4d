// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/month_report.h"
#include "ui/print/month_files.h"

class QIODevice;

namespace wickbook::ui {

/// The month on paper: a newsletter half page first, with both charts, a plain paragraph and one caution,
/// then the monthly return line by line. The document's title is the station and the month; nothing of the
/// machine is in it. False when the device refused.
bool writeReportPdf(const report::MonthReport& report, Paper paper, const QLocale& locale, QIODevice& device);

} // namespace wickbook::ui
