// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/station_record.h"
#include "ui/print/paper_sheet.h"

#include <QLocale>

namespace wickbook::ui {

/// A card (A5) for whoever reads the station in the observer's place: hours, order of reading, frost, wick,
/// what to do in doubt, cautions, and room for a telephone number. today: absences that lie before it are
/// passed over.
PaperSheet deputyCardSheet(const record::StationRecord& station, record::StationDate today,
                           const QLocale& locale);

} // namespace wickbook::ui
