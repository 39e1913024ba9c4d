// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/psychrometry/humidity_table.h"
#include "core/record/station_record.h"
#include "ui/print/paper_sheet.h"

#include <QLocale>

#include <optional>

/// The humidity table for the wall of the screen's hut: relative humidity and dew point, a wick with water
/// and one with ice, each on pages of its own and named on every one. Figures of 9.5 to 11
/// points, 2.4 mm high and more: legible at arm's length. Rather more pages than smaller type.

namespace wickbook::ui {

struct HumidityTableSheet {
    psychrometry::HumidityTable table;
    QString place; ///< the station's name, or empty
};

class PageWriter;

/// From where the pen stands, at the head of a page.
void paintHumidityTable(PageWriter& page, const HumidityTableSheet& sheet, const QLocale& locale);

/// The table of a station's hut as it stands at a moment, in its thermometers' unit; none without a
/// coefficient.
std::optional<HumidityTableSheet> hutTableOf(const record::StationRecord& station, record::Instant at);

PaperSheet humidityTableSheet(HumidityTableSheet sheet, const QLocale& locale, Paper paper);

/// By how much the pressure may differ, hPa, until a cell is wrong by 1 % relative humidity; for the table's
/// cells of 100 % and less.
double pressureWithinOnePercent(const psychrometry::HumidityTable& table);

} // namespace wickbook::ui
