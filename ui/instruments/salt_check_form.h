// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/dated/fact_form.h"

#include <array>

class QLabel;

namespace wickbook::ui {

class TypedNumberEdit;

/// An electronic sensor over saturated salt solutions; what it says stands below while it is typed.
class SaltCheckForm : public FactForm {
    Q_OBJECT

public:
    SaltCheckForm(Session& session, const std::optional<record::SaltCheck>& known, const QLocale& locale,
                  QWidget* parent = nullptr);

    [[nodiscard]] QString problem() const override;
    /// Pre: no problem.
    [[nodiscard]] record::SaltCheck check() const;

private:
    [[nodiscard]] tl::expected<record::SaltCheck, QString> read() const;
    void showVerdict();

    Session& session_;
    QLocale locale_;
    record::SaltCheck start_;
    QLineEdit* date_ = nullptr;
    QLineEdit* sensor_ = nullptr;
    TypedNumberEdit* temperature_ = nullptr;
    std::array<TypedNumberEdit*, record::kSalts> readings_{};
    QLineEdit* note_ = nullptr;
    QLabel* verdict_ = nullptr;
};

} // namespace wickbook::ui
