// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/period_preview.h"

#include "core/record/observing_hours.h"

namespace wickbook::desk {

Result<std::optional<PeriodPreview>>
previewPeriods(const store::Book& book, const record::StationRecord& now, const record::StationRecord& after,
               const std::function<bool(std::size_t done, std::size_t total)>& progress) {
    constexpr std::size_t kReadingsBetweenLooks = 500;
    // Reading is the first half of the way.
    const auto go = [&](std::size_t done, std::size_t total) {
        return !progress || progress(done, 2 * total);
    };
    const auto whole = wholeRegister(book, now, go);
    if (!whole) {
        return tl::unexpected(whole.error());
    }
    if (!*whole) {
        return std::optional<PeriodPreview>{};
    }
    PeriodPreview preview;
    for (const record::DerivedReading& before : **whole) {
        if (preview.readings % kReadingsBetweenLooks == 0 &&
            !go((*whole)->size() + preview.readings, (*whole)->size())) {
            return std::optional<PeriodPreview>{};
        }
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
    return std::optional{preview};
}

} // namespace wickbook::desk
