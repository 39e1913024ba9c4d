// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/period_preview.h"

#include "core/record/observing_hours.h"

namespace wickbook::desk {

Result<PeriodPreview> previewPeriods(const store::Book& book, const record::StationRecord& now,
                                     const record::StationRecord& after) {
    const auto whole = wholeRegister(book, now);
    if (!whole) {
        return tl::unexpected(whole.error());
    }
    PeriodPreview preview;
    for (const record::DerivedReading& before : **whole) {
        ++preview.readings;
        const record::DerivedReading then = record::deriveReading(before.stored, after);
        preview.rederived += then.humidityPercent() != before.humidityPercent() ||
                                     then.dewPointCelsius() != before.dewPointCelsius()
                                 ? 1U
                                 : 0U;
        const record::Observation& values = before.values();
        // Readings that are filed otherwise than by the plan already were so by somebody's hand.
        const auto planned = record::hourFor(now, values.instant);
        preview.anotherHour +=
            values.hour == planned && record::hourFor(after, values.instant) != planned ? 1U : 0U;
    }
    return preview;
}

} // namespace wickbook::desk
