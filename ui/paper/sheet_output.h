// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/paper_sheet.h"

#include <QString>

class QWidget;

/// Where a sheet goes from the window. Each gives the sentence to show; empty where the person thought better
/// of it.

namespace wickbook::ui {

/// The pages as they will be printed; printing is one button away there.
void previewSheet(const PaperSheet& sheet, QWidget* parent);
/// Asks which printer.
QString printSheet(const PaperSheet& sheet, QWidget* parent);
/// Asks for a name. fileName: what is offered.
QString saveSheet(const PaperSheet& sheet, const QString& fileName, QWidget* parent);

} // namespace wickbook::ui
