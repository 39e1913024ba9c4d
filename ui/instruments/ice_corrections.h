// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/commands/revise_facts.h"
#include "ui/dated/fact_form.h"

namespace wickbook::ui {

/// Takes the ice points of a check over after a look at the months they change.
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
