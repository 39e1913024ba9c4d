// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/observer_habits.h"

#include "core/checks/punctuality.h"

#include <algorithm>
#include <cmath>

namespace wickbook::checks {

namespace {

std::string withoutBlanksRound(const std::string& text) {
    const auto begin = text.find_first_not_of(" \t");
    const auto end = text.find_last_not_of(" \t");
    return begin == std::string::npos ? std::string{} : text.substr(begin, end - begin + 1);
}

} // namespace

void ObserverCount::add(const record::Observation& values) {
    if (values.withdrawn || values.origin == record::Origin::Missing) {
        return;
    }
    const std::string initials = withoutBlanksRound(values.observer);
    auto [place, isNew] = counted_.try_emplace(initials);
    Counted& counted = place->second;
    ObserverHabits& habits = counted.habits;
    habits.initials = initials;
    habits.first = isNew ? values.instant : std::min(habits.first, values.instant);
    habits.last = isNew ? values.instant : std::max(habits.last, values.instant);
    if (values.origin == record::Origin::Estimated) {
        ++habits.estimated;
        return;
    }
    ++habits.readings;
    habits.doubtful += values.quality == record::Quality::Doubtful ? 1 : 0;
    habits.erroneous += values.quality == record::Quality::Erroneous ? 1 : 0;
    const std::string deputy = record::deputyOn(station_.facts().absences, record::filedDate(values));
    habits.asDeputy += !initials.empty() && withoutBlanksRound(deputy) == initials ? 1 : 0;
    if (const auto late = minutesLate(values, station_)) {
        ++counted.atHours;
        counted.minutesLate += *late;
        counted.minutesOff += std::abs(*late);
        habits.timed += *late != 0 ? 1 : 0;
    }
    habits.dryDigits.add(values, Bulb::Dry);
    habits.wetDigits.add(values, Bulb::Wet);
}

std::vector<ObserverHabits> ObserverCount::habits() const {
    std::vector<ObserverHabits> all;
    for (const auto& each : counted_) {
        const std::string& initials = each.first;
        const auto& counted = each.second;
        ObserverHabits habits = counted.habits;
        if (counted.atHours > 0) {
            habits.meanMinutesOff = counted.minutesOff / counted.atHours;
            habits.meanMinutesLate = counted.minutesLate / counted.atHours;
        }
        const auto& absences = station_.facts().absences;
        habits.namedDeputy =
            !initials.empty() && std::any_of(absences.begin(), absences.end(), [&](const auto& absence) {
                return !absence.withdrawn && withoutBlanksRound(absence.deputy) == initials;
            });
        all.push_back(std::move(habits));
    }
    std::stable_sort(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    return all;
}

} // namespace wickbook::checks
