// SPDX-License-Identifier: GPL-3.0-or-later
// Symbols: t temperature °C, D dew-point depression K, x states of unit variance, a = exp(−1 h / memory).
// Source:  a first-order autoregressive chain x(n+1) = a x(n) + sqrt(1 − a²) ε; all constants are ours.
// Range:   any hour; temperatures are held to −24…36 °C.
#include "core/sample/sample_weather.h"

#include "core/psychrometry/saturation.h"

#include <date/date.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace wickbook::sample {

namespace {

constexpr std::int64_t kHoursToForget = 60 * 24;
constexpr double kFogHumidity = 97.0;

enum Channel : std::uint64_t { kSlow = 1, kFast, kDepression, kRain, kPressure, kWind };

class Chain {
public:
    Chain(const Noise& noise, Channel channel, double memoryHours)
        : noise_(noise), channel_(channel), a_(std::exp(-1.0 / memoryHours)), b_(std::sqrt(1.0 - a_ * a_)) {}
    double next(std::int64_t hour) {
        x_ = a_ * x_ + b_ * noise_.normal(channel_, hour);
        return x_;
    }

private:
    const Noise& noise_;
    Channel channel_;
    double a_;
    double b_;
    double x_ = 0;
};

struct States {
    double slow, fast, depression, rain, pressure, wind;
};

/// −1 in the depth of winter, 1 at the height of summer.
double season(record::Instant instant) {
    const auto day = date::floor<date::days>(instant);
    const auto newYear = date::sys_days{date::year_month_day{day}.year() / 1 / 1};
    const double dayOfYear = static_cast<double>((day - newYear).count());
    return -std::cos(2.0 * std::numbers::pi * (dayOfYear - 19.0) / 365.25);
}

double hourOfDay(record::Instant instant) {
    return std::chrono::duration<double, std::ratio<3600>>(instant - date::floor<date::days>(instant))
        .count();
}

double humidityAt(double temperature, double depression) {
    using psychrometry::saturationVapourPressure;
    using psychrometry::Surface;
    const auto inAir = saturationVapourPressure(
        units::Temperature::fromCelsius(std::max(temperature - depression, psychrometry::kLowestCelsius)),
        Surface::Water);
    const auto full = saturationVapourPressure(units::Temperature::fromCelsius(temperature), Surface::Water);
    // Both are in range by the clamps.
    return 100.0 * inAir->hectopascals() / full->hectopascals();
}

Air airOf(record::Instant instant, const States& x) {
    Air air;
    const double year = season(instant);
    const double summer = (year + 1.0) / 2.0;
    const double daily = std::cos(2.0 * std::numbers::pi * (hourOfDay(instant) - 14.0) / 24.0);
    air.pressure = 993.6 + 9.0 * x.pressure;
    air.beaufort = std::clamp(static_cast<int>(std::lround(2.4 + 1.3 * x.wind - 0.4 * x.pressure)), 0, 9);
    air.rainIndex = 0.8 * x.rain - 0.6 * x.pressure - 1.1;
    const double wetness = 1.0 / (1.0 + std::exp(-air.rainIndex / 0.25));

    const double swing = (1.2 + 2.4 * summer) * (1.0 - 0.6 * wetness);
    air.temperature = std::clamp(9.6 + 6.4 * year + swing * daily + 3.3 * x.slow + 0.5 * x.fast, -24.0, 36.0);

    const double usual = (1.3 + 1.3 * summer) * (1.0 + 0.5 * (0.3 + summer) * (1.0 + daily));
    const double wished = usual * std::exp(0.85 * x.depression) * (1.0 - 0.8 * wetness);
    const double depression = 18.0 * (1.0 - std::exp(-wished / 18.0)); // no desert air
    air.humidity = humidityAt(air.temperature, depression);
    return air;
}

} // namespace

SampleWeather::SampleWeather(const Noise& noise, record::Instant from, record::Instant to)
    : from_(date::floor<std::chrono::hours>(from)) {
    Chain slow{noise, kSlow, 70};
    Chain fast{noise, kFast, 5};
    Chain depression{noise, kDepression, 30};
    Chain rain{noise, kRain, 8};
    Chain pressure{noise, kPressure, 80};
    Chain wind{noise, kWind, 14};
    const auto first = std::chrono::duration_cast<std::chrono::hours>(from_.time_since_epoch()).count();
    const auto last = std::chrono::ceil<std::chrono::hours>(to.time_since_epoch()).count();
    for (std::int64_t hour = first - kHoursToForget; hour < last; ++hour) {
        const States states{slow.next(hour), fast.next(hour),     depression.next(hour),
                            rain.next(hour), pressure.next(hour), wind.next(hour)};
        if (hour >= first) {
            hours_.push_back(airOf(record::Instant{std::chrono::hours{hour}}, states));
        }
    }
}

std::size_t SampleWeather::index(record::Instant instant) const {
    const auto hours = std::chrono::floor<std::chrono::hours>(instant - from_).count();
    return static_cast<std::size_t>(std::clamp<std::int64_t>(hours, 0, std::ssize(hours_) - 1));
}

const Air& SampleWeather::at(record::Instant instant) const {
    return hours_[index(instant)];
}

double SampleWeather::warmestUntil(record::Instant instant) const {
    const std::size_t last = index(instant);
    double warmest = hours_[last].temperature;
    for (std::size_t i = last < 24 ? 0 : last - 24; i < last; ++i) {
        warmest = std::max(warmest, hours_[i].temperature);
    }
    return warmest;
}

double SampleWeather::coldestUntil(record::Instant instant) const {
    const std::size_t last = index(instant);
    double coldest = hours_[last].temperature;
    for (std::size_t i = last < 24 ? 0 : last - 24; i < last; ++i) {
        coldest = std::min(coldest, hours_[i].temperature);
    }
    return coldest;
}

record::WeatherSet weatherOf(const Air& air, unsigned month, double chance) {
    using record::Weather;
    record::WeatherSet set;
    const bool calm = air.beaufort <= 2;
    if (air.rainIndex > 0) {
        if (air.temperature < 0.5) {
            set.add(Weather::Snow);
        } else if (air.temperature < 1.8) {
            set.add(Weather::Sleet);
        } else {
            set.add(air.rainIndex < 0.25 ? Weather::Drizzle : Weather::Rain);
        }
        if (air.rainIndex > 0.6 && month >= 5 && month <= 9 && chance < 0.3) {
            set.add(Weather::Thunder);
        }
    } else if (air.humidity >= kFogHumidity && calm) {
        set.add(Weather::Fog);
        if (air.temperature < -0.5) {
            set.add(Weather::Rime);
        }
    } else if (air.humidity >= 93.0) {
        set.add(Weather::Mist);
    } else if (air.humidity < 70.0 && calm && chance < 0.08) {
        set.add(Weather::Haze);
    }
    if (calm && air.rainIndex <= 0 && air.humidity >= 88.0) {
        if (air.temperature <= 0.0) {
            set.add(Weather::HoarFrost);
        } else if (air.temperature > 3.0) {
            set.add(Weather::Dew);
        }
    }
    return set;
}

} // namespace wickbook::sample
