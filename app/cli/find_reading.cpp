// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/find_reading.h"

#include "core/record/observing_hours.h"
#include "ui/text/error_words.h"

#include <fmt/format.h>

namespace wickbook::cli {

namespace {

using Found = std::optional<record::StoredObservation>;

/// Moments that a time may mean: one, two where the clock showed it twice, none where it jumped over it.
std::vector<record::Instant> momentsOf(const record::WrittenTime& time,
                                       const record::StationRecord& station) {
    const auto asUtc = record::Instant{time.local.time_since_epoch()};
    if (time.offset) {
        return {asUtc - *time.offset};
    }
    // The zone in force near that time; zones change seldom, offsets within a zone are the zone's matter.
    const auto resolved = record::resolveLocal(station.periodAt(asUtc).zone, time.local);
    if (const auto* unique = std::get_if<record::UniqueTime>(&resolved)) {
        return {unique->instant};
    }
    if (const auto* twice = std::get_if<record::DoubleTime>(&resolved)) {
        return {twice->first, twice->second};
    }
    return {};
}

/// The nominal hour that a time names.
std::optional<record::ObservingHour> hourOf(const record::WrittenTime& time,
                                            const record::StationRecord& station,
                                            const std::vector<record::Instant>& moments) {
    if (!time.offset) {
        const auto day = date::floor<date::days>(time.local);
        return record::ObservingHour{day, std::chrono::floor<std::chrono::minutes>(time.local - day)};
    }
    const auto hour = record::hourFor(station, moments.front());
    if (hour && record::momentOf(station, *hour) == moments.front()) {
        return hour;
    }
    return std::nullopt;
}

} // namespace

Outcome<record::StoredObservation> findReading(const OpenedBook& opened, const std::string& text) {
    const auto time = record::parseTime(text);
    if (!time) {
        return refuse("--at: " +
                      ui::timeErrorWords(time.error(), QString::fromStdString(text)).toStdString());
    }
    const auto moments = momentsOf(*time, opened.station);
    Found found;
    for (const record::Instant moment : moments) {
        const auto reading = opened.book.atInstant(moment);
        if (!reading) {
            return refuse(reading.error());
        }
        if (*reading && found) {
            return refuse(
                fmt::format("The clock showed {} twice and there is a reading at each; add the offset, such "
                            "as {}Z.",
                            text, record::localTimeText(time->local)));
        }
        if (*reading) {
            found = *reading;
        }
    }
    if (found) {
        return *found;
    }
    // A withdrawn reading has its history too; what stands in the book comes first.
    const auto hour = hourOf(*time, opened.station, moments);
    if (hour) {
        const auto reading = opened.book.atHour(*hour);
        if (!reading) {
            return refuse(reading.error());
        }
        if (*reading) {
            return **reading;
        }
    }
    for (const record::Instant moment : moments) {
        const auto reading = opened.book.withdrawnAt(moment, hour);
        if (!reading) {
            return refuse(reading.error());
        }
        if (*reading) {
            return **reading;
        }
    }
    return refuse(store::StoreError{store::StoreErrorKind::NoSuchReading, opened.book.path().string(), text});
}

} // namespace wickbook::cli
