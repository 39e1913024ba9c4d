// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/dated/fact_form.h"

class QComboBox;
class QTableWidget;

namespace wickbook::ui {

class CorrectionCurve;
class TypedNumberEdit;

/// What to add to a thermometer's readings from a date on: points of a certificate or of an ice point,
/// linear between them and level beyond. May come late: it holds from its date, and the form first shows the
/// months it changes.
class CorrectionForm : public FactForm {
    Q_OBJECT

public:
    /// known: the correction to change, or one proposed (not yet in the book); none: a new one.
    CorrectionForm(Session& session, const std::optional<record::Correction>& known, const QLocale& locale,
                   QWidget* parent = nullptr);

    [[nodiscard]] QString problem() const override;
    /// Pre: no problem.
    [[nodiscard]] record::Correction correction() const;

private:
    [[nodiscard]] tl::expected<record::Correction, QString> read() const;
    [[nodiscard]] tl::expected<std::vector<record::CorrectionPoint>, QString> points() const;
    void pointsChanged();
    [[nodiscard]] units::TemperatureUnit unit() const;

    Session& session_;
    QLocale locale_;
    record::Correction start_;
    QComboBox* thermometer_ = nullptr;
    QLineEdit* from_ = nullptr;
    QTableWidget* points_ = nullptr;
    CorrectionCurve* curve_ = nullptr;
    TypedNumberEdit* uncertainty_ = nullptr;
    QLineEdit* source_ = nullptr;
};

} // namespace wickbook::ui
