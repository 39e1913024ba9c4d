// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/dated/fact_form.h"

class QComboBox;

namespace wickbook::ui {

/// Which two thermometers hang as dry and wet bulb, from when on.
class FittingForm : public FactForm {
    Q_OBJECT

public:
    /// known: the fact to change; none: a new one of today.
    FittingForm(Session& session, const std::optional<record::Fitting>& known, const QLocale& locale,
                QWidget* parent = nullptr);

    [[nodiscard]] QString problem() const override;
    /// Pre: no problem.
    [[nodiscard]] record::Fitting fitting() const;

private:
    [[nodiscard]] tl::expected<record::Fitting, QString> read() const;

    Session& session_;
    record::Fitting start_;
    bool fromBeginning_;
    QLineEdit* from_ = nullptr;
    QComboBox* dry_ = nullptr;
    QComboBox* wet_ = nullptr;
};

/// Fills a choice with the station's thermometers, by name.
void fillThermometers(QComboBox& box, const record::StationRecord& station, const record::Uuid& chosen);
/// The one chosen; none where there is none to choose from.
std::optional<record::Uuid> chosenThermometer(const QComboBox& box);

} // namespace wickbook::ui
