// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/dated/fact_form.h"

class QComboBox;

namespace wickbook::ui {

/// Care of the wick and the water apart from a reading. Kept in the exposure diary, so that it marks the
/// charts; what is ticked with a reading is in the log as well.
class WickForm : public FactForm {
    Q_OBJECT

public:
    WickForm(const std::optional<record::DiaryEntry>& known, record::StationDate today,
             QWidget* parent = nullptr);

    [[nodiscard]] QString problem() const override;
    /// Pre: no problem.
    [[nodiscard]] record::DiaryEntry entry() const;

private:
    [[nodiscard]] tl::expected<record::DiaryEntry, QString> read() const;

    record::DiaryEntry start_;
    record::StationDate today_;
    QLineEdit* date_ = nullptr;
    QComboBox* what_ = nullptr;
    QLineEdit* note_ = nullptr;
};

} // namespace wickbook::ui
