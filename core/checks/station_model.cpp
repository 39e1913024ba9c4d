// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/station_model.h"

#include "core/checks/neighbour_weights.h"
#include "core/checks/rule_support.h"
#include "core/checks/station_clock.h"

#include <algorithm>
#include <cmath>

namespace wickbook::checks {

namespace {

constexpr std::size_t kLargestSample = 12000;
constexpr double kFarthestHours = 60; // a neighbour further away knows next to nothing
constexpr std::size_t kEachWay = kMostNeighbours / 2;
constexpr double kOutOfLine = 3.5; // spreads from the middle of the neighbours: a slip itself
constexpr int kYearsForAverage = 3;

/// The neighbours that may speak: sound, near, up to four each way.
template <typename Take>
void eachNeighbour(const record::DerivedReading& reading, std::span<const record::DerivedReading> before,
                   std::span<const record::DerivedReading> after, Take take) {
    std::size_t taken = 0;
    for (auto it = before.rbegin(); it != before.rend() && taken < kEachWay; ++it) {
        const double hours = hoursBetween(*it, reading);
        if (hours > kFarthestHours) {
            break;
        }
        if (hours > 0 && isSoundNeighbour(*it) && it->dewPointCelsius() && take(*it)) {
            ++taken;
        }
    }
    taken = 0;
    for (const auto& neighbour : after) {
        const double hours = hoursBetween(reading, neighbour);
        if (hours > kFarthestHours || taken == kEachWay) {
            break;
        }
        if (hours > 0 && isSoundNeighbour(neighbour) && neighbour.dewPointCelsius() && take(neighbour)) {
            ++taken;
        }
    }
}

double median(std::vector<double> values) {
    const auto half = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), half, values.end());
    return *half;
}

/// Takes out the neighbours far from the middle of all: slips must not speak for others.
void dropOutOfLine(std::vector<NeighbourDeparture>& departures) {
    if (departures.size() < 3) {
        return;
    }
    std::vector<double> temperatures;
    std::vector<double> dewPoints;
    for (const auto& departure : departures) {
        temperatures.push_back(departure.temperature);
        dewPoints.push_back(departure.dewPoint);
    }
    const double middleT = median(std::move(temperatures));
    const double middleD = median(std::move(dewPoints));
    std::erase_if(departures, [&](const NeighbourDeparture& departure) {
        return std::abs(departure.temperature - middleT) > kOutOfLine ||
               std::abs(departure.dewPoint - middleD) > kOutOfLine;
    });
}

} // namespace

StationModel::StationModel(std::span<const record::DerivedReading> series,
                           const std::function<bool()>& keepGoing) {
    const auto newest = series.subspan(series.size() - std::min(series.size(), kLargestSample));
    std::vector<const record::DerivedReading*> sound;
    std::map<std::pair<unsigned, record::HourOfDay>, std::vector<const record::DerivedReading*>>
        byMonthAndHour;
    for (const auto& reading : newest) {
        if (!isSoundNeighbour(reading) || !reading.dewPointCelsius()) {
            continue;
        }
        sound.push_back(&reading);
        if (reading.values().hour) {
            byMonthAndHour[{monthOf(reading), reading.values().hour->hour}].push_back(&reading);
        }
    }
    for (const auto& [key, readings] : byMonthAndHour) {
        if (const auto average = climate::stationAverage(readings, kYearsForAverage)) {
            averages_.emplace(key, *average);
        }
    }
    learnMiddles(sound);
    learnHabits(newest, keepGoing);
    learnSizes(newest, keepGoing);
}

std::optional<StationModel::Middle> StationModel::middleOf(const record::DerivedReading& reading) const {
    const int hour = localHour(reading);
    auto found = hours_.find(hour);
    for (const int near : {hour - 1, hour + 1}) {
        if (found == hours_.end()) {
            found = hours_.find((near + 24) % 24);
        }
    }
    if (found == hours_.end()) {
        return std::nullopt;
    }
    // Between the middles of two months, a straight line.
    const int day = dayOfYear(reading);
    unsigned month = monthOf(reading) - 1;
    if (day < middleDay(month)) {
        month = (month + 11) % 12;
    }
    const auto& first = found->second.months.at(month);
    const auto& second = found->second.months.at((month + 1) % 12);
    if (!first || !second) {
        return first ? first : second;
    }
    const double share = std::min(daysApart(day, middleDay(month)) / 30.42, 1.0);
    const auto between = [share](double a, double b) { return a + share * (b - a); };
    Middle result{between(first->temperature, second->temperature),
                  between(first->dewPoint, second->dewPoint),
                  between(first->temperatureSpread, second->temperatureSpread),
                  between(first->dewPointSpread, second->dewPointSpread)};
    if (first->pressureSpread > 0 && second->pressureSpread > 0) {
        result.pressure = between(first->pressure, second->pressure);
        result.pressureSpread = between(first->pressureSpread, second->pressureSpread);
    }
    return result;
}

