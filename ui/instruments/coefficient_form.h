// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/dated/fact_form.h"

class QComboBox;

namespace wickbook::ui {

class TypedNumberEdit;

/// How the pair is exposed from a date on, with which coefficient, and which pressure stands in for one that
/// was not read.
class CoefficientForm : public FactForm {
    Q_OBJECT

public:
    /// known: the period to change; none: a new one of today.
    CoefficientForm(Session& session, const std::optional<record::PeriodChange>& known, const QLocale& locale,
                    QWidget* parent = nullptr);
    /// A fitted coefficient, offered as the station's own.
    void propose(const record::OwnCoefficient& own);

    [[nodiscard]] QString problem() const override;
    /// Pre: no problem.
    [[nodiscard]] record::PeriodChange change() const;

private:
    [[nodiscard]] tl::expected<record::PeriodChange, QString> read() const;
    [[nodiscard]] tl::expected<std::optional<record::OwnCoefficient>, QString> own() const;
    void exposureChanged();

    Session& session_;
    record::PeriodChange start_;
    record::StationPeriod now_; ///< what is in force without the change
    bool fromBeginning_ = false;
    bool isNew_ = true;
    QLineEdit* from_ = nullptr;
    QComboBox* exposure_ = nullptr;
    TypedNumberEdit* water_ = nullptr;
    TypedNumberEdit* ice_ = nullptr;
    TypedNumberEdit* uncertainty_ = nullptr;
    TypedNumberEdit* pressure_ = nullptr;
};

} // namespace wickbook::ui
