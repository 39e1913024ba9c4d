// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/absence.h"

#include <ranges>

namespace wickbook::record {

const Absence* absenceExplaining(std::span<const Absence> absences, StationDate date) {
    if (!deputyOn(absences, date).empty()) {
        return nullptr;
    }
    for (const Absence& absence : absences | std::views::reverse) {
        if (!absence.withdrawn && absence.contains(date)) {
            return &absence;
        }
    }
    return nullptr;
}

std::string deputyOn(std::span<const Absence> absences, StationDate date) {
    for (const Absence& absence : absences | std::views::reverse) {
        if (!absence.withdrawn && absence.contains(date) && !absence.deputy.empty()) {
            return absence.deputy;
        }
    }
    return {};
}

} // namespace wickbook::record
