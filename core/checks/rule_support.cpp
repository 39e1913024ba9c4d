// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/rule_support.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <string>

namespace wickbook::checks {

namespace {

using psychrometry::PsychrometryError;
using record::Weather;

bool isJudgedBad(const record::Observation& observation) {
    return observation.quality == record::Quality::Doubtful ||
           observation.quality == record::Quality::Erroneous || observation.withdrawn ||
           observation.origin == record::Origin::Missing || observation.origin == record::Origin::Estimated;
}

} // namespace

double hoursBetween(const record::DerivedReading& earlier, const record::DerivedReading& later) {
    const auto seconds = later.values().instant - earlier.values().instant;
    return static_cast<double>(seconds.count()) / 3600.0;
}

unsigned monthOf(const record::DerivedReading& reading) {
    return static_cast<unsigned>(date::year_month_day{record::filedDate(reading.values())}.month());
}

std::optional<double> dryCelsius(const record::DerivedReading& reading) {
    return reading.dry.temperature ? std::optional{reading.dry.temperature->celsius()} : std::nullopt;
}

std::optional<double> wetCelsius(const record::DerivedReading& reading) {
    return reading.wet.temperature ? std::optional{reading.wet.temperature->celsius()} : std::nullopt;
}

double coarserStep(const record::DerivedReading& reading) {
    return std::max(reading.dry.step.kelvins(), reading.wet.step.kelvins());
}

bool isSoundNeighbour(const record::DerivedReading& reading) {
    return !isJudgedBad(reading.values()) && !reading.dry.offScale && !reading.wet.offScale &&
           reading.derivation && !reading.derivation->problem && reading.derivation->relativeHumidity;
}

bool hasSoundDryBulb(const record::DerivedReading& reading) {
    if (isJudgedBad(reading.values()) || !reading.dry.temperature || reading.dry.offScale ||
        reading.wet.offScale) {
        return false;
    }
    return !reading.derivation || !reading.derivation->problem ||
           reading.derivation->problem == PsychrometryError::WickStateUnknown ||
           reading.derivation->problem == PsychrometryError::CoefficientOutOfRange;
}

bool hasAnyWeather(const record::DerivedReading& reading, std::initializer_list<Weather> kinds) {
    const auto& weather = reading.values().weather;
    return weather &&
           std::any_of(kinds.begin(), kinds.end(), [&](Weather kind) { return weather->has(kind); });
}

bool hasWetWeather(const record::DerivedReading& reading) {
    return hasAnyWeather(reading, {Weather::Mist, Weather::Fog, Weather::Drizzle, Weather::Rain,
                                   Weather::Snow, Weather::Sleet, Weather::Hail, Weather::Dew,
                                   Weather::HoarFrost, Weather::Rime, Weather::Glaze});
}

bool samePairRead(const record::DerivedReading& a, const record::DerivedReading& b) {
    return a.values().hasPair() && b.values().hasPair() && a.values().dry.value == b.values().dry.value &&
           a.values().wet.value == b.values().wet.value;
}

bool isSummer(const record::DerivedReading& reading, double latitude) {
    const unsigned month = monthOf(reading);
    const bool northernSummer = month >= 4 && month <= 9;
    return latitude >= 0 ? northernSummer : !northernSummer;
}

std::optional<Severity> GrossLimits::judge(double value) const {
    if (value < erroneousLow || value > erroneousHigh) {
        return Severity::Erroneous;
    }
    if (value < doubtfulLow || value > doubtfulHigh) {
        return Severity::Doubtful;
    }
    return std::nullopt;
}

double GrossLimits::passed(double value) const {
    if (value > doubtfulHigh) {
        return value > erroneousHigh ? erroneousHigh : doubtfulHigh;
    }
    return value < erroneousLow ? erroneousLow : doubtfulLow;
}

GrossLimits grossTemperatureLimits(const ReadingContext& context) {
    const double latitude = context.station.periodAt(context.reading.values().instant).position.latitude;
    const bool high = std::abs(latitude) > context.limits.value("gross-temperature.latitude");
    const std::string stem = std::string{"gross-temperature."} + (high ? "high-" : "low-") +
                             (isSummer(context.reading, latitude) ? "summer-" : "winter-");
    return {context.limits.value(stem + "doubtful-low"), context.limits.value(stem + "doubtful-high"),
            context.limits.value(stem + "erroneous-low"), context.limits.value(stem + "erroneous-high")};
}

} // namespace wickbook::checks
