// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/dated/fact_form.h"

class QComboBox;

namespace wickbook::ui {

class TypedNumberEdit;

/// Another instrument beside the station's: what it is, why it stands there and for how long.
class SideBySideForm : public FactForm {
    Q_OBJECT

public:
    SideBySideForm(Session& session, const std::optional<record::SideBySide>& known,
                   QWidget* parent = nullptr);

    [[nodiscard]] QString problem() const override;
    /// Pre: no problem.
    [[nodiscard]] record::SideBySide other() const;

private:
    [[nodiscard]] tl::expected<record::SideBySide, QString> read() const;

    record::SideBySide start_;
    QLineEdit* name_ = nullptr;
    QComboBox* purpose_ = nullptr;
    QLineEdit* from_ = nullptr;
    QLineEdit* to_ = nullptr;
    TypedNumberEdit* uncertainty_ = nullptr;
    QComboBox* exposure_ = nullptr;
    QLineEdit* decision_ = nullptr;
    QLineEdit* note_ = nullptr;
};

} // namespace wickbook::ui
