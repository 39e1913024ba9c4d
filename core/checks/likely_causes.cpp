// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/likely_causes.h"

#include "core/checks/broken_column.h"
#include "core/checks/log_sum.h"
#include "core/checks/pair_fit.h"
#include "core/checks/rule_support.h"
#include "core/checks/slip_candidates.h"
#include "core/checks/slip_chances.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace wickbook::checks {

namespace {

using record::WickState;
using units::ReadTemperature;

constexpr std::size_t kMostShown = 3;
constexpr double kLeastShown = 0.01; // of all belief
// Where the wet bulb stands above the dry one, a swap is what a person tries first: shown though little
// believed.
constexpr double kLeastShownSwap = 0.001;
constexpr double kLeastOfTheBest = 0.10;    // a best cause with less is no explanation
constexpr double kLongestCopyHours = 36;    // the line above
constexpr double kAnyValue = 60;            // K, over which a free misreading may fall
constexpr double kAnyDigits = 1000;         // K, over which one off the scale may
constexpr double kDryWickDepression = 0.3;  // K, mean depression that a dry wick still shows
constexpr double kLargestDryDepression = 1; // K

struct Weighed {
    LikelyCause cause;
    double log = 0; ///< of chance × probability, not yet a share
    int group = 0;
};

double celsiusOf(const ReadTemperature& read, const record::UsedBulb& bulb) {
    return read.temperature().celsius() + bulb.correction.kelvins();
}

const record::DerivedReading* withCoefficient(std::span<const record::DerivedReading> before,
                                              std::span<const record::DerivedReading> after) {
    for (auto it = before.rbegin(); it != before.rend(); ++it) {
        if (it->derivation) {
            return &*it;
        }
    }
    for (const auto& neighbour : after) {
        if (neighbour.derivation) {
            return &neighbour;
        }
    }
    return nullptr;
}

/// The reading on the line above, where it is equal to this one.
bool equalsLineAbove(const record::DerivedReading& reading, std::span<const record::DerivedReading> before) {
    return !before.empty() && hoursBetween(before.back(), reading) <= kLongestCopyHours &&
           samePairRead(before.back(), reading);
}

std::vector<Weighed> pairCauses(const record::DerivedReading& reading, const PairFit& fit) {
    std::vector<Weighed> weighed;
    for (SlipCandidate& candidate : slipCandidates(reading)) {
        const double dry = celsiusOf(candidate.dry, reading.dry);
        const double wet = celsiusOf(candidate.wet, reading.wet);
        const double fits = fit.logProbability(dry, wet, candidate.wick);
        if (fits <= kImpossible / 2) {
            continue;
        }
        LikelyCause cause;
        cause.code = std::move(candidate.code);
        cause.dryCelsius = dry;
        cause.wetCelsius = wet;
        cause.wick = candidate.wick;
        cause.dryRead = candidate.dry;
        cause.wetRead = candidate.wet;
        weighed.push_back({std::move(cause), std::log(candidate.chance) + fits, candidate.group});
    }
    return weighed;
}

/// The wet bulb is of no use: the wick was dry.
std::optional<Weighed> dryWick(const record::DerivedReading& reading, double dry, double wet,
                               const PairFit& fit) {
    const double depression = dry - wet;
    if (depression < -0.21 || depression >= kLargestDryDepression) {
        return std::nullopt;
    }
    LikelyCause cause;
    cause.code = "dry-wick";
    cause.dryCelsius = dry;
    cause.dryRead = reading.values().dry.value;
    const double mean = std::max(kDryWickDepression, fit.wetStep());
    return Weighed{std::move(cause),
                   std::log(chance::kDryWick) + std::log(fit.wetStep() / mean) -
                       std::max(depression, 0.0) / mean + fit.logProbabilityDry(dry),
                   0};
}

void addBrokenColumns(const record::DerivedReading& reading, std::span<const record::DerivedReading> before,
                      const StationModel& model, double dry, double wet, std::vector<Weighed>& weighed) {
    for (const BrokenColumn& broken : brokenColumns(reading, before, model)) {
        LikelyCause cause;
        cause.code = broken.dry ? "dry-column-broken" : "wet-column-broken";
        cause.dryCelsius = dry - (broken.dry ? broken.offset : 0.0);
        cause.wetCelsius = wet - (broken.dry ? 0.0 : broken.offset);
        cause.wick = reading.values().wick;
        weighed.push_back({std::move(cause), broken.logWeight, 0});
    }
}

/// Candidates that differ in a digit nobody knows are one cause; causes that lead to the same pair add up
/// under the name of the likeliest.
std::vector<Weighed> merged(std::vector<Weighed> weighed) {
    std::stable_sort(weighed.begin(), weighed.end(),
                     [](const Weighed& a, const Weighed& b) { return a.log > b.log; });
    std::vector<Weighed> byCause;
    std::map<std::pair<std::string, int>, std::size_t> groups;
    for (Weighed& one : weighed) {
        if (one.group == 0) {
            byCause.push_back(std::move(one));
            continue;
        }
        const auto [place, fresh] = groups.try_emplace({one.cause.code, one.group}, byCause.size());
        if (fresh) {
            byCause.push_back(std::move(one));
        } else {
            byCause[place->second].log = logSum(byCause[place->second].log, one.log);
        }
    }
    std::stable_sort(byCause.begin(), byCause.end(),
                     [](const Weighed& a, const Weighed& b) { return a.log > b.log; });
    std::vector<Weighed> byPair;
    std::map<std::tuple<long, long, WickState>, std::size_t> pairs;
    for (Weighed& one : byCause) {
        if (!one.cause.dryCelsius || !one.cause.wetCelsius) {
            byPair.push_back(std::move(one));
            continue;
        }
        const auto key = std::tuple{std::lround(*one.cause.dryCelsius * 20),
                                    std::lround(*one.cause.wetCelsius * 20), one.cause.wick};
        const auto [place, fresh] = pairs.try_emplace(key, byPair.size());
        if (fresh) {
            byPair.push_back(std::move(one));
        } else {
            byPair[place->second].log = logSum(byPair[place->second].log, one.log);
        }
    }
    std::stable_sort(byPair.begin(), byPair.end(),
                     [](const Weighed& a, const Weighed& b) { return a.log > b.log; });
    return byPair;
}

void addHumidity(LikelyCause& cause, const PairFit& fit) {
    if (!cause.dryCelsius || !cause.wetCelsius) {
        return;
    }
    const auto derived = fit.derive(*cause.dryCelsius, *cause.wetCelsius, cause.wick);
    if (derived.relativeHumidity) {
        cause.humidityPercent = derived.relativeHumidity->percent();
    }
    if (derived.dewPoint) {
        cause.dewPointCelsius = derived.dewPoint->celsius();
    }
}

double anyValue(const record::UsedBulb& bulb) {
    return bulb.offScale ? kAnyDigits : kAnyValue;
}

/// Log probability of what was written, were it read right.
double logReadRight(const record::DerivedReading& reading, double dry, double wet, const PairFit& fit) {
    return reading.dry.offScale || reading.wet.offScale ? kImpossible
                                                        : fit.logProbability(dry, wet, reading.values().wick);
}

} // namespace

