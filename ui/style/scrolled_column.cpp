// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/style/scrolled_column.h"

#include "ui/style/tokens.h"

namespace wickbook::ui {

ScrolledColumn makeScrolledColumn(const QString& accessibleName, int spacing) {
    auto* inside = new QWidget;
    auto* column = new QVBoxLayout(inside);
    column->setContentsMargins(space::kStep, 0, space::kStep, 0); // the frame of the focus does not touch the words
    column->setSpacing(spacing);
    auto* area = new QScrollArea;
    area->setProperty("column", true);
    area->setAccessibleName(accessibleName);
    area->setWidgetResizable(true);
    area->setWidget(inside);
    // The sheet behind shows through.
    inside->setAutoFillBackground(false);
    area->viewport()->setAutoFillBackground(false);
    return {area, column};
}

} // namespace wickbook::ui
