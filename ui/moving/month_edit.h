// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDateEdit>
#include <date/date.h>

/// A month and its year. Up and down go on over the year's end, as the pages of a register do.

namespace wickbook::ui {

/// The first day of a month, which stands for it in a field.
QDate firstOf(date::year_month month);

class MonthEdit : public QDateEdit {
    Q_OBJECT

public:
    explicit MonthEdit(QWidget* parent = nullptr);

    void stepBy(int steps) override;

protected:
    [[nodiscard]] StepEnabled stepEnabled() const override;
};

} // namespace wickbook::ui
