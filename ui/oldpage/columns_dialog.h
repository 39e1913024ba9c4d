// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/oldpage/page_habits.h"

#include <QDialog>

class QCheckBox;
class QListWidget;

/// Which columns the page in hand has, in which order, and where Enter stops. By keys: space switches a
/// column, Ctrl with the arrows moves it.

namespace wickbook::ui {

class ColumnsDialog : public QDialog {
    Q_OBJECT

public:
    explicit ColumnsDialog(const PageHabits& habits, QWidget* parent = nullptr);

    [[nodiscard]] std::vector<OldPageColumn> columns() const { return columns_; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void fill(int row);
    void move(int by);
    void rowChanged();

    std::vector<OldPageColumn> columns_;
    QListWidget* list_ = nullptr;
    QCheckBox* stops_ = nullptr;
};

} // namespace wickbook::ui
