// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sample/sample_station.h"

#include "core/record/observing_hours.h"
#include "core/sample/sample_register.h"

#include <algorithm>

namespace wickbook::sample {

namespace {

using namespace std::chrono_literals;

/// What became of an hour that was not read: a reason on record, or nothing at all.
struct Missed {
    bool isMissed = false;
    std::string reason;
};

/// A stretch without readings, in days before the last.
struct Gap {
    int from;
    int to;
    std::optional<record::HourOfDay> hour; ///< none: both hours
    std::string_view reason;               ///< empty: nothing was written down
};
constexpr Gap kGaps[] = {
    {158, 153, std::nullopt, "ill"},
    {71, 70, std::nullopt, "away"},
    {12, 12, 21h, ""},
    {5, 5, 21h, ""},
};

Missed missedAt(const SamplePlan& plan, const Noise& noise, const record::ExpectedHour& due) {
    const auto before = (plan.lastDay - due.hour.date).count();
    for (const Gap& gap : kGaps) {
        if (before <= gap.from && before >= gap.to && (!gap.hour || *gap.hour == due.hour.hour)) {
            return {true, std::string{gap.reason}};
        }
    }
    const auto count = std::chrono::floor<std::chrono::hours>(due.instant.time_since_epoch()).count();
    const double chance = noise.uniform(static_cast<std::uint64_t>(Chance::Missed), count);
    if (chance < 0.004) {
        return {true, "forgotten"};
    }
    return {chance < 0.008, {}};
}

/// Extra readings: at 15 h about once a month, and now and then two hours after the morning's.
std::optional<record::Instant> extraAfter(const Noise& noise, const record::ExpectedHour& due) {
    const auto count = std::chrono::floor<std::chrono::hours>(due.instant.time_since_epoch()).count();
    const double chance = noise.uniform(static_cast<std::uint64_t>(Chance::Extra), count);
    if (due.hour.hour != 9h || chance > 0.045) {
        return std::nullopt;
    }
    return due.instant + (chance < 0.03 ? 6h : 2h);
}

std::string extraNote(const record::Observation& values) {
    return values.dry.value->value.toDouble() > 22.0 ? "Read in the heat of the day."
                                                     : "Read between the hours, for a school class.";
}

SampleRegister readAll(const SamplePlan& plan, const record::StationRecord& station, const Noise& noise) {
    const date::year_month_day lastDay{plan.lastDay};
    date::year_month_day firstDay = lastDay - date::years{plan.years};
    if (!firstDay.ok()) {
        firstDay = firstDay.year() / firstDay.month() / date::last; // 29 February
    }
    const record::StationDate first = record::StationDate{firstDay} - date::days{7 * plan.weeks};
    const record::Instant from{first.time_since_epoch()};
    const record::Instant to{(plan.lastDay + date::days{2}).time_since_epoch()};
    const SampleWeather weather(noise, from, to);
    const SampleObserver observer(station, weather, noise);

    SampleRegister book(plan, station);
    const auto isYetToCome = [&plan](const record::Observation& values) {
        return plan.until && values.instant > *plan.until;
    };
    for (const record::ExpectedHour& due : record::expectedHours(station, first, plan.lastDay)) {
        const Missed missed = missedAt(plan, noise, due);
        if (!missed.isMissed || !missed.reason.empty()) {
            const record::Observation values = missed.isMissed
                                                   ? observer.missed(due.instant, due.hour, missed.reason)
                                                   : observer.read(due.instant, due.hour);
            if (!isYetToCome(values)) {
                book.add(values);
            }
        }
        const auto extra = missed.isMissed ? std::nullopt : extraAfter(noise, due);
        if (extra) {
            record::Observation values = observer.read(*extra, std::nullopt);
            values.note = extraNote(values);
            if (!isYetToCome(values)) {
                book.add(values);
            }
        }
    }
    return book;
}

} // namespace

SampleStation makeSample(const SamplePlan& plan) {
    SampleStation sample;
    sample.facts = sampleFacts(plan);
    const record::StationRecord station(sample.facts);
    const Noise noise(plan.seed);
    SampleRegister book = readAll(plan, station, noise);
    if (plan.slips && book.size() > 0) {
        sample.slips = plantSlips(book);
    }
    addHistory(book);
    sample.observations = std::move(book).take();
    return sample;
}

std::vector<record::StoredObservation> storedObservations(const SampleStation& sample) {
    std::vector<record::StoredObservation> stored;
    stored.reserve(sample.observations.size());
    std::int64_t sequence = 0;
    for (const SampleObservation& observation : sample.observations) {
        sequence += std::ssize(observation.revisions);
        const SampleRevision& newest = observation.revisions.back();
        if (newest.values.withdrawn) {
            continue;
        }
        record::StoredObservation one;
        one.stamp = {sequence, newest.id, observation.subject, newest.recordedAt, newest.author};
        one.revisionCount = static_cast<int>(observation.revisions.size());
        one.values = newest.values;
        stored.push_back(std::move(one));
    }
    return stored;
}

} // namespace wickbook::sample
