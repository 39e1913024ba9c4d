// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/climate/month_summary.h"
#include "core/record/station_record.h"

#include <chrono>
#include <deque>
#include <string>
#include <vector>

/// Small months built through the real record room: a station at sea level (1013.25 hPa), whirled, tenths.

namespace wickbook::climate::testing {

using namespace std::chrono_literals;
using namespace date::literals;

inline record::StationFacts stationFacts(std::vector<record::HourOfDay> hours = {9h, 21h},
                                         const std::string& zone = "UTC",
                                         record::HourRule rule = record::HourRule::Clock) {
    record::NewStation station;
    station.name = "Testfield";
    station.zone = zone;
    station.hours = std::move(hours);
    station.hourRule = rule;
    station.exposure = psychrometry::Exposure::Whirled;
    std::uint64_t counter = 0;
    return record::factsOf(station, [&counter] { return record::Uuid::fromSeed(1, ++counter); });
}

inline record::BulbReading bulb(double celsius) {
    return {units::ReadTemperature{units::roundedDecimal(celsius, 1), units::TemperatureUnit::Celsius},
            false};
}

/// Readings of a month; the deque keeps their addresses.
class MonthBuilder {
public:
    explicit MonthBuilder(record::StationFacts facts = stationFacts()) : station_(std::move(facts)) {}

    /// A pair at a nominal hour, read on the hour. Water wick unless said.
    record::Observation& add(date::year_month_day day, record::HourOfDay hour, double dry, double wet,
                             bool setAside = false) {
        record::Observation values;
        values.hour = record::ObservingHour{record::StationDate{day}, hour};
        values.instant = record::momentOf(station_, *values.hour)
                             .value_or(record::Instant{record::StationDate{day}.time_since_epoch() + hour});
        values.zone = station_.periodAt(values.instant).zone.name();
        values.offset = station_.periodAt(values.instant).zone.offsetAt(values.instant);
        values.dry = bulb(dry);
        values.wet = bulb(wet);
        values.wick = record::WickState::Water;
        return add(values, setAside);
    }
    record::Observation& add(const record::Observation& values, bool setAside = false) {
        observations_.push_back(values);
        aside_.push_back(setAside);
        return observations_.back();
    }

    /// Derives what stands now and summarises. Order of entries as added.
    MonthSummary summary(date::year_month month, const MonthOptions& options = {}) {
        readings_.clear();
        entries_.clear();
        for (std::size_t i = 0; i < observations_.size(); ++i) {
            readings_.push_back(record::deriveReading(observations_[i], station_));
            entries_.push_back({&readings_.back(), aside_[i]});
        }
        return summariseMonth(station_, month, entries_, options);
    }

    [[nodiscard]] const record::StationRecord& station() const { return station_; }
    [[nodiscard]] const std::deque<record::DerivedReading>& readings() const { return readings_; }

private:
    record::StationRecord station_;
    std::deque<record::Observation> observations_;
    std::vector<bool> aside_;
    std::deque<record::DerivedReading> readings_;
    std::vector<MonthEntry> entries_;
};

} // namespace wickbook::climate::testing
