// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/likely_observer.h"

#include <algorithm>

namespace wickbook::desk {

namespace {

/// The newest reading filed before a date; none where there is none or the book can't be read.
std::optional<record::Observation> lastBefore(const store::Book& book, const record::StationRecord& station,
                                              record::StationDate date) {
    const auto before = book.neighbours(record::startOfDate(date, station), 1, 0);
    return before && !before->empty() ? std::optional{before->back().values} : std::nullopt;
}

} // namespace

std::string likelyObserver(const store::Book& book, const record::StationRecord& station,
                           record::StationDate date, const std::string& satHereLast) {
    const auto& absences = station.facts().absences;
    if (std::string deputy = record::deputyOn(absences, date); !deputy.empty()) {
        // Who was to be away and reads all the same is not asked to write over the deputy's initials each
        // time.
        const auto away = std::find_if(absences.rbegin(), absences.rend(), [&](const auto& absence) {
            return !absence.withdrawn && absence.contains(date) && absence.deputy == deputy;
        });
        const auto newest = lastBefore(book, station, date + date::days{1});
        const bool readsAllTheSame = newest && !satHereLast.empty() && newest->observer == satHereLast &&
                                     away != absences.rend() && record::filedDate(*newest) >= away->from;
        return readsAllTheSame ? satHereLast : deputy;
    }
    const record::Absence* over = nullptr;
    for (const record::Absence& absence : absences) {
        if (!absence.withdrawn && absence.deputy == satHereLast && absence.to < date &&
            (over == nullptr || absence.to > over->to)) {
            over = &absence;
        }
    }
    if (over == nullptr || satHereLast.empty()) {
        return satHereLast;
    }
    const auto newest = lastBefore(book, station, date + date::days{1});
    if (!newest || record::filedDate(*newest) > over->to) {
        return satHereLast; // has read on since, of their own accord
    }
    const auto usual = lastBefore(book, station, over->from);
    return usual && !usual->observer.empty() ? usual->observer : satHereLast;
}

} // namespace wickbook::desk
