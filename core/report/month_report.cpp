// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/month_report.h"

#include "core/climate/quantile.h"

#include <algorithm>
#include <map>

namespace wickbook::report {

namespace {

bool isFiledUnder(const record::DerivedReading& reading, date::year_month month) {
    const date::year_month_day filed{record::filedDate(reading.values())};
    return filed.year() == month.year() && filed.month() == month.month() && !reading.values().withdrawn;
}

/// Checks the stretch of the series that holds the month and keeps what is filed under it: an hour near
/// midnight may be read on the other side of the month's edge.
std::vector<checks::CheckedReading> checkedMonth(std::span<const record::DerivedReading> series,
                                                 const record::StationRecord& station, date::year_month month,
                                                 const checks::StationLimits& limits,
                                                 std::optional<record::Instant> now,
                                                 const checks::StationModel* model, checks::Slips slips) {
    const auto inMonth = [month](const record::DerivedReading& reading) {
        return isFiledUnder(reading, month);
    };
    const auto first = std::find_if(series.begin(), series.end(), inMonth);
    if (first == series.end()) {
        return {};
    }
    const auto pastLast = std::find_if(series.rbegin(), series.rend(), inMonth).base();
    auto checked = checks::checkSeries(series, static_cast<std::size_t>(first - series.begin()),
                                       static_cast<std::size_t>(pastLast - first), station, limits, now, {},
                                       model, slips);
    std::erase_if(checked, [month](const checks::CheckedReading& reading) {
        return !isFiledUnder(reading.reading, month);
    });
    return checked;
}

record::ObservingHour clockHourOf(const record::Observation& values) {
    if (values.hour) {
        return *values.hour;
    }
    const record::LocalTime local{values.instant.time_since_epoch() + values.offset};
    const auto day = date::floor<date::days>(local);
    return {day, std::chrono::floor<std::chrono::minutes>(local - day)};
}

/// A line and where it stands among the others.
struct PlacedLine {
    record::Instant place;
    MonthLine line;
};

MonthLine plannedLine(const record::ExpectedHour& expected, const checks::CheckedReading* reading,
                      std::optional<record::Instant> dueUntil) {
    MonthLine line;
    line.hour = expected.hour;
    line.instant = reading == nullptr ? expected.instant : reading->reading.values().instant;
    line.toCome = reading == nullptr && dueUntil && expected.instant > *dueUntil;
    line.reading = reading;
    return line;
}

std::vector<MonthLine> linesOf(const record::StationRecord& station, date::year_month month,
                               const std::vector<checks::CheckedReading>& readings,
                               const std::vector<climate::MonthEntry>& entries,
                               std::optional<record::Instant> dueUntil) {
    const auto chosen = climate::entriesByHour(entries);
    std::vector<bool> placed(readings.size(), false);
    std::vector<PlacedLine> lines;
    for (const record::ExpectedHour& expected : record::expectedHours(
             station, record::StationDate{month / 1}, record::StationDate{month / date::last})) {
        const checks::CheckedReading* reading = nullptr;
        if (const auto found = chosen.find(expected.hour); found != chosen.end()) {
            const auto index = static_cast<std::size_t>(found->second - entries.data());
            reading = &readings[index];
            placed[index] = true;
        }
        MonthLine line = plannedLine(expected, reading, dueUntil);
        if (const auto* absence = record::absenceExplaining(station.facts().absences, expected.hour.date);
            absence != nullptr && reading == nullptr && !line.toCome) {
            line.excuse = absence->reason;
        }
        lines.push_back({expected.instant, std::move(line)});
    }
    for (std::size_t i = 0; i < readings.size(); ++i) {
        if (placed[i]) {
            continue;
        }
        const record::Observation& values = readings[i].reading.values();
        MonthLine line;
        line.hour = clockHourOf(values);
        line.extra = true;
        line.instant = values.instant;
        line.reading = &readings[i];
        lines.push_back({values.instant, line});
    }
    std::stable_sort(lines.begin(), lines.end(),
                     [](const PlacedLine& a, const PlacedLine& b) { return a.place < b.place; });
    std::vector<MonthLine> result;
    result.reserve(lines.size());
    for (const PlacedLine& placedLine : lines) {
        result.push_back(placedLine.line);
    }
    return result;
}

bool isOpenQuery(const checks::CheckedReading& checked) {
    const record::Observation& values = checked.reading.values();
    return values.quality == record::Quality::NotJudged && values.origin != record::Origin::Missing &&
           std::any_of(checked.findings.begin(), checked.findings.end(),
                       [](const checks::Finding& finding) { return checks::setsAside(finding.severity); });
}

void countAndMeasure(MonthReport& report) {
    std::vector<double> humidity;
    std::vector<double> dewPoint;
    for (const checks::CheckedReading& checked : report.readings) {
        report.corrected += checked.reading.stored.revisionCount > 1 ? 1 : 0;
        report.openQueries += isOpenQuery(checked) ? 1 : 0;
        const auto& derivation = checked.reading.derivation;
        if (checked.leftOut || !derivation || !derivation->uncertainty) {
            continue;
        }
        if (derivation->relativeHumidity) {
            humidity.push_back(derivation->uncertainty->relativeHumidityU95);
        }
        if (derivation->dewPoint && derivation->uncertainty->dewPointU95) {
            dewPoint.push_back(*derivation->uncertainty->dewPointU95);
        }
    }
    report.typicalHumidityU95 = climate::median(std::move(humidity));
    report.typicalDewPointU95 = climate::median(std::move(dewPoint));
}

} // namespace

MonthReport::MonthReport(const MonthReport& other)
    : station(other.station)
    , month(other.month)
    , readings(other.readings)
    , lines(other.lines)
    , options(other.options)
    , summary(other.summary)
    , corrected(other.corrected)
    , openQueries(other.openQueries)
    , typicalHumidityU95(other.typicalHumidityU95)
    , typicalDewPointU95(other.typicalDewPointU95)
    , signedOff(other.signedOff)
    , ownYears(other.ownYears) {
    for (MonthLine& line : lines) {
        if (line.reading != nullptr) {
            line.reading = readings.data() + (line.reading - other.readings.data());
        }
    }
}

MonthReport& MonthReport::operator=(const MonthReport& other) {
    if (this != &other) {
        *this = MonthReport(other);
    }
    return *this;
}

climate::MonthOptions monthOptions(const checks::StationLimits& limits, date::year_month month) {
    const checks::Limits& now = limits.at(record::Instant{record::StationDate{month / 1}.time_since_epoch()});
    climate::MonthOptions options;
    options.completeness = {static_cast<int>(now.value("month.days-missing")),
                            static_cast<int>(now.value("month.days-in-a-row"))};
    options.highThreshold = now.value("month.damp-day");
    options.lowThreshold = now.value("month.dry-day");
    return options;
}

MonthReport buildMonthReport(const record::StationRecord& station, date::year_month month,
                             std::span<const record::DerivedReading> series,
                             const checks::StationLimits& limits, std::optional<record::Instant> now,
                             const climate::MonthOptions& options, const checks::StationModel* model,
                             checks::Slips slips) {
    MonthReport report;
    report.station = station;
    report.month = month;
    report.readings = checkedMonth(series, station, month, limits, now, model, slips);

    std::vector<climate::MonthEntry> entries;
    entries.reserve(report.readings.size());
    for (const checks::CheckedReading& checked : report.readings) {
        entries.push_back({&checked.reading, checked.leftOut});
    }
    climate::MonthOptions due = options;
    if (!due.dueUntil) {
        due.dueUntil = now;
    }
    report.options = due;
    report.summary = climate::summariseMonth(station, month, entries, due);
    report.lines = linesOf(station, month, report.readings, entries, due.dueUntil);
    countAndMeasure(report);
    report.signedOff = signedMonth(report);
    return report;
}

} // namespace wickbook::report
