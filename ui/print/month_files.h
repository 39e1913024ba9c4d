// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/month_report.h"
#include "ui/print/pdf_page.h"

#include <QByteArray>
#include <QLocale>
#include <QString>
#include <QStringList>
#include <tl/expected.hpp>

/// The monthly return as files, the same from the window and the command line.

namespace wickbook::ui {

/// What could not be written and why, as one sentence.
struct FileError {
    QString path;
    QString sentence;
};

struct MonthFilesRequest {
    QString folder; ///< made if it does not exist
    Paper paper = Paper::A4;
    QLocale locale = QLocale::c();
};

/// Writes month.csv, month.csv-metadata.json, summary.csv, report.pdf, chart.png, chart.svg and
/// paragraph.txt, each beside its name, synced and renamed. Needs a QGuiApplication/QApplication (offscreen
/// will do). The paths written.
tl::expected<QStringList, FileError> writeMonthFiles(const report::MonthReport& report,
                                                     const MonthFilesRequest& request);

/// One file, whole or not at all: written beside, synced and renamed, with the system's own reason when
/// refused.
tl::expected<void, FileError> writeWholeFile(const QString& path, const QByteArray& bytes);

} // namespace wickbook::ui
