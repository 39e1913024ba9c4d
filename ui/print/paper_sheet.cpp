// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/paper_sheet.h"

#include "ui/print/paper_text.h"

#include <QBuffer>
#include <QDir>
#include <QPdfWriter>

namespace wickbook::ui {

tl::expected<void, FileError> writeSheetPdf(const PaperSheet& sheet, const QString& path) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    bool painted = false;
    {
        QPdfWriter writer(&buffer);
        setUpPdf(writer, sheet.title, sheet.paper);
        painted = sheet.paint(writer);
    }
    if (!painted) {
        return tl::unexpected(FileError{
            path, PaperText::tr("%1 could not be painted because of an error in the program; nothing was "
                                "written. Please report it.")
                      .arg(QDir::toNativeSeparators(path))});
    }
    return writeWholeFile(path, bytes);
}

} // namespace wickbook::ui
