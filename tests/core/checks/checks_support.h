// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/check_series.h"
#include "core/record/observing_hours.h"
#include "core/units/number_text.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

/// An invented station and a register page to write readings on, for the stories the rules are told.

namespace wickbook::checks::test {

using psychrometry::Exposure;
using record::WickState;

struct StationChoice {
    double latitude = 50;
    double elevation = 100;
    Exposure exposure = Exposure::Screen;
    units::Decimal step{1, 1};
};

inline record::StationRecord makeStation(const StationChoice& choice = {}) {
    record::NewStation station;
    station.name = "Invented";
    station.position = {choice.latitude, 8.0};
    station.elevation = units::Elevation::fromMetres(choice.elevation);
    station.zone = "UTC";
    for (const int hour : {7, 14, 21}) {
        station.hours.emplace_back(std::chrono::hours{hour});
    }
    station.hourRule = record::HourRule::Utc;
    station.exposure = choice.exposure;
    station.step = choice.step;
    std::uint64_t counter = 0;
    return record::StationRecord{
        record::factsOf(station, [&counter] { return record::Uuid::fromSeed(7, ++counter); })};
}

/// What may stand beside a pair.
struct Beside {
    WickState wick = WickState::NotGiven;
    std::string weather{}; ///< "" nothing noted
    std::string pressure{};
    std::string maximum{};
    std::string minimum{};
    std::vector<std::string> repeatedWets{};
    record::Quality quality = record::Quality::NotJudged;
    record::Origin origin = record::Origin::Observed;
};

inline units::ReadTemperature celsius(const std::string& text) {
    return {units::parseDecimal(text).value(), units::TemperatureUnit::Celsius};
}

/// One page: readings in time order at one station.
class Page {
public:
    explicit Page(const StationChoice& choice = {}) : station_(makeStation(choice)) {}

    /// An empty text is a bulb not read.
    Page& write(const std::string& time, const std::string& dry, const std::string& wet,
                const Beside& beside = {}) {
        record::Observation values;
        const auto written = record::parseTime(time).value();
        record::placeInTime(values, station_,
                            record::Instant{written.local.time_since_epoch()}); // the zone is UTC
        if (!dry.empty()) {
            values.dry.value = celsius(dry);
        }
        if (!wet.empty()) {
            values.wet.value = celsius(wet);
        }
        values.wick = beside.wick;
        if (!beside.weather.empty()) {
            values.weather = record::WeatherSet::fromText(beside.weather).value();
        }
        if (!beside.pressure.empty()) {
            values.pressure = units::parseDecimal(beside.pressure).value();
        }
        if (!beside.maximum.empty()) {
            values.maximum = celsius(beside.maximum);
        }
        if (!beside.minimum.empty()) {
            values.minimum = celsius(beside.minimum);
        }
        for (const auto& wetAgain : beside.repeatedWets) {
            values.repeats.push_back({celsius(wetAgain), std::nullopt});
        }
        values.quality = beside.quality;
        values.origin = beside.origin;
        series_.push_back(record::deriveReading(values, station_));
        return *this;
    }

    [[nodiscard]] std::vector<CheckedReading> check(std::optional<record::Instant> now = {}) const {
        return checkSeries(series_, 0, series_.size(), station_, StationLimits{station_.facts().limits}, now);
    }
    /// Findings of the last reading written.
    [[nodiscard]] std::vector<Finding> last(std::optional<record::Instant> now = {}) const {
        return check(now).back().findings;
    }
    [[nodiscard]] const record::StationRecord& station() const { return station_; }
    [[nodiscard]] const std::vector<record::DerivedReading>& series() const { return series_; }

private:
    record::StationRecord station_;
    std::vector<record::DerivedReading> series_;
};

inline const Finding* find(const std::vector<Finding>& findings, std::string_view code) {
    const auto it = std::find_if(findings.begin(), findings.end(),
                                 [&](const Finding& finding) { return finding.code == code; });
    return it == findings.end() ? nullptr : &*it;
}

inline bool has(const std::vector<Finding>& findings, std::string_view code) {
    return find(findings, code) != nullptr;
}

inline std::string codes(const std::vector<Finding>& findings) {
    std::string text;
    for (const Finding& finding : findings) {
        text += std::string{finding.code} + ' ';
    }
    return text;
}

inline std::optional<Severity> severityOf(const std::vector<Finding>& findings, std::string_view code) {
    const Finding* finding = find(findings, code);
    return finding != nullptr ? std::optional{finding->severity} : std::nullopt;
}

} // namespace wickbook::checks::test
