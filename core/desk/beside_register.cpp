// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/beside_register.h"

#include <algorithm>
#include <set>

namespace wickbook::desk {

namespace {

using psychrometry::Exposure;

/// The register's reading nearest to a moment, derived; none within five minutes.
Result<std::optional<record::DerivedReading>>
ownBeside(const store::Book& book, const record::StationRecord& station, record::Instant instant) {
    const auto stored =
        book.observationsBetween(instant - kBesideWithin, instant + kBesideWithin + std::chrono::seconds{1});
    if (!stored) {
        return tl::unexpected(stored.error());
    }
    const record::StoredObservation* nearest = nullptr;
    for (const record::StoredObservation& candidate : *stored) {
        const bool nearer = nearest == nullptr || std::chrono::abs(candidate.values.instant - instant) <
                                                      std::chrono::abs(nearest->values.instant - instant);
        if (candidate.values.hasPair() && candidate.values.origin != record::Origin::Estimated &&
            candidate.values.quality != record::Quality::Erroneous && nearer) {
            nearest = &candidate;
        }
    }
    if (nearest == nullptr) {
        return std::nullopt;
    }
    return record::deriveReading(*nearest, station);
}

/// A reading that is not in the register, derived as if it were.
record::DerivedReading asIfKept(const std::optional<units::ReadTemperature>& dry,
                                const std::optional<units::ReadTemperature>& wet, record::WickState wick,
                                const record::BesideReading& reading, const record::StationRecord& station) {
    record::Observation values;
    values.instant = reading.instant;
    values.dry.value = dry;
    values.wet.value = wet;
    values.wick = wick;
    values.pressure = reading.pressure;
    values.windBeaufort = reading.windBeaufort;
    return record::deriveReading(values, station);
}

/// The other pair: its thermometers are its own, so no correction of the station's touches it.
std::optional<psychrometry::PairInput> otherPair(const record::BesideReading& reading,
                                                 units::Pressure pressure,
                                                 const psychrometry::CoefficientRule& rule) {
    if (!reading.otherDry || !reading.otherWet) {
        return std::nullopt;
    }
    psychrometry::PairInput input;
    input.dry = reading.otherDry->temperature();
    input.wet = reading.otherWet->temperature();
    input.wick = reading.otherWick;
    input.pressure = pressure;
    input.coefficient = rule;
    return input;
}

struct OtherHumidity {
    double percent = 0;
    std::optional<double> celsius;
};

std::optional<OtherHumidity> humidityOf(const record::BesideReading& reading, const record::SideBySide& other,
                                        units::Pressure pressure) {
    if (reading.humidity) {
        const auto air = reading.temperature ? reading.temperature : reading.otherDry;
        return OtherHumidity{reading.humidity->toDouble(),
                             air ? std::optional{air->temperature().celsius()} : std::nullopt};
    }
    psychrometry::CoefficientRule rule;
    rule.exposure = other.exposure.value_or(Exposure::Aspirated);
    const auto pair = otherPair(reading, pressure, rule);
    if (!pair) {
        return std::nullopt;
    }
    const auto derived = psychrometry::derive(*pair);
    if (!derived.relativeHumidity) {
        return std::nullopt;
    }
    return OtherHumidity{derived.relativeHumidity->percent(), pair->dry.celsius()};
}

bool hasHumidity(const record::DerivedReading& reading) {
    return reading.derivation && reading.derivation->relativeHumidity;
}

/// The station's own reading beside this one: as typed, else from the register.
Result<std::optional<record::DerivedReading>>
ownOf(const store::Book& book, const record::StationRecord& station, const record::BesideReading& reading) {
    if (reading.ownDry && reading.ownWet) {
        return asIfKept(reading.ownDry, reading.ownWet, reading.ownWick, reading, station);
    }
    return ownBeside(book, station, reading.instant);
}

} // namespace

std::vector<record::BesideReading> readingsOf(const record::StationFacts& facts,
                                              const record::Uuid& comparison) {
    std::vector<record::BesideReading> readings;
    for (const record::BesideReading& reading : facts.besideReadings) {
        if (reading.comparison == comparison && !reading.withdrawn) {
            readings.push_back(reading);
        }
    }
    std::ranges::stable_sort(readings, {}, &record::BesideReading::instant);
    return readings;
}

Result<BesideSelection> selectBeside(const store::Book& book, const record::StationRecord& station,
                                     const record::Uuid& comparison,
                                     std::vector<record::BesideReading> readings) {
    BesideSelection selection;
    if (readings.empty()) {
        return selection;
    }
    std::ranges::stable_sort(readings, {}, &record::BesideReading::instant);
    std::vector<bool> wanted(readings.size());
    for (std::size_t i = 0; i < readings.size(); ++i) {
        wanted[i] = readings[i].ownDry && readings[i].ownWet;
    }
    const auto kept =
        book.observationsBetween(readings.front().instant - kBesideWithin,
                                 readings.back().instant + kBesideWithin + std::chrono::seconds{1});
    if (!kept) {
        return tl::unexpected(kept.error());
    }
    for (const record::StoredObservation& own : *kept) {
        const record::Instant instant = own.values.instant;
        auto nearest = std::ranges::lower_bound(readings, instant, {}, &record::BesideReading::instant);
        if (nearest == readings.end() ||
            (nearest != readings.begin() &&
             instant - std::prev(nearest)->instant <= nearest->instant - instant)) {
            --nearest;
        }
        if (own.values.hasPair() && std::chrono::abs(nearest->instant - instant) <= kBesideWithin) {
            wanted[static_cast<std::size_t>(nearest - readings.begin())] = true;
        }
    }
    std::set<record::Instant> there;
    for (const record::BesideReading& reading : readingsOf(station.facts(), comparison)) {
        there.insert(reading.instant);
    }
    for (std::size_t i = 0; i < readings.size(); ++i) {
        if (!wanted[i]) {
            ++selection.leftAside;
        } else if (!there.insert(readings[i].instant).second) {
            ++selection.known;
        } else {
            readings[i].id = record::Uuid::random();
            readings[i].comparison = comparison;
            selection.taken.push_back(std::move(readings[i]));
        }
    }
    return selection;
}

std::optional<record::PeriodChange> changeAfterOverlap(const record::StationRecord& station,
                                                       const record::SideBySide& other) {
    const record::Instant begin = record::startOfDate(other.from, station);
    std::optional<record::PeriodChange> first;
    for (const record::PeriodChange& change : station.facts().periods) {
        const bool breaks = change.position || change.elevation || change.exposure;
        if (!change.withdrawn && breaks && change.from && *change.from >= begin &&
            (!first || *change.from < *first->from)) {
            first = change;
        }
    }
    return first;
}

tl::expected<comparison::ComparedPair, BesideLack> pairBeside(const record::BesideReading& reading,
                                                              const record::SideBySide& other,
                                                              const record::StationRecord& station,
                                                              const record::DerivedReading* own) {
    std::optional<record::DerivedReading> typed;
    if (reading.ownDry && reading.ownWet) {
        typed = asIfKept(reading.ownDry, reading.ownWet, reading.ownWick, reading, station);
        own = &*typed;
    }
    if (own == nullptr) {
        return tl::unexpected(BesideLack::NoOwnReading);
    }
    if (!hasHumidity(*own)) {
        return tl::unexpected(BesideLack::NoHumidity);
    }
    const auto humidity = humidityOf(reading, other, own->pressure);
    if (!humidity) {
        return tl::unexpected(BesideLack::NoReference);
    }
    comparison::ComparedPair pair;
    pair.own = own->input;
    pair.referenceHumidity = humidity->percent;
    pair.referenceTemperature = humidity->celsius;
    pair.windBeaufort = reading.windBeaufort ? reading.windBeaufort : own->values().windBeaufort;
    return pair;
}

Result<BesideReferenceAnswer> besideReference(const store::Book& book, const record::StationRecord& station,
                                              const record::SideBySide& other) {
    BesideReferenceAnswer answer;
    for (const record::BesideReading& reading : readingsOf(station.facts(), other.id)) {
        const auto own = ownOf(book, station, reading);
        if (!own) {
            return tl::unexpected(own.error());
        }
        const auto pair = pairBeside(reading, other, station, *own ? &**own : nullptr);
        if (pair) {
            answer.readings.push_back(reading);
            answer.pairs.push_back(*pair);
        } else {
            answer.lacking.push_back({reading, pair.error()});
        }
    }
    const double common = other.humidityUncertainty.value_or(0);
    answer.spread = comparison::compareWithReference(answer.pairs);
    answer.water = comparison::fitCoefficient(answer.pairs, psychrometry::Surface::Water, common);
    answer.ice = comparison::fitCoefficient(answer.pairs, psychrometry::Surface::Ice, common);
    return answer;
}

Result<OverlapAnswer> besideOverlap(const store::Book& book, const record::StationRecord& station,
                                    const record::SideBySide& other) {
    OverlapAnswer answer;
    for (const record::BesideReading& reading : readingsOf(station.facts(), other.id)) {
        const auto own = ownOf(book, station, reading);
        if (!own) {
            return tl::unexpected(own.error());
        }
        if (!*own || !hasHumidity(**own)) {
            answer.lacking.push_back({reading, *own ? BesideLack::NoHumidity : BesideLack::NoOwnReading});
            continue;
        }
        psychrometry::CoefficientRule rule = (*own)->input.coefficient;
        if (other.exposure) {
            rule = {};
            rule.exposure = *other.exposure;
        }
        const auto pair = otherPair(reading, (*own)->pressure, rule);
        if (!pair) {
            answer.lacking.push_back({reading, BesideLack::NoReference});
            continue;
        }
        const auto local = station.periodAt(reading.instant).zone.localAt(reading.instant);
        const date::year_month_day day{date::floor<date::days>(local)};
        answer.readings.push_back(reading);
        answer.pairs.push_back({(*own)->input, *pair, day.year() / day.month()});
    }
    answer.overlap = comparison::compareOverlap(answer.pairs);
    return answer;
}

} // namespace wickbook::desk
