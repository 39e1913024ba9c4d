// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/option_list.h"
#include "app/cli/outcome.h"
#include "ui/print/paper_sheet.h"

#include <QLocale>

/// What the verbs share that write pages: paper, language, and the one file.

namespace wickbook::cli {

struct PaperOptions {
    std::string paper = "a4", language;

    void declare(OptionList& command);
    struct Pages {
        ui::Paper paper = ui::Paper::A4;
        QLocale locale = QLocale::c();
    };
    [[nodiscard]] Outcome<Pages> read() const;
};

/// Paints the sheet into a PDF; the sentence where it can't.
Outcome<void> writeSheet(const ui::PaperSheet& sheet, const std::string& path);

} // namespace wickbook::cli
