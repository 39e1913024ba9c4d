// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/month_files.h"
#include "ui/print/pdf_page.h"

#include <QString>
#include <tl/expected.hpp>

#include <functional>

class QPagedPaintDevice;

namespace wickbook::ui {

/// Something that goes on paper: the same to a PDF, a printer and a preview.
struct PaperSheet {
    QString title;
    Paper paper = Paper::A4;
    /// On a device whose layout and resolution are set; false when it could not be done.
    std::function<bool(QPagedPaintDevice&)> paint;
};

/// The sheet as a PDF, whole or not at all. Needs a QGuiApplication (offscreen will do).
tl::expected<void, FileError> writeSheetPdf(const PaperSheet& sheet, const QString& path);

} // namespace wickbook::ui
