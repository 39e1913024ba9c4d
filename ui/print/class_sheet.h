// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/comparison/class_round.h"

#include <QLocale>
#include <QString>

class QPagedPaintDevice;

/// The class round on paper: cautions, what to do, a line per pupil, the part of the humidity table that the
/// class needs, and questions. The work sheet leaves to the class what it has to find; the answers give it.
/// Pupils are numbers. Nothing of a station's record is in it.

namespace wickbook::ui {

struct ClassSheet {
    comparison::ClassRound round; ///< without pupils: a sheet with empty lines
    units::TemperatureUnit unit = units::TemperatureUnit::Celsius;
    bool answers = false;
};

QString classSheetTitle(const ClassSheet& sheet);

/// Paints the pages on a PDF or a printer that is set up; false when it could not be done.
bool writeClassSheet(const ClassSheet& sheet, const QLocale& locale, QPagedPaintDevice& device);

} // namespace wickbook::ui
