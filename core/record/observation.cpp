// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/observation.h"

#include <algorithm>
#include <array>

namespace wickbook::record {

namespace {

template <typename Enum, std::size_t N>
std::optional<Enum> enumFromName(const std::array<std::string_view, N>& names, std::string_view name) {
    const auto found = std::find(names.begin(), names.end(), name);
    if (found == names.end()) {
        return std::nullopt;
    }
    return static_cast<Enum>(found - names.begin());
}

constexpr std::array<std::string_view, 4> kOrigins{"observed", "corrected", "estimated", "missing"};
constexpr std::array<std::string_view, 4> kQualities{"not-judged", "sound", "doubtful", "erroneous"};
constexpr std::array<std::string_view, 3> kWicks{"", "water", "ice"};

} // namespace

std::string_view originName(Origin origin) {
    return kOrigins.at(static_cast<std::size_t>(origin));
}
std::optional<Origin> originFromName(std::string_view name) {
    return enumFromName<Origin>(kOrigins, name);
}
std::string_view qualityName(Quality quality) {
    return kQualities.at(static_cast<std::size_t>(quality));
}
std::optional<Quality> qualityFromName(std::string_view name) {
    return enumFromName<Quality>(kQualities, name);
}
std::string_view wickName(WickState wick) {
    return kWicks.at(static_cast<std::size_t>(wick));
}
std::optional<WickState> wickFromName(std::string_view name) {
    return enumFromName<WickState>(kWicks, name);
}

int qualityCode(Origin origin, Quality quality) {
    switch (quality) {
    case Quality::Sound:
        return 0;
    case Quality::Doubtful:
        return 2;
    case Quality::Erroneous:
        return 3;
    case Quality::NotJudged:
        break;
    }
    switch (origin) {
    case Origin::Missing:
        return 7;
    case Origin::Estimated:
        return 6;
    case Origin::Corrected:
        return 5;
    case Origin::Observed:
        break;
    }
    return 4;
}

StationDate filedDate(const Observation& observation) {
    if (observation.hour) {
        return observation.hour->date;
    }
    return date::floor<date::days>(LocalTime{observation.instant.time_since_epoch() + observation.offset});
}

} // namespace wickbook::record
