// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/blank_month.h"

namespace wickbook::report {

namespace {

constexpr const char* kFields[] = {"date", "hour",    "clock", "dry",      "wet",
                                   "wick", "weather", "wind",  "observer", "note"};

bool readsTenths(const record::Thermometer* thermometer) {
    return thermometer == nullptr || thermometer->step.toDouble() < 1;
}

} // namespace

BlankMonth blankMonth(const record::StationRecord& station, date::year_month month) {
    BlankMonth blank;
    blank.station = station;
    blank.month = month;
    blank.lines = record::expectedHours(station, record::StationDate{month / 1},
                                        record::StationDate{month / date::last});
    const record::Instant middle{record::StationDate{month / 15}.time_since_epoch()};
    const record::Thermometer* dry = station.dryThermometerAt(middle);
    const record::Thermometer* wet = station.wetThermometerAt(middle);
    blank.dryUnit = dry == nullptr ? units::TemperatureUnit::Celsius : dry->unit;
    blank.wetUnit = wet == nullptr ? blank.dryUnit : wet->unit;
    blank.dryTenths = readsTenths(dry);
    blank.wetTenths = readsTenths(wet);
    const psychrometry::Exposure exposure = station.periodAt(middle).exposure;
    blank.whirled =
        exposure == psychrometry::Exposure::Whirled || exposure == psychrometry::Exposure::SlingUs;
    return blank;
}

std::vector<std::string> blankMonthHeader() {
    return {std::begin(kFields), std::end(kFields)};
}

std::vector<std::vector<std::string>> blankMonthRows(const BlankMonth& month) {
    std::vector<std::vector<std::string>> rows;
    for (const record::ExpectedHour& line : month.lines) {
        std::vector<std::string> row(std::size(kFields));
        row[0] = record::dateText(line.hour.date);
        row[1] = record::hourText(line.hour.hour);
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace wickbook::report
