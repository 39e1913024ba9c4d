// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/station_record.h"
#include "core/report/month_report.h"
#include "core/units/number_text.h"

#include <functional>
#include <string>
#include <vector>

/// Months made up here, built the way the desk builds them, without a book.

namespace wickbook::ui::test {

using namespace std::chrono_literals;

inline record::StationRecord station(std::vector<record::HourOfDay> hours,
                                     units::TemperatureUnit unit = units::TemperatureUnit::Celsius) {
    record::NewStation made;
    made.name = "Elder Bank";
    made.position = {52.25, -1.5};
    made.elevation = units::Elevation::fromMetres(84);
    made.hours = std::move(hours);
    made.hourRule = record::HourRule::Utc;
    made.invented = true;
    made.unit = unit;
    return record::StationRecord(record::factsOf(made, [] { return record::Uuid::random(); }));
}

inline record::StationDate day(int year, int month, int number) {
    return record::StationDate{date::local_days{date::year{year} / month / number}};
}

/// A reading at every planned hour of the month; change may alter it, or return false to leave it out.
using Change = std::function<bool(record::StoredObservation&)>;
inline report::MonthReport month(
    const record::StationRecord& station, date::year_month month,
    const Change& change = [](record::StoredObservation&) { return true; }) {
    std::vector<record::DerivedReading> series;
    int count = 0;
    for (const record::ExpectedHour& expected : record::expectedHours(
             station, record::StationDate{month / 1}, record::StationDate{month / date::last})) {
        record::StoredObservation stored;
        stored.stamp.subject = record::Uuid::fromSeed(7, static_cast<std::uint64_t>(count));
        record::placeInTime(stored.values, station, expected.instant);
        const double dry = 12.0 + (count * 7 % 11) * 0.3;
        const double wet = dry - 2.0 - (count * 5 % 7) * 0.1;
        stored.values.dry.value = units::ReadTemperature{*units::parseDecimal(units::fixedText(dry, 1)),
                                                         units::TemperatureUnit::Celsius};
        stored.values.wet.value = units::ReadTemperature{*units::parseDecimal(units::fixedText(wet, 1)),
                                                         units::TemperatureUnit::Celsius};
        stored.values.wick = record::WickState::Water;
        ++count;
        if (change(stored)) {
            series.push_back(record::deriveReading(std::move(stored), station));
        }
    }
    return report::buildMonthReport(station, month, series, checks::Limits{}, std::nullopt);
}

} // namespace wickbook::ui::test
