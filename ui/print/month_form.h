// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/blank_month.h"
#include "ui/print/paper_sheet.h"

#include <QLocale>

namespace wickbook::ui {

/// The month as a form to be written in with cold hands: a line of 7 mm for each observing hour, boxes for
/// whole degrees and tenths, water or ice to be ticked, time, weather, wind, initials; the order of reading
/// and the cautions at its end.
PaperSheet monthFormSheet(report::BlankMonth month, const QLocale& locale, Paper paper);

} // namespace wickbook::ui
