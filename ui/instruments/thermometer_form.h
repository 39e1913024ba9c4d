// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/commands/revise_facts.h"
#include "ui/dated/fact_form.h"

class QComboBox;

namespace wickbook::ui {

class TypedNumberEdit;

/// One thermometer: what it is called, its scale, and for a new one where it hangs from when on.
class ThermometerForm : public FactForm {
    Q_OBJECT

public:
    /// known: the thermometer to change; none: a new one.
    ThermometerForm(Session& session, const std::optional<record::Thermometer>& known, const QLocale& locale,
                    QWidget* parent = nullptr);

    [[nodiscard]] QString problem() const override;
    /// The thermometer and, where it is hung up, the pair in use from then on. Pre: no problem.
    [[nodiscard]] std::vector<FactEdit> edits() const;
    [[nodiscard]] QString name() const;

private:
    enum class Hangs { Nowhere, Dry, Wet };
    [[nodiscard]] tl::expected<record::Thermometer, QString> thermometer() const;
    [[nodiscard]] tl::expected<std::optional<record::Fitting>, QString>
    fitting(const record::Thermometer& thermometer) const;

    Session& session_;
    record::Thermometer start_;
    record::Uuid fittingId_;
    bool isNew_;
    QLineEdit* name_ = nullptr;
    QLineEdit* liquid_ = nullptr;
    QComboBox* unit_ = nullptr;
    TypedNumberEdit* step_ = nullptr;
    TypedNumberEdit* lowest_ = nullptr;
    TypedNumberEdit* highest_ = nullptr;
    QComboBox* hangs_ = nullptr;
    QLineEdit* from_ = nullptr;
};

} // namespace wickbook::ui