std::optional<StationModel::Ground>
StationModel::groundOf(const record::DerivedReading& reading, std::span<const record::DerivedReading> before,
                       std::span<const record::DerivedReading> after) const {
    const auto own = middleOf(reading);
    if (!own) {
        return std::nullopt;
    }
    const auto pressureDeparture = [](const record::DerivedReading& one,
                                      const Middle& middle) -> std::optional<double> {
        const auto pressure = pressureRead(one);
        return pressure && middle.pressureSpread > 0
                   ? std::optional{(*pressure - middle.pressure) / middle.pressureSpread}
                   : std::nullopt;
    };
    Ground ground;
    ground.middle = *own;
    ground.pressure = pressureDeparture(reading, *own);
    eachNeighbour(reading, before, after, [&](const record::DerivedReading& neighbour) {
        const auto middle = middleOf(neighbour);
        if (!middle) {
            return false;
        }
        const double hours = hoursBetween(reading, neighbour);
        ground.onlyEarlier = ground.onlyEarlier && hours < 0;
        ground.neighbours.push_back(
            {hours, (*dryCelsius(neighbour) - middle->temperature) / middle->temperatureSpread,
             (*neighbour.dewPointCelsius() - middle->dewPoint) / middle->dewPointSpread,
             pressureDeparture(neighbour, *middle)});
        return true;
    });
    dropOutOfLine(ground.neighbours);
    ground.expected = expectedDeparture(ground.neighbours);
    return ground;
}

Habit StationModel::habitIn(const record::DerivedReading& reading, const Ground& ground) const {
    for (const bool withPressures : {true, false}) {
        const auto situation =
            neighbourSituation(localHour(reading), ground.pressure, ground.neighbours, withPressures);
        if (const auto habit = situation ? habits_.find(*situation) : std::nullopt) {
            return *habit;
        }
    }
    return {};
}

Expectation StationModel::expectation(const record::DerivedReading& reading,
                                      std::span<const record::DerivedReading> before,
                                      std::span<const record::DerivedReading> after) const {
    const auto ground = groundOf(reading, before, after);
    if (!ground) {
        return fromNeighboursAlone(reading, before, after);
    }
    const ExpectedDeparture& expected = ground->expected;
    const Habit habit = habitIn(reading, *ground);

    // V' = F V Fᵀ with F the station's own size, then from spreads to kelvins.
    Size size;
    if (const auto found = sizes_.find({localHour(reading), pairOfMonths(reading), ground->onlyEarlier});
        found != sizes_.end()) {
        size = found->second;
    }
    const double vT = expected.varianceTemperature;
    const double vTD = expected.covariance;
    const double vD = expected.varianceDewPoint;
    const double sT = ground->middle.temperatureSpread;
    const double sD = ground->middle.dewPointSpread;
    Expectation result;
    result.temperature = ground->middle.temperature + sT * (expected.temperature + habit.temperature);
    result.dewPoint = ground->middle.dewPoint + sD * (expected.dewPoint + habit.dewPoint);
    result.varianceTemperature = sT * sT * size.temperature * size.temperature * vT;
    result.covariance = sT * sD * size.temperature * (size.mixed * vT + size.dewPoint * vTD);
    result.varianceDewPoint = sD * sD *
                              (size.mixed * size.mixed * vT + 2 * size.mixed * size.dewPoint * vTD +
                               size.dewPoint * size.dewPoint * vD);
    result.neighbours = static_cast<int>(ground->neighbours.size());
    return result;
}

Expectation StationModel::fromNeighboursAlone(const record::DerivedReading& reading,
                                              std::span<const record::DerivedReading> before,
                                              std::span<const record::DerivedReading> after) const {
    // Without the station's middles: day and night differ by several kelvins in T, little in D. Weights and
    // sizes are our judgement, wide on purpose: too little is marked rather than too much.
    constexpr double kFade = 18;
    constexpr double kDayAndNight = 5.0, kDewPointOfDay = 3.0;
    constexpr double kAnywhereT = 12.0, kAnywhereD = 10.0;
    std::vector<double> temperatures;
    std::vector<double> dewPoints;
    double weight = 0;
    double sumT = 0;
    double sumD = 0;
    eachNeighbour(reading, before, after, [&](const record::DerivedReading& neighbour) {
        const double w = std::exp(-std::abs(hoursBetween(reading, neighbour)) / kFade);
        weight += w;
        sumT += w * *dryCelsius(neighbour);
        sumD += w * *neighbour.dewPointCelsius();
        temperatures.push_back(*dryCelsius(neighbour));
        return true;
    });
    Expectation result;
    result.neighbours = static_cast<int>(temperatures.size());
    if (temperatures.size() < 2) { // the earth's middle latitudes, and no more
        result.temperature = weight > 0 ? sumT / weight : 12;
        result.dewPoint = weight > 0 ? sumD / weight : 6;
        result.varianceTemperature = kAnywhereT * kAnywhereT;
        result.varianceDewPoint = kAnywhereD * kAnywhereD;
        result.covariance = 0.6 * kAnywhereT * kAnywhereD;
        return result;
    }
    result.temperature = sumT / weight;
    result.dewPoint = sumD / weight;
    result.varianceTemperature = kDayAndNight * kDayAndNight * (1 + 0.5 / weight);
    result.varianceDewPoint = kDewPointOfDay * kDewPointOfDay * (1 + 0.5 / weight);
    return result;
}

std::optional<climate::StationAverage> StationModel::average(unsigned month, record::HourOfDay hour) const {
    const auto found = averages_.find({month, hour});
    return found == averages_.end() ? std::nullopt : std::optional{found->second};
}

} // namespace wickbook::checks
