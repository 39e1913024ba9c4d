// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>

namespace wickbook::ui {

/// The context under which the words on paper are translated, one for all pages that are printed.
struct PaperText {
    Q_DECLARE_TR_FUNCTIONS(PaperText)
};

} // namespace wickbook::ui
