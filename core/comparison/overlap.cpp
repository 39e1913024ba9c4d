// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/overlap.h"

#include <cmath>
#include <set>

namespace wickbook::comparison {

namespace {

bool liesWithin(const Estimate& difference, double limit) {
    return -limit <= difference.lower95 && difference.upper95 <= limit;
}

bool liesBeyond(const Estimate& difference, double limit) {
    return std::abs(difference.value) > limit && !difference.includes(0);
}

JoinVerdict verdictOf(const Overlap& overlap) {
    if (overlap.n < kFewestForOverlap || !overlap.dry || !overlap.humidity) {
        return JoinVerdict::TooFew;
    }
    if (liesBeyond(*overlap.dry, kJoinTemperature) || liesBeyond(*overlap.humidity, kJoinHumidity)) {
        return JoinVerdict::Differs;
    }
    return liesWithin(*overlap.dry, kJoinTemperature) && liesWithin(*overlap.humidity, kJoinHumidity)
               ? JoinVerdict::Alike
               : JoinVerdict::Undecided;
}

} // namespace

std::string_view joinVerdictName(JoinVerdict verdict) {
    switch (verdict) {
    case JoinVerdict::TooFew:
        return "too-few";
    case JoinVerdict::Alike:
        return "alike";
    case JoinVerdict::Differs:
        return "differs";
    case JoinVerdict::Undecided:
        return "undecided";
    }
    return {};
}

Overlap compareOverlap(std::span<const OverlapPair> pairs) {
    Overlap overlap;
    std::vector<double> dry;
    std::vector<double> wet;
    std::vector<double> humidity;
    std::vector<double> dewPoint;
    std::set<date::month> months;
    for (const OverlapPair& pair : pairs) {
        const auto old = psychrometry::derive(pair.station);
        const auto fresh = psychrometry::derive(pair.other);
        if (!old.relativeHumidity || !fresh.relativeHumidity) {
            continue;
        }
        dry.push_back((pair.other.dry - pair.station.dry).kelvins());
        wet.push_back((pair.other.wet - pair.station.wet).kelvins());
        humidity.push_back(fresh.relativeHumidity->percent() - old.relativeHumidity->percent());
        if (old.dewPoint && fresh.dewPoint) {
            dewPoint.push_back((*fresh.dewPoint - *old.dewPoint).kelvins());
        }
        months.insert(pair.month.month());
    }
    overlap.n = dry.size();
    overlap.months = months.size();
    overlap.dry = meanOf(dry);
    overlap.wet = meanOf(wet);
    overlap.humidity = meanOf(humidity);
    overlap.dewPoint = meanOf(dewPoint);
    overlap.humidityDeviation = deviationOf(humidity);
    overlap.verdict = verdictOf(overlap);
    return overlap;
}

} // namespace wickbook::comparison
