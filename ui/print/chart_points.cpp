// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/chart_points.h"

#include <algorithm>
#include <map>

namespace wickbook::ui {

namespace {

PointMark markOf(const checks::CheckedReading& checked) {
    const record::Observation& values = checked.reading.values();
    if (values.quality == record::Quality::Erroneous) {
        return PointMark::Erroneous;
    }
    const bool marked =
        values.quality == record::Quality::NotJudged &&
        std::any_of(checked.findings.begin(), checked.findings.end(),
                    [](const auto& finding) { return finding.severity >= checks::Severity::Erroneous; });
    if (marked) {
        return PointMark::Erroneous;
    }
    return checked.leftOut ? PointMark::Doubtful : PointMark::Kept;
}

record::ObservingHour placeOf(const record::Observation& values) {
    if (values.hour) {
        return *values.hour;
    }
    const record::LocalTime local{(values.instant + values.offset).time_since_epoch()};
    const auto day = date::floor<date::days>(local);
    return {day, std::chrono::floor<std::chrono::minutes>(local - day)};
}

ChartPoint pointOf(const checks::CheckedReading& checked) {
    const record::DerivedReading& reading = checked.reading;
    ChartPoint point;
    point.hour = placeOf(reading.values());
    point.instant = reading.values().instant;
    point.mark = markOf(checked);
    point.humidity = reading.humidityPercent();
    point.dewPoint = reading.dewPointCelsius();
    point.vapourPressure = reading.vapourPressureHectopascals();
    if (reading.dry.temperature) {
        point.dry = reading.dry.temperature->celsius();
    }
    if (reading.wet.temperature) {
        point.wet = reading.wet.temperature->celsius();
    }
    if (point.humidity && reading.derivation && reading.derivation->uncertainty) {
        const psychrometry::HumidityUncertainty& budget = *reading.derivation->uncertainty;
        point.humidityU95 = budget.relativeHumidityU95;
        point.dewPointU95 = budget.dewPointU95;
    }
    return point;
}

/// Whether two moments belong to one unbroken series: same place, same exposure, or joined.
bool sameSeries(const record::StationRecord& station, record::Instant a, record::Instant b) {
    return station.periodAt(a).series == station.periodAt(b).series;
}

/// Appends to the run that is open, or opens one.
void put(HourLine& line, ChartPoint point, bool& open, const record::StationRecord& station) {
    if (open && !sameSeries(station, line.runs.back().back().instant, point.instant)) {
        open = false;
    }
    if (!open) {
        line.runs.emplace_back();
        open = true;
    }
    line.runs.back().push_back(std::move(point));
}

void addStationEvents(std::vector<ChartEvent>& events, const record::StationRecord& station,
                      record::Instant begin, record::Instant end) {
    const auto within = [&](const std::optional<record::Instant>& from) {
        return from && *from >= begin && *from <= end;
    };
    const auto periods = station.periods();
    for (std::size_t i = 1; i < periods.size(); ++i) {
        if (within(periods[i].from) && !(periods[i].position == periods[i - 1].position &&
                                         periods[i].elevation == periods[i - 1].elevation &&
                                         periods[i].exposure == periods[i - 1].exposure &&
                                         periods[i].ownCoefficient == periods[i - 1].ownCoefficient)) {
            events.push_back({*periods[i].from, ChartEvent::Kind::StationChanged});
        }
    }
    for (const record::Fitting& fitting : station.facts().fittings) {
        if (!fitting.withdrawn && within(fitting.from)) {
            events.push_back({*fitting.from, ChartEvent::Kind::InstrumentsChanged});
        }
    }
    for (const record::Correction& correction : station.facts().corrections) {
        if (!correction.withdrawn && within(correction.from)) {
            events.push_back({*correction.from, ChartEvent::Kind::InstrumentsChanged});
        }
    }
    for (const record::DiaryEntry& entry : station.facts().diary) {
        const std::optional<record::Instant> day = record::startOfDate(entry.date, station);
        // A yearly photograph changes nothing; moving the screen does, though it is no new place.
        if (!entry.withdrawn && within(day) && entry.kind != record::DiaryKind::Photograph) {
            events.push_back({*day, entry.kind == record::DiaryKind::NewWick ? ChartEvent::Kind::WickChanged
                                                                             : ChartEvent::Kind::Diary});
        }
    }
}

} // namespace

bool ChartPoints::empty() const {
    return extras.empty() && std::all_of(hours.begin(), hours.end(), [](const HourLine& line) {
               return line.runs.empty() && line.aside.empty();
           });
}

std::span<const ChartPoint> pointsWithin(const std::vector<ChartPoint>& points, record::Instant from,
                                         record::Instant to) {
    const auto first = std::lower_bound(
        points.begin(), points.end(), from,
        [](const ChartPoint& point, record::Instant instant) { return point.instant < instant; });
    const auto last =
        std::upper_bound(first, points.end(), to, [](record::Instant instant, const ChartPoint& point) {
            return instant < point.instant;
        });
    return {first, last};
}

const ChartPoint* ChartPoints::at(record::Instant instant) const {
    const auto in = [instant](const std::vector<ChartPoint>& points) -> const ChartPoint* {
        const auto found = pointsWithin(points, instant, instant);
        return found.empty() ? nullptr : &found.front();
    };
    for (const HourLine& line : hours) {
        for (const auto& run : line.runs) {
            if (instant < run.front().instant || instant > run.back().instant) {
                continue;
            }
            if (const ChartPoint* point = in(run)) {
                return point;
            }
        }
        if (const ChartPoint* point = in(line.aside)) {
            return point;
        }
    }
    return in(extras);
}

std::vector<const ChartPoint*> ChartPoints::inTimeOrder() const {
    std::vector<const ChartPoint*> all;
    for (const HourLine& line : hours) {
        for (const auto& run : line.runs) {
            for (const ChartPoint& point : run) {
                all.push_back(&point);
            }
        }
        for (const ChartPoint& point : line.aside) {
            all.push_back(&point);
        }
    }
    for (const ChartPoint& point : extras) {
        all.push_back(&point);
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const ChartPoint* a, const ChartPoint* b) { return a->instant < b->instant; });
    return all;
}

