// SPDX-License-Identifier: GPL-3.0-or-later
// Symbols: x a bulb's reading °C, m the round's median, s its robust standard deviation K, e vapour pressure.
#include "core/comparison/class_round.h"

#include "core/climate/quantile.h"
#include "core/comparison/round_causes.h"

#include <algorithm>
#include <cmath>

namespace wickbook::comparison {

namespace {

constexpr double kNormalFromMedianDeviation = 1.4826; // 1 / Φ⁻¹(0.75)
constexpr double kDeviations = 3;
constexpr double kLeastSteps = 2;
constexpr double kLeastKelvins = 0.4;

double limitFor(const RoundSpread& spread, units::TemperatureDifference step) {
    return std::max({kDeviations * spread.robustDeviation, kLeastSteps * step.kelvins(), kLeastKelvins});
}

PupilResult derivedPupil(const PupilPair& pair, const RoundSetting& setting) {
    PupilResult pupil;
    pupil.pair = pair;
    pupil.input.coefficient = setting.coefficient;
    pupil.input.pressure = setting.pressure;
    pupil.input.resolution = setting.step;
    pupil.input.wick = pair.wick;
    if (pair.dry && pair.wet) {
        pupil.input.dry = pair.dry->temperature();
        pupil.input.wet = pair.wet->temperature();
        pupil.derivation = psychrometry::derive(pupil.input);
    }
    return pupil;
}

template <typename Value>
std::optional<RoundSpread> spreadAlong(const std::vector<PupilResult>& pupils, Value value) {
    std::vector<double> values;
    for (const PupilResult& pupil : pupils) {
        if (const std::optional<double> one = value(pupil)) {
            values.push_back(*one);
        }
    }
    return spreadOf(std::move(values));
}

std::optional<double> celsiusOf(const std::optional<units::ReadTemperature>& reading) {
    return reading ? std::optional{reading->temperature().celsius()} : std::nullopt;
}

std::optional<double> humidityOf(const PupilResult& pupil) {
    return pupil.derivation && pupil.derivation->relativeHumidity
               ? std::optional{pupil.derivation->relativeHumidity->percent()}
               : std::nullopt;
}

std::optional<double> dewPointOf(const PupilResult& pupil) {
    return pupil.derivation && pupil.derivation->dewPoint
               ? std::optional{pupil.derivation->dewPoint->celsius()}
               : std::nullopt;
}

} // namespace

std::optional<RoundSpread> spreadOf(std::vector<double> values) {
    const auto median = climate::median(values);
    if (!median) {
        return std::nullopt;
    }
    RoundSpread spread;
    spread.n = values.size();
    spread.median = *median;
    const auto [lowest, highest] = std::minmax_element(values.begin(), values.end());
    spread.lowest = *lowest;
    spread.highest = *highest;
    spread.lowerQuartile = climate::quantile(values, 0.25).value_or(*median);
    spread.upperQuartile = climate::quantile(values, 0.75).value_or(*median);
    for (double& value : values) {
        value = std::abs(value - *median);
    }
    spread.robustDeviation = kNormalFromMedianDeviation * climate::median(values).value_or(0);
    return spread;
}

ClassRound judgeRound(std::span<const PupilPair> pairs, const RoundSetting& setting) {
    ClassRound round;
    round.setting = setting;
    for (const PupilPair& pair : pairs) {
        round.pupils.push_back(derivedPupil(pair, setting));
    }
    round.dry = spreadAlong(round.pupils, [](const auto& pupil) { return celsiusOf(pupil.pair.dry); });
    round.wet = spreadAlong(round.pupils, [](const auto& pupil) { return celsiusOf(pupil.pair.wet); });
    round.relativeHumidity = spreadAlong(round.pupils, humidityOf);
    round.dewPoint = spreadAlong(round.pupils, dewPointOf);

    const auto complete =
        std::count_if(round.pupils.begin(), round.pupils.end(),
                      [](const PupilResult& pupil) { return pupil.derivation.has_value(); });
    round.tooFewToJudge = static_cast<std::size_t>(complete) < kFewestPairs;
    if (round.dry && round.wet && !round.tooFewToJudge) {
        round.dryLimit = limitFor(*round.dry, setting.step);
        round.wetLimit = limitFor(*round.wet, setting.step);
    }
    for (PupilResult& pupil : round.pupils) {
        if (const auto dry = celsiusOf(pupil.pair.dry)) {
            pupil.dryOff = *dry - round.dry->median;
        }
        if (const auto wet = celsiusOf(pupil.pair.wet)) {
            pupil.wetOff = *wet - round.wet->median;
        }
        if (const auto humidity = humidityOf(pupil)) {
            pupil.humidityOff = *humidity - round.relativeHumidity->median;
        }
        if (!round.tooFewToJudge) {
            pupil.farOff = std::abs(pupil.dryOff.value_or(0)) > round.dryLimit ||
                           std::abs(pupil.wetOff.value_or(0)) > round.wetLimit;
        }
    }
    for (PupilResult& pupil : round.pupils) {
        if (pupil.farOff) {
            pupil.cause = likelyRoundCause(pupil, round);
        }
    }
    return round;
}

} // namespace wickbook::comparison
