// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/station_record.h"

#include <algorithm>
#include <array>

namespace wickbook::record {

namespace {

constexpr std::array<std::string_view, 3> kHourRules{"utc", "standard", "clock"};

/// Lays what a change names over the facts in force.
void layOver(StationPeriod& period, const PeriodChange& change) {
    if (change.position) {
        period.position = *change.position;
    }
    if (change.elevation) {
        period.elevation = *change.elevation;
    }
    if (change.zone) {
        // A zone that this system's database doesn't know leaves the one in force; opening tells of it.
        period.zone = Zone::named(*change.zone).value_or(period.zone);
    }
    if (change.hours) {
        period.hours = *change.hours;
        std::sort(period.hours.begin(), period.hours.end());
    }
    if (change.hourRule) {
        period.hourRule = *change.hourRule;
    }
    if (change.exposure) {
        period.exposure = *change.exposure;
    }
    if (change.ownCoefficient) {
        period.ownCoefficient = change.ownCoefficient;
    }
    if (change.meanPressure) {
        period.meanPressure = *change.meanPressure > 0 ? change.meanPressure : std::nullopt;
    }
    if (change.surroundings) {
        period.surroundings = *change.surroundings;
    }
}

/// The newest of the live entries that began at or before the moment; entries without a from come first.
template <typename Entry, typename Wanted>
const Entry* inForce(const std::vector<Entry>& entries, Instant instant, Wanted wanted) {
    const Entry* best = nullptr;
    for (const Entry& entry : entries) {
        if (entry.withdrawn || !wanted(entry) || (entry.from && *entry.from > instant)) {
            continue;
        }
        const bool later = best == nullptr || !best->from || (entry.from && *entry.from >= *best->from);
        if (later) {
            best = &entry;
        }
    }
    return best;
}

} // namespace

std::string_view hourRuleName(HourRule rule) {
    return kHourRules.at(static_cast<std::size_t>(rule));
}

std::optional<HourRule> hourRuleFromName(std::string_view name) {
    const auto found = std::find(kHourRules.begin(), kHourRules.end(), name);
    if (found == kHourRules.end()) {
        return std::nullopt;
    }
    return static_cast<HourRule>(found - kHourRules.begin());
}

namespace {

bool alike(const StationPeriod& a, const StationPeriod& b) {
    return a.position == b.position && a.elevation == b.elevation && a.exposure == b.exposure;
}

/// Numbers the series: a place and exposure that was there before takes up its old series again.
void numberSeries(std::vector<StationPeriod>& periods, const std::vector<bool>& joined) {
    int next = 0;
    for (std::size_t i = 0; i < periods.size(); ++i) {
        const auto before =
            std::find_if(periods.begin(), periods.begin() + static_cast<std::ptrdiff_t>(i),
                         [&](const StationPeriod& earlier) { return alike(earlier, periods[i]); });
        if (before != periods.begin() + static_cast<std::ptrdiff_t>(i)) {
            periods[i].series = before->series;
        } else if (i > 0 && joined[i]) {
            periods[i].series = periods[i - 1].series;
        } else {
            periods[i].series = next++;
        }
    }
}

} // namespace

StationRecord::StationRecord(StationFacts facts) : facts_(std::move(facts)) {
    std::vector<const PeriodChange*> changes;
    for (const PeriodChange& change : facts_.periods) {
        if (!change.withdrawn) {
            changes.push_back(&change);
        }
    }
    // Stable: of two changes from the same moment the one entered later has the last word.
    std::stable_sort(changes.begin(), changes.end(), [](const PeriodChange* a, const PeriodChange* b) {
        return a->from.has_value() != b->from.has_value() ? !a->from.has_value()
                                                          : a->from && *a->from < *b->from;
    });
    StationPeriod current;
    std::vector<bool> joined{false}; // of each period, the current one last
    for (const PeriodChange* change : changes) {
        if (change->from && change->from != current.from) {
            StationPeriod ended = current;
            ended.to = change->from;
            periods_.push_back(std::move(ended));
            current.from = change->from;
            joined.push_back(false);
        }
        joined.back() = joined.back() || change->joined;
        layOver(current, *change);
    }
    periods_.push_back(std::move(current));
    numberSeries(periods_, joined);
}

const StationPeriod& StationRecord::periodAt(Instant instant) const {
    const auto after = std::upper_bound(
        periods_.begin(), periods_.end(), instant,
        [](Instant moment, const StationPeriod& period) { return period.from && moment < *period.from; });
    return after == periods_.begin() ? periods_.front() : *std::prev(after);
}

const Thermometer* StationRecord::thermometer(const Uuid& id) const {
    const auto found = std::find_if(facts_.thermometers.begin(), facts_.thermometers.end(),
                                    [&](const Thermometer& candidate) { return candidate.id == id; });
    return found == facts_.thermometers.end() ? nullptr : &*found;
}

const Thermometer* StationRecord::dryThermometerAt(Instant instant) const {
    const Fitting* fitting = inForce(facts_.fittings, instant, [](const Fitting&) { return true; });
    return fitting == nullptr ? nullptr : thermometer(fitting->dry);
}

const Thermometer* StationRecord::wetThermometerAt(Instant instant) const {
    const Fitting* fitting = inForce(facts_.fittings, instant, [](const Fitting&) { return true; });
    return fitting == nullptr ? nullptr : thermometer(fitting->wet);
}

const Correction* StationRecord::correctionAt(const Uuid& thermometer, Instant instant) const {
    return inForce(facts_.corrections, instant,
                   [&](const Correction& correction) { return correction.thermometer == thermometer; });
}

double correctionAtReading(const Correction& correction, double reading) {
    if (correction.points.empty()) {
        return 0.0;
    }
    std::vector<CorrectionPoint> points = correction.points;
    std::sort(points.begin(), points.end(),
              [](const auto& a, const auto& b) { return a.reading < b.reading; });
    if (reading <= points.front().reading) {
        return points.front().correction;
    }
    for (std::size_t i = 1; i < points.size(); ++i) {
        const CorrectionPoint& low = points[i - 1];
        const CorrectionPoint& high = points[i];
        if (reading <= high.reading) {
            const double width = high.reading - low.reading;
            return width > 0
                       ? low.correction + (high.correction - low.correction) * (reading - low.reading) / width
                       : high.correction;
        }
    }
    return points.back().correction;
}

StationFacts factsOf(const NewStation& station, const std::function<Uuid()>& nextId) {
    StationFacts facts;
    facts.id = nextId();
    facts.name = station.name;
    facts.invented = station.invented;

    PeriodChange beginning;
    beginning.id = nextId();
    beginning.position = station.position;
    beginning.elevation = station.elevation;
    beginning.zone = station.zone;
    beginning.hours = station.hours;
    beginning.hourRule = station.hourRule;
    beginning.exposure = station.exposure;
    facts.periods.push_back(beginning);

    for (const char* name : {"dry", "wet"}) {
        Thermometer thermometer;
        thermometer.id = nextId();
        thermometer.name = name;
        thermometer.unit = station.unit;
        thermometer.step = station.step;
        thermometer.lowestMark = station.lowestMark;
        thermometer.highestMark = station.highestMark;
        facts.thermometers.push_back(thermometer);
    }
    Fitting fitting;
    fitting.id = nextId();
    fitting.dry = facts.thermometers[0].id;
    fitting.wet = facts.thermometers[1].id;
    facts.fittings.push_back(fitting);
    return facts;
}

Instant startOfDate(StationDate date, const Zone& zone) {
    const ResolvedTime resolved = resolveLocal(zone, LocalTime{date});
    if (const auto* unique = std::get_if<UniqueTime>(&resolved)) {
        return unique->instant;
    }
    if (const auto* twice = std::get_if<DoubleTime>(&resolved)) {
        return twice->first;
    }
    return std::get<ImpossibleTime>(resolved).jump; // the day begins when the clock has jumped over midnight
}

Instant startOfDate(StationDate date, const StationRecord& station) {
    // The zone may itself change about that date: ask for the one at the moment found, once more.
    const Instant guess =
        startOfDate(date, station.periodAt(Instant{LocalTime{date}.time_since_epoch()}).zone);
    return startOfDate(date, station.periodAt(guess).zone);
}

} // namespace wickbook::record
