// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/climate/station_average.h"

#include "core/climate/quantile.h"

#include <numeric>
#include <set>

namespace wickbook::climate {

namespace {

double mean(const std::vector<double>& values) {
    return std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
}

} // namespace

std::optional<StationAverage> stationAverage(std::span<const record::DerivedReading* const> readings,
                                             int fewestYears) {
    std::set<date::year> years;
    std::vector<double> temperatures;
    std::vector<double> dewPoints;
    std::vector<double> humidities;
    for (const record::DerivedReading* reading : readings) {
        if (reading == nullptr) {
            continue;
        }
        const auto humidity = reading->humidityPercent();
        const auto dewPoint = reading->dewPointCelsius();
        if (!humidity || !dewPoint || !reading->dry.temperature) {
            continue;
        }
        years.insert(date::year_month_day{record::filedDate(reading->values())}.year());
        temperatures.push_back(reading->dry.temperature->celsius());
        dewPoints.push_back(*dewPoint);
        humidities.push_back(*humidity);
    }
    if (years.empty() || static_cast<int>(years.size()) < fewestYears) {
        return std::nullopt;
    }

    StationAverage average;
    average.years = static_cast<int>(years.size());
    average.readings = static_cast<int>(humidities.size());
    average.meanHumidity = mean(humidities);
    average.meanDewPoint = mean(dewPoints);
    // Not empty, so every quantile is there.
    average.lowerQuartileTemperature = *quantile(temperatures, 0.25);
    average.medianTemperature = *quantile(temperatures, 0.5);
    average.upperQuartileTemperature = *quantile(temperatures, 0.75);
    average.lowerQuartileDewPoint = *quantile(dewPoints, 0.25);
    average.medianDewPoint = *quantile(dewPoints, 0.5);
    average.upperQuartileDewPoint = *quantile(dewPoints, 0.75);
    average.lowerQuartileHumidity = *quantile(humidities, 0.25);
    average.medianHumidity = *quantile(humidities, 0.5);
    average.upperQuartileHumidity = *quantile(humidities, 0.75);
    return average;
}

} // namespace wickbook::climate
