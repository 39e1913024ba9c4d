// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/climate/month_entry.h"

namespace wickbook::climate {

EntryKind kindOf(const MonthEntry& entry) {
    if (entry.reading == nullptr) {
        return EntryKind::Missing;
    }
    const record::Observation& values = entry.reading->values();
    if (values.withdrawn || values.origin == record::Origin::Missing ||
        !(values.dry.given() || values.wet.given())) {
        return EntryKind::Missing;
    }
    if (entry.setAside || values.origin == record::Origin::Estimated) {
        return EntryKind::SetAside;
    }
    return entry.reading->humidityPercent() ? EntryKind::Counted : EntryKind::Missing;
}

std::map<record::ObservingHour, const MonthEntry*> entriesByHour(std::span<const MonthEntry> entries) {
    std::map<record::ObservingHour, const MonthEntry*> chosen;
    for (const MonthEntry& entry : entries) {
        if (entry.reading == nullptr || entry.reading->values().withdrawn || !entry.reading->values().hour) {
            continue;
        }
        const auto [place, isNew] = chosen.emplace(*entry.reading->values().hour, &entry);
        if (isNew) {
            continue;
        }
        const EntryKind standing = kindOf(*place->second);
        const EntryKind offered = kindOf(entry);
        const bool earlier = entry.reading->values().instant < place->second->reading->values().instant;
        if (offered > standing || (offered == standing && earlier)) {
            place->second = &entry;
        }
    }
    return chosen;
}

} // namespace wickbook::climate
