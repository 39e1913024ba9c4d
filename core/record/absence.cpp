// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/absence.h"

#include <algorithm>

namespace wickbook::record {

namespace {

/// The live absence of this date that was entered last among those that pass; nullptr: none.
template <typename Passes>
const Absence* lastOn(std::span<const Absence> absences, StationDate date, Passes passes) {
    const auto found = std::find_if(absences.rbegin(), absences.rend(), [&](const Absence& absence) {
        return !absence.withdrawn && absence.contains(date) && passes(absence);
    });
    return found == absences.rend() ? nullptr : &*found;
}

} // namespace

const Absence* absenceExplaining(std::span<const Absence> absences, StationDate date) {
    if (!deputyOn(absences, date).empty()) {
        return nullptr;
    }
    return lastOn(absences, date, [](const Absence&) { return true; });
}

std::string deputyOn(std::span<const Absence> absences, StationDate date) {
    const Absence* absence = lastOn(absences, date, [](const Absence& one) { return !one.deputy.empty(); });
    return absence == nullptr ? std::string{} : absence->deputy;
}

} // namespace wickbook::record
