// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/month_report.h"
#include "ui/print/page_writer.h"

#include <QLocale>

/// The parts of the monthly return on paper. Every one is words and numbers only; where they stand on the
/// page is the page writer's.

namespace wickbook::ui {

/// A line a day with each hour's readings side by side. The hours stand in groups of at most three, so that
/// they fit the width; a further group follows below.
std::vector<PageTable> dayTables(const report::MonthReport& report, const QLocale& locale);
/// Readings outside the observing hours; no rows where there are none.
PageTable extrasTable(const report::MonthReport& report, const QLocale& locale);
/// Means, highest and lowest, counts, at each hour and together.
PageTable numbersTable(const report::MonthReport& report, const QLocale& locale);
/// Of these the few that a newsletter has room for.
PageTable keyNumbersTable(const report::MonthReport& report, const QLocale& locale);
/// A sentence for each hour without a mean, and why.
QStringList withheldSentences(const report::MonthReport& report);
/// A sentence for each reading that was corrected: which, by whom, why.
QStringList correctionSentences(const report::MonthReport& report, const QLocale& locale);
using FactLines = std::vector<std::pair<QString, QString>>;
/// Exposure, coefficient and its source, pressure, position, zone, hours, thermometers; one block for each
/// period that the month touches.
std::vector<FactLines> stationBlocks(const report::MonthReport& report, const QLocale& locale);
/// The station in one line, for the newsletter: name, place, elevation, exposure, hours, how it is read.
QString stationLine(const report::MonthReport& report, const QLocale& locale);
/// How the numbers were made and how sure they are.
QStringList methodSentences(const report::MonthReport& report, const QLocale& locale);

} // namespace wickbook::ui
