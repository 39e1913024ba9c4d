// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTableView>

namespace wickbook::ui {

/// A table that is typed into as one writes: Enter goes from dry to wet to the next pupil's dry, Delete
/// empties a cell.
class PairsView : public QTableView {
    Q_OBJECT

public:
    explicit PairsView(QWidget* parent = nullptr);

protected:
    void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void goOn();
};

} // namespace wickbook::ui
