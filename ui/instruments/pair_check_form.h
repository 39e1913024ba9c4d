// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/dated/fact_form.h"

#include <array>

class QComboBox;
class QLabel;

namespace wickbook::ui {

class TypedNumberEdit;

/// Both thermometers without wick in one stirred bath. What the readings say stands below the fields while
/// they are typed.
class PairCheckForm : public FactForm {
    Q_OBJECT

public:
    PairCheckForm(Session& session, const std::optional<record::PairCheck>& known, const QLocale& locale,
                  QWidget* parent = nullptr);

    [[nodiscard]] QString problem() const override;
    /// Pre: no problem.
    [[nodiscard]] record::PairCheck check() const;

private:
    [[nodiscard]] tl::expected<record::PairCheck, QString> read() const;
    void showVerdict();

    Session& session_;
    QLocale locale_;
    record::PairCheck start_;
    QLineEdit* date_ = nullptr;
    QComboBox* dry_ = nullptr;
    QComboBox* wet_ = nullptr;
    std::array<TypedNumberEdit*, 4> readings_{}; ///< dry at ice, wet at ice, dry in bath, wet in bath
    QLineEdit* note_ = nullptr;
    QLabel* verdict_ = nullptr;
};

} // namespace wickbook::ui
