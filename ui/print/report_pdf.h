// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/month_report.h"
#include "ui/print/month_files.h"

class QIODevice;
class QPagedPaintDevice;

namespace wickbook::ui {

class PageWriter;

/// The month on paper: a newsletter half page first, with both charts, a plain paragraph and one caution,
/// then the monthly return line by line. The document's title is the station and the month; nothing of the
/// machine is in it. False when the device refused.
bool writeReportPdf(const report::MonthReport& report, Paper paper, const QLocale& locale, QIODevice& device);

/// The same pages on any device whose layout and resolution are set: a printer, a preview.
bool paintReport(const report::MonthReport& report, const QLocale& locale, QPagedPaintDevice& device);
/// The month's pages where the pen stands, at the head of a page. withStation: the station and how the
/// numbers were made are said too.
void paintMonthPages(PageWriter& page, const report::MonthReport& report, const QLocale& locale,
                     bool withStation);
QString reportTitle(const report::MonthReport& report, const QLocale& locale);

} // namespace wickbook::ui
