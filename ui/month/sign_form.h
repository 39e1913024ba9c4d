// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/month_report.h"
#include "ui/dated/fact_form.h"

namespace wickbook::ui {

/// Signing a month off: who, and what is to be remembered with it. Says what is signed.
class SignForm : public FactForm {
    Q_OBJECT

public:
    SignForm(const report::MonthReport& report, const QString& observer, const QLocale& locale,
             QWidget* parent = nullptr);

    [[nodiscard]] QString problem() const override;
    [[nodiscard]] QString by() const;
    [[nodiscard]] QString note() const;

private:
    QLineEdit* by_ = nullptr;
    QLineEdit* note_ = nullptr;
};

} // namespace wickbook::ui
