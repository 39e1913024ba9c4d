// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/station_record.h"

#include <QLocale>
#include <QString>

#include <vector>

/// Marks along a chart's time axis: days, months or years as the span asks, at the station's own midnights,
/// named in the person's locale and never closer together than their words are wide.

namespace wickbook::ui {

struct TimeTick {
    record::Instant instant{};
    QString label; ///< empty: a line without a word
};

/// width: pixels of the axis; labelWidth: of the widest label, with the space between two.
std::vector<TimeTick> timeTicks(const QLocale& locale, const record::StationRecord& station,
                                record::Instant from, record::Instant to, double width, double labelWidth);

/// Round values for a value axis that holds [low, high], about so many of them.
struct ValueScale {
    double low = 0;
    double high = 100;
    double step = 20;
    int decimals = 0;
};
ValueScale valueScale(double low, double high, int aboutTicks);

} // namespace wickbook::ui
