// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/psychrometry/derive.h"
#include "core/units/read_temperature.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// A class round: many pupils read the same air side by side, each with a pair of their own or one after the
/// other with the same. What they read is held against the round's own medians, never against a station's
/// record, and never comes into one. Pupils are numbers, not names.
/// Values only: no ownership, nothing kept.

namespace wickbook::comparison {

struct PupilPair {
    int number = 0; ///< the pupil's
    std::optional<units::ReadTemperature> dry;
    std::optional<units::ReadTemperature> wet;
    psychrometry::WickState wick = psychrometry::WickState::NotGiven;
};

/// The air and the instruments all pupils share.
struct RoundSetting {
    psychrometry::CoefficientRule coefficient;
    units::Pressure pressure = units::Pressure::fromHectopascals(1013.25);
    units::TemperatureDifference step = units::TemperatureDifference::fromKelvins(0.1); ///< scale step
};

/// What probably happened where a pair lies far off; the words are the reader's business.
enum class RoundCause {
    Swapped,              ///< dry and wet in each other's place
    FahrenheitForCelsius, ///< both read on the other scale
    DryTenOff,            ///< dry bulb misread by ten
    WetTenOff,
    DryFiveOff,
    WetFiveOff,
    DryPointMoved, ///< decimal point lost or moved
    WetPointMoved,
    DryWick,         ///< wet bulb too high: dry wick, not yet settled, or not whirled long enough
    WarmAir,         ///< dry bulb off, the vapour pressure like the others': sun, a warm body, indoor air
    WickStateDiffers ///< water where the others have ice, or the reverse
};

/// Median and spread of what the round gave. Robust: half the pupils can err without moving them.
struct RoundSpread {
    std::size_t n = 0;
    double median = 0;
    double lowest = 0;
    double highest = 0;
    double lowerQuartile = 0;
    double upperQuartile = 0;
    double robustDeviation = 0; ///< 1.4826 × median of |x − median|: the standard deviation of normal errors
};

struct PupilResult {
    PupilPair pair;
    psychrometry::PairInput input;
    std::optional<psychrometry::Derivation> derivation; ///< none where a bulb is missing
    std::optional<double> dryOff;                       ///< K from the round's median
    std::optional<double> wetOff;
    std::optional<double> humidityOff; ///< % from the round's median
    bool farOff = false;
    std::optional<RoundCause> cause; ///< of one that is far off, where one fits
};

struct ClassRound {
    RoundSetting setting;
    std::vector<PupilResult> pupils; ///< in the order given
    std::optional<RoundSpread> dry;  ///< °C; none without a reading
    std::optional<RoundSpread> wet;
    std::optional<RoundSpread> relativeHumidity; ///< %
    std::optional<RoundSpread> dewPoint;         ///< °C
    double dryLimit = 0; ///< K from the median, past which a dry bulb is far off; 0 where none is judged
    double wetLimit = 0;
    /// Fewer than kFewestPairs complete pairs: medians are given, nobody is called far off.
    bool tooFewToJudge = false;
};

/// With three pairs one that errs is a third of the evidence (common practice, no source).
inline constexpr std::size_t kFewestPairs = 4;

/// Far off: a bulb further from the round's median than three robust standard deviations, and than two scale
/// steps or 0.4 K, whichever is most (three standard deviations: common practice, no source).
ClassRound judgeRound(std::span<const PupilPair> pairs, const RoundSetting& setting);

/// Spread of some values; none of nothing. Quantiles as Hyndman and Fan (1996), definition 7.
std::optional<RoundSpread> spreadOf(std::vector<double> values);

/// Stable names for data: "dry-wick".
std::string_view roundCauseName(RoundCause cause);

} // namespace wickbook::comparison
