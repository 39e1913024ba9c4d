// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/hour_marks.h"

#include <algorithm>
#include <map>

namespace wickbook::desk {

namespace {

record::StationDate dateAt(const record::StationRecord& station, record::Instant instant) {
    return date::floor<date::days>(station.periodAt(instant).zone.localAt(instant));
}

HourState stateOf(const checks::CheckedReading& checked) {
    const record::Observation& values = checked.reading.values();
    if (values.origin == record::Origin::Missing) {
        return HourState::Excused;
    }
    if (values.quality == record::Quality::Erroneous) {
        return HourState::Erroneous;
    }
    const bool judged = values.quality != record::Quality::NotJudged;
    const bool grave =
        !judged && std::any_of(checked.findings.begin(), checked.findings.end(),
                               [](const auto& f) { return f.severity >= checks::Severity::Erroneous; });
    if (grave) {
        return HourState::Erroneous;
    }
    return checked.leftOut || !values.hasPair() ? HourState::Doubtful : HourState::Kept;
}

} // namespace

Result<std::vector<HourMark>> hourMarks(const store::Book& book, const record::StationRecord& station,
                                        record::StationDate from, record::StationDate to,
                                        record::Instant now) {
    const auto checked = checkedOn(book, station, from, to, now);
    if (!checked) {
        return tl::unexpected(checked.error());
    }
    std::map<record::ObservingHour, const checks::CheckedReading*> byHour;
    for (const checks::CheckedReading& reading : *checked) {
        if (reading.reading.values().hour) {
            byHour[*reading.reading.values().hour] = &reading;
        }
    }
    const auto offer = hourOnOffer(book, station, now);
    if (!offer) {
        return tl::unexpected(offer.error());
    }
    std::vector<HourMark> marks;
    for (const record::ExpectedHour& expected : record::expectedHours(station, from, to)) {
        HourMark mark{expected, HourState::Missed, std::nullopt};
        if (const auto found = byHour.find(expected.hour); found != byHour.end()) {
            mark.state = stateOf(*found->second);
            mark.observation = found->second->reading.stored.id();
            mark.reason =
                mark.state == HourState::Excused ? found->second->reading.values().missingReason : "";
        } else if (*offer && (*offer)->hour == expected.hour) {
            mark.state = HourState::Due;
        } else if (expected.instant > now) {
            mark.state = HourState::Ahead;
        } else if (const auto* absence =
                       record::absenceExplaining(station.facts().absences, expected.hour.date)) {
            mark.state = HourState::Excused;
            mark.reason = absence->reason;
        }
        marks.push_back(std::move(mark));
    }
    return marks;
}

Result<std::optional<record::ExpectedHour>>
hourOnOffer(const store::Book& book, const record::StationRecord& station, record::Instant now) {
    const record::StationDate today = dateAt(station, now);
    const auto hours = record::expectedHours(station, today - date::days{2}, today + date::days{8});
    if (hours.empty()) {
        return std::optional<record::ExpectedHour>{};
    }
    const auto nearest = std::min_element(hours.begin(), hours.end(), [&](const auto& a, const auto& b) {
        return std::abs((a.instant - now).count()) < std::abs((b.instant - now).count());
    });
    for (auto hour = nearest; hour != hours.end(); ++hour) {
        const auto filled = book.atHour(hour->hour);
        if (!filled) {
            return tl::unexpected(filled.error());
        }
        if (!*filled) {
            return std::optional{*hour};
        }
    }
    return std::optional<record::ExpectedHour>{};
}

} // namespace wickbook::desk
