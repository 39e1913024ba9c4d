// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace wickbook::record {

/// Weather at the time of reading, terms of the trade.
enum class Weather {
    Haze,
    Mist,
    Fog,
    Drizzle,
    Rain,
    Snow,
    Sleet,
    Hail,
    Thunder,
    Dew,
    HoarFrost,
    Rime,
    Glaze
};
inline constexpr int kWeatherCount = 13;

/// "haze", "hoar-frost" …; the same in files and on the command line.
std::string_view weatherName(Weather weather);
std::optional<Weather> weatherFromName(std::string_view name);

/// What was noted together: fog and rime, say. An empty set is a noted "none"; nothing noted is no set at
/// all.
class WeatherSet {
public:
    WeatherSet() = default;
    void add(Weather weather) { bits_ |= 1U << static_cast<unsigned>(weather); }
    [[nodiscard]] bool has(Weather weather) const {
        return (bits_ & (1U << static_cast<unsigned>(weather))) != 0;
    }
    [[nodiscard]] bool empty() const { return bits_ == 0; }
    [[nodiscard]] std::vector<Weather> all() const;
    /// "none", or names joined by ';'.
    [[nodiscard]] std::string toText() const;
    /// Names separated by blanks, commas, semicolons or '+'; "none"; nullopt for a word that is none of them.
    static std::optional<WeatherSet> fromText(std::string_view text);

    bool operator==(const WeatherSet&) const = default;

private:
    std::uint32_t bits_ = 0;
};

} // namespace wickbook::record