ChartPoints chartPoints(std::span<const checks::CheckedReading> readings,
                        const record::StationRecord& station, record::StationDate from,
                        record::StationDate to) {
    ChartPoints points;
    points.from = from;
    points.to = to;

    std::multimap<record::ObservingHour, const checks::CheckedReading*> byHour;
    std::vector<const checks::CheckedReading*> unplaced;
    for (const checks::CheckedReading& checked : readings) {
        const record::Observation& values = checked.reading.values();
        if (values.withdrawn) {
            continue;
        }
        if (values.wickCare == record::WickCare::Changed) {
            points.events.push_back({values.instant, ChartEvent::Kind::WickChanged});
        }
        if (values.hour) {
            byHour.emplace(*values.hour, &checked);
        } else {
            unplaced.push_back(&checked);
        }
    }

    struct Building {
        HourLine line;
        bool open = false;
    };
    std::map<record::HourOfDay, Building> lines;
    for (const record::ExpectedHour& expected : record::expectedHours(station, from, to)) {
        Building& building = lines[expected.hour.hour];
        building.line.hour = expected.hour.hour;
        const auto [first, last] = byHour.equal_range(expected.hour);
        bool kept = false;
        for (auto found = first; found != last; ++found) {
            ChartPoint point = pointOf(*found->second);
            if (!point.humidity) {
                continue;
            }
            if (point.mark == PointMark::Kept && !kept) {
                kept = true;
                put(building.line, std::move(point), building.open, station);
            } else if (point.mark == PointMark::Kept) {
                points.extras.push_back(std::move(point));
            } else {
                building.line.aside.push_back(std::move(point));
            }
        }
        if (!kept) {
            building.open = false;
        }
        byHour.erase(first, last);
    }
    for (const auto& [hour, checked] : byHour) {
        unplaced.push_back(checked); // an hour the plan does not hold
    }
    for (const checks::CheckedReading* checked : unplaced) {
        if (ChartPoint point = pointOf(*checked); point.humidity) {
            points.extras.push_back(std::move(point));
        }
    }
    const auto inOrder = [](std::vector<ChartPoint>& some) {
        std::stable_sort(some.begin(), some.end(),
                         [](const ChartPoint& a, const ChartPoint& b) { return a.instant < b.instant; });
    };
    inOrder(points.extras);
    for (auto& [hour, building] : lines) {
        inOrder(building.line.aside);
        for (std::vector<ChartPoint>& run : building.line.runs) {
            inOrder(run);
            run.shrink_to_fit(); // grown by doubling, and kept for as long as the book is open
        }
        points.hours.push_back(std::move(building.line));
    }
    if (!readings.empty()) {
        addStationEvents(points.events, station, readings.front().reading.values().instant,
                         readings.back().reading.values().instant);
    }
    std::sort(points.events.begin(), points.events.end(),
              [](const ChartEvent& a, const ChartEvent& b) { return a.instant < b.instant; });
    return points;
}

} // namespace wickbook::ui
