// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>
#include <QVBoxLayout>

namespace wickbook::ui {

/// A column of text and ruled lines that scrolls on the sheet, by the arrow keys once it has the focus.
/// The area owns the column.
struct ScrolledColumn {
    QScrollArea* area;
    QVBoxLayout* column;
};
ScrolledColumn makeScrolledColumn(const QString& accessibleName, int spacing);

} // namespace wickbook::ui
