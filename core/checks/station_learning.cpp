// SPDX-License-Identifier: GPL-3.0-or-later
// What a StationModel learns from the station's own sound readings: middles and spreads, habits, sizes.
#include "core/checks/station_clock.h"
#include "core/checks/station_model.h"

#include <algorithm>
#include <cmath>

namespace wickbook::checks {

namespace {

constexpr int kWindowDays = 20; // each way round the middle of a month
constexpr std::size_t kFewestForMiddle = 15;
constexpr double kNarrowestSpread = 0.8; // K
constexpr double kClip = 2.5;            // standard deviations: slips must not widen what is learnt

/// Pre: not empty.
double sorted(const std::vector<double>& values, double share) {
    const double place = share * static_cast<double>(values.size() - 1);
    const auto low = static_cast<std::size_t>(place);
    const std::size_t high = std::min(low + 1, values.size() - 1);
    return values[low] + (place - static_cast<double>(low)) * (values[high] - values[low]);
}

struct MiddleAndSpread {
    double middle, spread;
};

MiddleAndSpread robust(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    // A normal distribution's quartile range is 1.349 standard deviations.
    return {sorted(values, 0.5),
            std::max((sorted(values, 0.75) - sorted(values, 0.25)) / 1.349, kNarrowestSpread)};
}

} // namespace

void StationModel::learnMiddles(std::span<const record::DerivedReading* const> sound) {
    std::map<int, std::vector<const record::DerivedReading*>> byHour;
    for (const auto* reading : sound) {
        byHour[localHour(*reading)].push_back(reading);
    }
    for (const auto& [hour, readings] : byHour) {
        MonthlyMiddle monthly;
        bool any = false;
        for (unsigned month = 0; month < 12; ++month) {
            std::vector<double> temperatures;
            std::vector<double> dewPoints;
            std::vector<double> pressures;
            for (const auto* reading : readings) {
                if (daysApart(dayOfYear(*reading), middleDay(month)) <= kWindowDays) {
                    temperatures.push_back(*dryCelsius(*reading));
                    dewPoints.push_back(*reading->dewPointCelsius());
                    if (const auto pressure = pressureRead(*reading)) {
                        pressures.push_back(*pressure);
                    }
                }
            }
            if (temperatures.size() < kFewestForMiddle) {
                continue;
            }
            const auto t = robust(std::move(temperatures));
            const auto d = robust(std::move(dewPoints));
            Middle middle{t.middle, d.middle, t.spread, d.spread};
            if (pressures.size() >= kFewestForMiddle) {
                const auto p = robust(std::move(pressures));
                middle.pressure = p.middle;
                middle.pressureSpread = p.spread;
            }
            monthly.months.at(month) = middle;
            any = true;
        }
        if (any) {
            hours_.emplace(hour, monthly);
        }
    }
}

template <typename Take>
void StationModel::eachGround(std::span<const record::DerivedReading> newest, const KeepGoing& keepGoing,
                              Take take) const {
    constexpr std::size_t kAskEvery = 256;
    constexpr std::size_t kWindow = 8;
    constexpr std::size_t kFewestNeighbours = 2;
    for (std::size_t i = 0; i < newest.size(); ++i) {
        if (keepGoing && i % kAskEvery == 0 && !keepGoing()) {
            return;
        }
        const auto& reading = newest[i];
        if (!isSoundNeighbour(reading) || !reading.dewPointCelsius()) {
            continue;
        }
        const std::size_t back = std::min(i, kWindow);
        const auto before = newest.subspan(i - back, back);
        const auto after = newest.subspan(i + 1, std::min(newest.size() - i - 1, kWindow));
        // Both as they will be asked for later on: with what follows, and at the moment of reading without.
        for (const bool lookingBack : {false, true}) {
            const auto ground =
                groundOf(reading, before, lookingBack ? std::span<const record::DerivedReading>{} : after);
            if (ground && ground->neighbours.size() >= kFewestNeighbours) {
                take(reading, *ground);
            }
        }
    }
}

void StationModel::learnHabits(std::span<const record::DerivedReading> newest, const KeepGoing& keepGoing) {
    eachGround(newest, keepGoing, [&](const record::DerivedReading& reading, const Ground& ground) {
        const Middle& middle = ground.middle;
        const ExpectedDeparture& expected = ground.expected;
        const auto clipped = [](double left, double variance) {
            const double most = kClip * std::sqrt(variance);
            return std::clamp(left, -most, most);
        };
        const double t = (*dryCelsius(reading) - middle.temperature) / middle.temperatureSpread;
        const double d = (*reading.dewPointCelsius() - middle.dewPoint) / middle.dewPointSpread;
        const Habit left{clipped(t - expected.temperature, expected.varianceTemperature),
                         clipped(d - expected.dewPoint, expected.varianceDewPoint)};
        for (const bool withPressures : {true, false}) {
            if (const auto situation = neighbourSituation(localHour(reading), ground.pressure,
                                                          ground.neighbours, withPressures)) {
                habits_.learn(*situation, left);
            }
        }
    });
    habits_.settle();
}

void StationModel::learnSizes(std::span<const record::DerivedReading> newest, const KeepGoing& keepGoing) {
    constexpr int kFewest = 60;
    struct Sums {
        double tt = 0, td = 0, dd = 0, vtt = 0, vtd = 0, vdd = 0;
        int count = 0;
    };
    std::map<SizeKey, Sums> sums;
    eachGround(newest, keepGoing, [&](const record::DerivedReading& reading, const Ground& ground) {
        const Middle& middle = ground.middle;
        const ExpectedDeparture& expected = ground.expected;
        const Habit habit = habitIn(reading, ground);
        const double sdT = std::sqrt(expected.varianceTemperature);
        const double sdD = std::sqrt(expected.varianceDewPoint);
        const double t = std::clamp(((*dryCelsius(reading) - middle.temperature) / middle.temperatureSpread -
                                     expected.temperature - habit.temperature) /
                                        sdT,
                                    -kClip, kClip) *
                         sdT;
        const double d = std::clamp(((*reading.dewPointCelsius() - middle.dewPoint) / middle.dewPointSpread -
                                     expected.dewPoint - habit.dewPoint) /
                                        sdD,
                                    -kClip, kClip) *
                         sdD;
        Sums& sum = sums[{localHour(reading), pairOfMonths(reading), ground.onlyEarlier}];
        sum.tt += t * t;
        sum.td += t * d;
        sum.dd += d * d;
        sum.vtt += expected.varianceTemperature;
        sum.vtd += expected.covariance;
        sum.vdd += expected.varianceDewPoint;
        ++sum.count;
    });
    for (const auto& [key, sum] : sums) {
        const double mixedFree = sum.dd - sum.td * sum.td / sum.tt;
        const double expectedFree = sum.vdd - sum.vtd * sum.vtd / sum.vtt;
        if (sum.count < kFewest || mixedFree <= 0 || expectedFree <= 0) {
            continue;
        }
        // F = chol(found) chol(expected)⁻¹.
        const double temperature = std::sqrt(sum.tt / sum.vtt);
        const double dewPoint = std::sqrt(mixedFree / expectedFree);
        const double mixed =
            (sum.td / std::sqrt(sum.tt) - dewPoint * sum.vtd / std::sqrt(sum.vtt)) / std::sqrt(sum.vtt);
        sizes_.emplace(key, Size{temperature, mixed, dewPoint});
    }
}

} // namespace wickbook::checks
