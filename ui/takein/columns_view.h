// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/column_guess.h"

#include <QScrollArea>

#include <vector>

class QComboBox;
class QGridLayout;

namespace wickbook::ui {

/// The first rows of a file as they stand, and above each column a chooser of what it is.
class ColumnsView : public QScrollArea {
    Q_OBJECT

public:
    explicit ColumnsView(QWidget* parent = nullptr);

    /// columns: the proposal; rows: without the header.
    void showColumns(const std::vector<exchange::GuessedColumn>& columns,
                     const std::vector<std::vector<std::string>>& rows);
    [[nodiscard]] exchange::ColumnLayout columnLayout() const;
    void setColumnLayout(const exchange::ColumnLayout& layout);
    [[nodiscard]] QComboBox* chooser(int column) const;

signals:
    void changed();

private:
    std::vector<QComboBox*> choosers_;
    bool filling_ = false;
};

} // namespace wickbook::ui
