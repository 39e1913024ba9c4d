// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/weather.h"

#include <algorithm>
#include <array>

namespace wickbook::record {

namespace {

constexpr std::array<std::string_view, kWeatherCount> kNames{"haze",       "mist",  "fog",  "drizzle", "rain",
                                                             "snow",       "sleet", "hail", "thunder", "dew",
                                                             "hoar-frost", "rime",  "glaze"};

std::string lowered(std::string_view text) {
    std::string result{text};
    std::transform(result.begin(), result.end(), result.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return result;
}

} // namespace

std::string_view weatherName(Weather weather) {
    return kNames.at(static_cast<std::size_t>(weather));
}

std::optional<Weather> weatherFromName(std::string_view name) {
    const std::string low = lowered(name);
    const auto found = std::find(kNames.begin(), kNames.end(), low);
    if (found == kNames.end()) {
        return std::nullopt;
    }
    return static_cast<Weather>(found - kNames.begin());
}

std::vector<Weather> WeatherSet::all() const {
    std::vector<Weather> result;
    for (int i = 0; i < kWeatherCount; ++i) {
        if (has(static_cast<Weather>(i))) {
            result.push_back(static_cast<Weather>(i));
        }
    }
    return result;
}

std::string WeatherSet::toText() const {
    std::string text;
    for (const Weather weather : all()) {
        if (!text.empty()) {
            text += ';';
        }
        text += weatherName(weather);
    }
    return text.empty() ? "none" : text;
}

std::optional<WeatherSet> WeatherSet::fromText(std::string_view text) {
    static constexpr std::string_view kSeparators = " \t,;+/";
    WeatherSet set;
    bool any = false;
    while (!text.empty()) {
        const auto begin = text.find_first_not_of(kSeparators);
        if (begin == std::string_view::npos) {
            break;
        }
        text.remove_prefix(begin);
        const auto end = std::min(text.find_first_of(kSeparators), text.size());
        const auto word = text.substr(0, end);
        text.remove_prefix(end);
        any = true;
        if (lowered(word) == "none") {
            continue;
        }
        const auto weather = weatherFromName(word);
        if (!weather) {
            return std::nullopt;
        }
        set.add(*weather);
    }
    return any ? std::optional{set} : std::nullopt;
}

} // namespace wickbook::record
