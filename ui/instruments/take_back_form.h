// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/dated/fact_form.h"

namespace wickbook::ui {

/// Is this fact really to be taken back: the months that would change stand on the screen first.
class TakeBackForm : public FactForm {
    Q_OBJECT

public:
    TakeBackForm(Session& session, const QLocale& locale, const QString& what, record::StationFacts after,
                 QWidget* parent = nullptr)
        : FactForm(tr("Take back"), tr("Take it back"), what, parent) {
        finish();
        previewChanges(session, locale, [facts = std::move(after)] { return facts; });
    }
    [[nodiscard]] QString problem() const override { return {}; }
};

} // namespace wickbook::ui
