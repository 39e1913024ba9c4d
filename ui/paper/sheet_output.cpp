// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/sheet_output.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileDialog>
#include <QPrintDialog>
#include <QPrintPreviewDialog>
#include <QPrinter>

namespace wickbook::ui {

namespace {

struct SheetWords {
    Q_DECLARE_TR_FUNCTIONS(SheetWords)
};

void prepare(QPrinter& printer, const PaperSheet& sheet) {
    printer.setDocName(sheet.title);
    printer.setCreator(QStringLiteral("Wickbook"));
    printer.setPageLayout(pageLayoutOf(sheet.paper));
}

} // namespace

void previewSheet(const PaperSheet& sheet, QWidget* parent) {
    QPrinter printer(QPrinter::HighResolution);
    prepare(printer, sheet);
    QPrintPreviewDialog dialog(&printer, parent);
    dialog.setWindowTitle(SheetWords::tr("Before printing · %1").arg(sheet.title));
    QObject::connect(&dialog, &QPrintPreviewDialog::paintRequested,
                     [&sheet](QPrinter* device) { sheet.paint(*device); });
    dialog.resize(900, 760);
    dialog.exec();
}

QString printSheet(const PaperSheet& sheet, QWidget* parent) {
    QPrinter printer(QPrinter::HighResolution);
    prepare(printer, sheet);
    QPrintDialog dialog(&printer, parent);
    if (dialog.exec() != QDialog::Accepted) {
        return {};
    }
    return sheet.paint(printer)
               ? SheetWords::tr("Sent to the printer.")
               : SheetWords::tr("The printer took nothing: look whether it is on, and try again.");
}

QString saveSheet(const PaperSheet& sheet, const QString& fileName, QWidget* parent) {
    QString path = QFileDialog::getSaveFileName(parent, sheet.title, fileName, SheetWords::tr("PDF (*.pdf)"));
    if (path.isEmpty()) {
        return {};
    }
    if (!path.endsWith(QLatin1String(".pdf"), Qt::CaseInsensitive)) {
        path += QLatin1String(".pdf");
    }
    if (const auto written = writeSheetPdf(sheet, path); !written) {
        return written.error().sentence;
    }
    return SheetWords::tr("Written to %1.").arg(QDir::toNativeSeparators(path));
}

} // namespace wickbook::ui
