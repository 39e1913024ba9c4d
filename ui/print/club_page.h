// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/club_sheet.h"
#include "ui/print/paper_sheet.h"

#include <QLocale>

namespace wickbook::ui {

/// Members' months in one table on paper, a group for each exposure, with the sentence why nobody is ranked.
PaperSheet clubPageSheet(report::ClubSheet sheet, const QLocale& locale, Paper paper);

} // namespace wickbook::ui
