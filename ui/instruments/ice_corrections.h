// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/commands/revise_facts.h"
#include "ui/dated/fact_form.h"

namespace wickbook::ui {

/// The corrections that the ice points of a check ask for, from the check's date on.
std::vector<record::Correction> iceCorrections(const record::StationRecord& station,
                                               const record::PairCheck& check, const QString& source);

/// Takes them over after a look at the months they change.
class IceCorrectionsForm : public FactForm {
    Q_OBJECT

public:
    IceCorrectionsForm(Session& session, const std::vector<record::Correction>& corrections,
                       const QLocale& locale, QWidget* parent = nullptr);
    [[nodiscard]] QString problem() const override { return {}; }
    [[nodiscard]] const std::vector<FactEdit>& edits() const { return edits_; }

private:
    Session& session_;
    std::vector<FactEdit> edits_;
};

} // namespace wickbook::ui
