// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDateEdit>

/// A month and its year. Up and down go on over the year's end, as the pages of a register do.

namespace wickbook::ui {

class MonthEdit : public QDateEdit {
    Q_OBJECT

public:
    explicit MonthEdit(QWidget* parent = nullptr);

    void stepBy(int steps) override;

protected:
    [[nodiscard]] StepEnabled stepEnabled() const override;
};

} // namespace wickbook::ui
