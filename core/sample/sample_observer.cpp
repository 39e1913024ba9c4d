// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sample/sample_observer.h"

#include "core/psychrometry/psychrometer.h"

#include <algorithm>
#include <cmath>

namespace wickbook::sample {

namespace {

using namespace std::chrono_literals;

constexpr double kReadingError = 0.04;      // K, standard deviation on each bulb
constexpr double kIceFrom = -0.3;           // °C: above it the wick is still wet
constexpr double kSupercooledDownTo = -2.0; // °C: below it water has always frozen here
constexpr double kWickToldUpTo = 1.5;       // °C: from here down the observer says water or ice
constexpr int kDaysPerWick = 14;

std::int64_t hourCount(record::Instant instant) {
    return std::chrono::floor<std::chrono::hours>(instant.time_since_epoch()).count();
}

std::int64_t dayCount(record::Instant instant) {
    return std::chrono::floor<date::days>(instant.time_since_epoch()).count();
}

struct WetBulb {
    double celsius;
    record::WickState wick;
};

WetBulb wetBulbIn(const Air& air, const record::StationPeriod& period, double chance) {
    psychrometry::CoefficientRule rule;
    rule.exposure = period.exposure;
    const auto dry = units::Temperature::fromCelsius(air.temperature);
    const auto humidity = units::RelativeHumidity::fromPercent(air.humidity);
    const auto pressure = units::Pressure::fromHectopascals(air.pressure);
    const auto water = psychrometry::wetBulbFor(dry, humidity, psychrometry::Surface::Water, pressure, rule);
    // The model's air is well inside the range of the equation; a dry bulb is the honest fallback.
    const double wet = water ? water->celsius() : air.temperature;
    const bool supercooled = wet > kSupercooledDownTo && chance < 0.2;
    if (wet > kIceFrom || supercooled) {
        return {wet, record::WickState::Water};
    }
    const auto ice = psychrometry::wetBulbFor(dry, humidity, psychrometry::Surface::Ice, pressure, rule);
    return ice ? WetBulb{ice->celsius(), record::WickState::Ice} : WetBulb{wet, record::WickState::Water};
}

record::BulbReading tenths(double celsius) {
    return {units::ReadTemperature{units::roundedDecimal(celsius, 1), units::TemperatureUnit::Celsius},
            false};
}

} // namespace

double SampleObserver::chance(Chance purpose, record::Instant instant) const {
    return noise_.uniform(static_cast<std::uint64_t>(purpose), hourCount(instant));
}

std::string SampleObserver::initialsAt(record::Instant instant) {
    return (dayCount(instant) / 7) % 9 == 4 ? "B" : "A";
}

record::BulbReading SampleObserver::onScale(const record::Thermometer* thermometer, double celsius,
                                            record::Instant instant) const {
    const record::Correction* correction =
        thermometer == nullptr ? nullptr : station_.correctionAt(thermometer->id, instant);
    // Corrections change by hundredths over a degree: one step back from the truth is enough.
    return tenths(correction == nullptr ? celsius
                                        : celsius - record::correctionAtReading(*correction, celsius));
}

void SampleObserver::placeAt(record::Observation& values, record::Instant instant,
                             const std::optional<record::ObservingHour>& hour) const {
    const record::StationPeriod& period = station_.periodAt(instant);
    values.hour = hour;
    values.instant = instant;
    values.zone = period.zone.name();
    values.offset = period.zone.offsetAt(instant);
    values.observer = initialsAt(instant);
}

void SampleObserver::readBulbs(record::Observation& values, const Air& air, record::Instant about) const {
    const WetBulb wet = wetBulbIn(air, station_.periodAt(about), chance(Chance::Supercooled, about));
    const auto error = [&](Chance purpose) {
        return kReadingError * noise_.normal(static_cast<std::uint64_t>(purpose), hourCount(about));
    };
    values.dry = onScale(station_.dryThermometerAt(about), air.temperature + error(Chance::DryError), about);
    values.wet = onScale(station_.wetThermometerAt(about), wet.celsius + error(Chance::WetError), about);
    if (wet.celsius <= kWickToldUpTo) {
        values.wick = wet.wick;
    }
}

void SampleObserver::noteWeather(record::Observation& values, const Air& air, record::Instant about) const {
    const date::year_month_day day{date::floor<date::days>(about)};
    if (chance(Chance::WeatherNoted, about) < 0.95) {
        values.weather =
            weatherOf(air, static_cast<unsigned>(day.month()), chance(Chance::WeatherWords, about));
        values.windBeaufort = air.beaufort;
    }
    if (values.observer == "A" && chance(Chance::PressureRead, about) < 0.9) {
        values.pressure = units::roundedDecimal(air.pressure, 1);
    }
    if (values.weather && values.weather->has(record::Weather::Fog)) {
        values.note = "The trees at the lane are not to be seen.";
    }
    const bool morning = values.hour && values.hour->hour == 9h;
    if (morning && chance(Chance::Extremes, about) < 0.85) {
        const double beyond = 0.2 + 0.3 * chance(Chance::Extremes, about);
        values.maximum = tenths(weather_.warmestUntil(about) + beyond).value;
        values.minimum = tenths(weather_.coldestUntil(about) - beyond).value;
    }
}

void SampleObserver::careForWick(record::Observation& values) const {
    const bool morning = values.hour && values.hour->hour == 9h;
    if (morning && dayCount(values.instant) % kDaysPerWick == 3) {
        values.wickCare = record::WickCare::Changed;
        if (values.note.empty()) {
            values.note = "New wick.";
        }
    } else if (values.wick == record::WickState::Ice) {
        values.wickCare = record::WickCare::Wetted;
    }
}

record::Observation SampleObserver::read(record::Instant about,
                                         const std::optional<record::ObservingHour>& hour) const {
    record::Observation values;
    const double late = 3.0 * noise_.normal(static_cast<std::uint64_t>(Chance::Minutes), hourCount(about));
    const std::chrono::minutes minutes{std::clamp<std::int64_t>(std::lround(late), -9, 11)};
    placeAt(values, about + minutes, hour);
    const Air& air = weather_.at(about);
    readBulbs(values, air, about);
    noteWeather(values, air, about);
    careForWick(values);
    return values;
}

record::Observation SampleObserver::missed(record::Instant due, const record::ObservingHour& hour,
                                           const std::string& reason) const {
    record::Observation values;
    placeAt(values, due, hour);
    values.origin = record::Origin::Missing;
    values.missingReason = reason;
    return values;
}

} // namespace wickbook::sample