bool fitsWell(const record::DerivedReading& reading, std::span<const record::DerivedReading> before,
              std::span<const record::DerivedReading> after, const StationModel& model) {
    // Nearer than this to the expectation, no slip's chance makes up for what its pair can gain in fit.
    constexpr double kNearEnough = 5.0;
    return isSoundNeighbour(reading) && reading.dewPointCelsius() && !equalsLineAbove(reading, before) &&
           model.expectation(reading, before, after)
                   .distance(*dryCelsius(reading), *reading.dewPointCelsius()) < kNearEnough;
}

Explanation explain(const record::DerivedReading& reading, std::span<const record::DerivedReading> before,
                    std::span<const record::DerivedReading> after, const StationModel& model,
                    const Limits& limits) {
    Explanation result;
    if (!reading.values().hasPair()) {
        return result;
    }
    const double dry = celsiusOf(*reading.values().dry.value, reading.dry);
    const double wet = celsiusOf(*reading.values().wet.value, reading.wet);
    const PairFit fit{reading, withCoefficient(before, after), model.expectation(reading, before, after)};

    std::vector<Weighed> weighed = pairCauses(reading, fit);
    if (const auto dried = dryWick(reading, dry, wet, fit)) {
        weighed.push_back(*dried);
    }
    if (equalsLineAbove(reading, before)) {
        LikelyCause copied;
        copied.code = "line-above-copied";
        weighed.push_back({std::move(copied), std::log(chance::kLineCopied), 0});
    }
    addBrokenColumns(reading, before, model, dry, wet, weighed);
    std::vector<Weighed> causes = merged(std::move(weighed));

    const double right = logReadRight(reading, dry, wet, fit);
    const double other = std::log(chance::kOther / 2) +
                         logSum(fit.logProbabilityWet(wet) + std::log(fit.dryStep() / anyValue(reading.dry)),
                                fit.logProbabilityDry(dry) + std::log(fit.wetStep() / anyValue(reading.wet)));
    double highest = std::max(right, other);
    for (const Weighed& one : causes) {
        highest = std::max(highest, one.log);
    }
    double all = std::exp(right - highest) + std::exp(other - highest);
    for (const Weighed& one : causes) {
        all += std::exp(one.log - highest);
    }
    result.readRight = std::exp(right - highest) / all;
    for (Weighed& one : causes) {
        one.cause.weight = std::exp(one.log - highest) / all;
    }
    if (causes.empty() || causes.front().cause.weight < kLeastOfTheBest ||
        causes.front().cause.weight < result.readRight / 2) {
        return result;
    }
    result.unlikely = result.readRight < limits.value("unlikely.read-right");
    for (Weighed& one : causes) {
        if (result.causes.size() == kMostShown) {
            break;
        }
        const bool seemsSwapped = one.cause.code == "swapped" && wet > dry + fit.wetStep();
        if (one.cause.weight < (seemsSwapped ? kLeastShownSwap : kLeastShown)) {
            continue;
        }
        addHumidity(one.cause, fit);
        result.causes.push_back(std::move(one.cause));
    }
    return result;
}

std::vector<LikelyCause> likelyCauses(const record::DerivedReading& reading,
                                      std::span<const record::DerivedReading> before,
                                      std::span<const record::DerivedReading> after,
                                      const StationModel& model) {
    return explain(reading, before, after, model).causes;
}

} // namespace wickbook::checks
