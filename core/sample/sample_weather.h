// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/instant.h"
#include "core/record/weather.h"
#include "core/sample/noise.h"

#include <vector>

/// The invented station's air, hour by hour. A model for show, not a climate: round numbers chosen to look
/// like a lowland place at 52° north, taken from no station.
///
///   temperature   9.6 °C − 6.4 °C cos(year, coldest 20 January) + daily wave, warmest at 14 h UTC, 1.2 °C in
///                 winter to 3.6 °C in summer + AR(1) weather of 3.3 °C, memory 70 h, and 0.5 °C, memory 5 h
///   dew point     temperature less a depression whose logarithm is AR(1), memory 30 h, larger by day and in
///                 summer, pressed towards zero in rain
///   rain          an AR(1) index, memory 8 h, helped by low pressure; rain, drizzle, sleet or snow above a
///                 threshold
///   fog           where the depression comes to nearly nothing in little wind
///   pressure      993.6 hPa (the standard atmosphere at 165 m) + AR(1) of 9 hPa, memory 80 h

namespace wickbook::sample {

/// Air at one hour, without any instrument.
struct Air {
    double temperature = 0; ///< °C
    double humidity = 0;    ///< % over water
    double pressure = 0;    ///< hPa at the station
    double rainIndex = 0;   ///< above 0: something falls
    int beaufort = 0;
};

/// Hours [from, to), whole hours UTC. Sixty days run before the first to forget where the chain began.
class SampleWeather {
public:
    SampleWeather(const Noise& noise, record::Instant from, record::Instant to);
    /// Pre: from ≤ instant < to. The hour nearest below.
    [[nodiscard]] const Air& at(record::Instant instant) const;
    /// Warmest and coldest of the 24 hours up to and with this one, as far as the model reaches back.
    [[nodiscard]] double warmestUntil(record::Instant instant) const;
    [[nodiscard]] double coldestUntil(record::Instant instant) const;

private:
    [[nodiscard]] std::size_t index(record::Instant instant) const;
    record::Instant from_;
    std::vector<Air> hours_;
};

/// What an observer would note of it.
record::WeatherSet weatherOf(const Air& air, unsigned month, double chance);

} // namespace wickbook::sample
