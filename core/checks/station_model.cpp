// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/station_model.h"

#include "core/checks/neighbour_weights.h"
#include "core/checks/rule_support.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace wickbook::checks {

namespace {

constexpr std::size_t kLargestSample = 12000;
constexpr double kFarthestHours = 60; // a neighbour further away knows next to nothing
constexpr std::size_t kEachWay = kMostNeighbours / 2;
constexpr double kOutOfLine = 3.5; // spreads from the middle of the neighbours: a slip itself
constexpr int kWindowDays = 20;    // each way round the middle of a month
constexpr std::size_t kFewestForMiddle = 15;
constexpr double kNarrowestSpread = 0.8; // K
constexpr int kYearsForAverage = 3;

int localHour(const record::DerivedReading& reading) {
    const auto& values = reading.values();
    if (values.hour) {
        return static_cast<int>((values.hour->hour.count() + 30) / 60) % 24;
    }
    const auto local = values.instant + values.offset;
    const auto minutes =
        std::chrono::floor<std::chrono::minutes>(local - std::chrono::floor<date::days>(local));
    return static_cast<int>((minutes.count() + 30) / 60) % 24;
}

/// Days since 1 January, 0…365.
int dayOfYear(const record::DerivedReading& reading) {
    const auto day = record::filedDate(reading.values());
    const date::year_month_day ymd{day};
    return (day - date::local_days{ymd.year() / date::January / 1}).count();
}

int daysApart(int a, int b) {
    const int apart = std::abs(a - b) % 365;
    return std::min(apart, 365 - apart);
}

/// Middle of month m (0…11) as a day of the year.
int middleDay(unsigned month) {
    return static_cast<int>(std::lround(15.2 + 30.42 * month));
}

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

unsigned pairOfMonths(const record::DerivedReading& reading) {
    return (monthOf(reading) - 1) / 2;
}

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

StationModel::StationModel(std::span<const record::DerivedReading> series) {
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
    learnSizes(newest);
}

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
            for (const auto* reading : readings) {
                if (daysApart(dayOfYear(*reading), middleDay(month)) <= kWindowDays) {
                    temperatures.push_back(*dryCelsius(*reading));
                    dewPoints.push_back(*reading->dewPointCelsius());
                }
            }
            if (temperatures.size() < kFewestForMiddle) {
                continue;
            }
            const auto t = robust(std::move(temperatures));
            const auto d = robust(std::move(dewPoints));
            monthly.months.at(month) = Middle{t.middle, d.middle, t.spread, d.spread};
            any = true;
        }
        if (any) {
            hours_.emplace(hour, monthly);
        }
    }
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
    return Middle{between(first->temperature, second->temperature),
                  between(first->dewPoint, second->dewPoint),
                  between(first->temperatureSpread, second->temperatureSpread),
                  between(first->dewPointSpread, second->dewPointSpread)};
}

std::optional<StationModel::Departure>
StationModel::departureOf(const record::DerivedReading& neighbour,
                          const record::DerivedReading& reading) const {
    const auto middle = middleOf(neighbour);
    if (!middle) {
        return std::nullopt;
    }
    return Departure{hoursBetween(reading, neighbour),
                     (*dryCelsius(neighbour) - middle->temperature) / middle->temperatureSpread,
                     (*neighbour.dewPointCelsius() - middle->dewPoint) / middle->dewPointSpread};
}

Expectation StationModel::expectation(const record::DerivedReading& reading,
                                      std::span<const record::DerivedReading> before,
                                      std::span<const record::DerivedReading> after) const {
    const auto middle = middleOf(reading);
    if (!middle) {
        return fromNeighboursAlone(reading, before, after);
    }
    std::vector<NeighbourDeparture> departures;
    eachNeighbour(reading, before, after, [&](const record::DerivedReading& neighbour) {
        const auto departure = departureOf(neighbour, reading);
        if (departure) {
            departures.push_back({departure->hours, departure->temperature, departure->dewPoint});
        }
        return departure.has_value();
    });
    dropOutOfLine(departures);
    const ExpectedDeparture expected = expectedDeparture(departures);

    // V' = F V Fᵀ with F the station's own size, then from spreads to kelvins.
    Size size;
    if (const auto found = sizes_.find({localHour(reading), pairOfMonths(reading)}); found != sizes_.end()) {
        size = found->second;
    }
    const double vT = expected.varianceTemperature;
    const double vTD = expected.covariance;
    const double vD = expected.varianceDewPoint;
    const double sT = middle->temperatureSpread;
    const double sD = middle->dewPointSpread;
    Expectation result;
    result.temperature = middle->temperature + sT * expected.temperature;
    result.dewPoint = middle->dewPoint + sD * expected.dewPoint;
    result.varianceTemperature = sT * sT * size.temperature * size.temperature * vT;
    result.covariance = sT * sD * size.temperature * (size.mixed * vT + size.dewPoint * vTD);
    result.varianceDewPoint = sD * sD *
                              (size.mixed * size.mixed * vT + 2 * size.mixed * size.dewPoint * vTD +
                               size.dewPoint * size.dewPoint * vD);
    result.neighbours = static_cast<int>(departures.size());
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

void StationModel::learnSizes(std::span<const record::DerivedReading> newest) {
    constexpr std::size_t kLargestForSizes = 6000;
    constexpr std::size_t kWindow = 8;
    constexpr int kFewest = 60;
    constexpr double kClip = 2.5; // standard deviations: slips must not widen the measure
    struct Sums {
        double tt = 0, td = 0, dd = 0, vtt = 0, vtd = 0, vdd = 0;
        int count = 0;
    };
    std::map<std::pair<int, unsigned>, Sums> sums;
    const std::size_t stride = newest.size() / kLargestForSizes + 1;
    for (std::size_t i = 0; i < newest.size(); i += stride) {
        const auto& reading = newest[i];
        const auto middle = middleOf(reading);
        if (!middle || !isSoundNeighbour(reading) || !reading.dewPointCelsius()) {
            continue;
        }
        const std::size_t back = std::min(i, kWindow);
        const auto before = newest.subspan(i - back, back);
        const auto after = newest.subspan(i + 1, std::min(newest.size() - i - 1, kWindow));
        // Both as they will be asked for later on: with what follows, and at the moment of reading without.
        for (const bool lookingBack : {false, true}) {
            const auto e =
                expectation(reading, before, lookingBack ? std::span<const record::DerivedReading>{} : after);
            if (e.neighbours < 2) {
                continue;
            }
            const double sT = middle->temperatureSpread;
            const double sD = middle->dewPointSpread;
            const double sdT = std::sqrt(e.varianceTemperature);
            const double sdD = std::sqrt(e.varianceDewPoint);
            const double t =
                std::clamp((*dryCelsius(reading) - e.temperature) / sdT, -kClip, kClip) * sdT / sT;
            const double d =
                std::clamp((*reading.dewPointCelsius() - e.dewPoint) / sdD, -kClip, kClip) * sdD / sD;
            Sums& sum = sums[{localHour(reading), pairOfMonths(reading)}];
            sum.tt += t * t;
            sum.td += t * d;
            sum.dd += d * d;
            sum.vtt += e.varianceTemperature / (sT * sT);
            sum.vtd += e.covariance / (sT * sD);
            sum.vdd += e.varianceDewPoint / (sD * sD);
            ++sum.count;
        }
    }
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

std::optional<climate::StationAverage> StationModel::average(unsigned month, record::HourOfDay hour) const {
    const auto found = averages_.find({month, hour});
    return found == averages_.end() ? std::nullopt : std::optional{found->second};
}

} // namespace wickbook::checks
