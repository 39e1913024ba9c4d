// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/humidity_chart.h"
#include "ui/session/session.h"

namespace wickbook::ui {

/// The middle half of the station's own readings of each calendar month in the dates given, taken from the
/// other years, all observing hours together. Only with five years or more, and for spans up to a few months:
/// a longer one would read the book many times over to say little. Empty otherwise.
ChartAverage stationAverages(const Session& session, Quantity quantity, record::StationDate from,
                             record::StationDate to);

} // namespace wickbook::ui
