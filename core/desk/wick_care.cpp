// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/wick_care.h"

#include <algorithm>

namespace wickbook::desk {

std::string_view wickDeedName(WickDeed deed) {
    switch (deed) {
    case WickDeed::NewWick:
        return "new-wick";
    case WickDeed::Wetted:
        return "wetted";
    case WickDeed::Water:
        return "water";
    }
    return {};
}

Result<std::vector<WickCareLine>> wickCare(const store::Book& book, const record::StationRecord& station,
                                           record::StationDate from, record::StationDate to) {
    const auto stored = book.observationsOn(from, to);
    if (!stored) {
        return tl::unexpected(stored.error());
    }
    std::vector<WickCareLine> log;
    for (const record::StoredObservation& each : *stored) {
        if (each.values.wickCare != record::WickCare::None) {
            log.push_back(
                {record::filedDate(each.values),
                 each.values.wickCare == record::WickCare::Changed ? WickDeed::NewWick : WickDeed::Wetted,
                 each.values.observer, each.values.note});
        }
    }
    for (const record::DiaryEntry& entry : station.facts().diary) {
        const bool isWick = entry.kind == record::DiaryKind::NewWick;
        if (!entry.withdrawn && (isWick || entry.kind == record::DiaryKind::Water) && from <= entry.date &&
            entry.date <= to) {
            log.push_back({entry.date, isWick ? WickDeed::NewWick : WickDeed::Water, {}, entry.note});
        }
    }
    std::ranges::stable_sort(log, {}, &WickCareLine::date);
    return log;
}

std::optional<record::StationDate> lastNewWick(const std::vector<WickCareLine>& log) {
    std::optional<record::StationDate> last;
    for (const WickCareLine& line : log) {
        if (line.deed == WickDeed::NewWick && (!last || line.date > *last)) {
            last = line.date;
        }
    }
    return last;
}

} // namespace wickbook::desk
