// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/moving/month_edit.h"

namespace wickbook::ui {

QDate firstOf(date::year_month month) {
    return {static_cast<int>(month.year()), static_cast<int>(static_cast<unsigned>(month.month())), 1};
}

MonthEdit::MonthEdit(QWidget* parent) : QDateEdit(parent) {
    setDisplayFormat(QStringLiteral("MMMM yyyy"));
    setDateRange(QDate(1600, 1, 1), QDate(2200, 12, 31));
    setButtonSymbols(QAbstractSpinBox::NoButtons);
    setKeyboardTracking(false); // half a year typed is no year yet
}

void MonthEdit::stepBy(int steps) {
    const Section section = currentSection();
    setDate(section == YearSection ? date().addYears(steps) : date().addMonths(steps));
    setSelectedSection(section);
}

QAbstractSpinBox::StepEnabled MonthEdit::stepEnabled() const {
    return StepUpEnabled | StepDownEnabled;
}

} // namespace wickbook::ui
