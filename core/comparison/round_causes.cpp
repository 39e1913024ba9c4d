// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/round_causes.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace wickbook::comparison {

namespace {

/// How near two vapour pressures must be to be called those of one air, as a share. Three per cent is about
/// half a degree of dew point.
constexpr double kSameVapour = 0.03;

struct Bulbs {
    double dry; ///< °C
    double wet;
};

/// What the pupil would have read without one slip.
class Unslipped {
public:
    Unslipped(const PupilResult& pupil, const ClassRound& round) : pupil_(pupil), round_(round) {}

    [[nodiscard]] std::optional<RoundCause> cause() const {
        const Bulbs read{pupil_.input.dry.celsius(), pupil_.input.wet.celsius()};
        if (fits({read.wet, read.dry})) {
            return RoundCause::Swapped;
        }
        if (pupil_.pair.dry->unit == units::TemperatureUnit::Celsius &&
            fits({celsiusFromFahrenheit(read.dry), celsiusFromFahrenheit(read.wet)})) {
            return RoundCause::FahrenheitForCelsius;
        }
        if (const auto cause =
                misread(10, RoundCause::DryTenOff, RoundCause::WetTenOff, pupil_.pair.dry->unit)) {
            return cause;
        }
        if (fitsAny(pupil_.pair.dry->value.toDouble() * 10, pupil_.pair.dry->value.toDouble() / 10, true)) {
            return RoundCause::DryPointMoved;
        }
        if (fitsAny(pupil_.pair.wet->value.toDouble() * 10, pupil_.pair.wet->value.toDouble() / 10, false)) {
            return RoundCause::WetPointMoved;
        }
        return std::nullopt;
    }

    [[nodiscard]] std::optional<RoundCause> fiveOff() const {
        return misread(5, RoundCause::DryFiveOff, RoundCause::WetFiveOff, pupil_.pair.dry->unit);
    }

private:
    static double celsiusFromFahrenheit(double degrees) {
        return units::Temperature::fromFahrenheit(degrees).celsius();
    }

    [[nodiscard]] bool fits(const Bulbs& bulbs) const {
        return std::abs(bulbs.dry - round_.dry->median) <= round_.dryLimit &&
               std::abs(bulbs.wet - round_.wet->median) <= round_.wetLimit;
    }

    [[nodiscard]] bool fitsWith(double degrees, bool dry) const {
        const double celsius = pupil_.pair.dry->unit == units::TemperatureUnit::Celsius
                                   ? degrees
                                   : celsiusFromFahrenheit(degrees);
        return dry ? fits({celsius, pupil_.input.wet.celsius()})
                   : fits({pupil_.input.dry.celsius(), celsius});
    }

    [[nodiscard]] bool fitsAny(double one, double other, bool dry) const {
        return fitsWith(one, dry) || fitsWith(other, dry);
    }

    [[nodiscard]] std::optional<RoundCause> misread(double degrees, RoundCause ofDry, RoundCause ofWet,
                                                    units::TemperatureUnit unit) const {
        const double kelvins = units::scaleDegrees(degrees, unit).kelvins();
        const double dry = pupil_.input.dry.celsius();
        const double wet = pupil_.input.wet.celsius();
        if (fits({dry - kelvins, wet}) || fits({dry + kelvins, wet})) {
            return ofDry;
        }
        if (fits({dry, wet - kelvins}) || fits({dry, wet + kelvins})) {
            return ofWet;
        }
        return std::nullopt;
    }

    const PupilResult& pupil_;
    const ClassRound& round_;
};

std::optional<psychrometry::WickState> usualWick(const ClassRound& round) {
    using psychrometry::WickState;
    const auto count = [&](WickState wick) {
        return std::count_if(round.pupils.begin(), round.pupils.end(), [&](const PupilResult& pupil) {
            return !pupil.farOff && pupil.pair.wick == wick;
        });
    };
    const auto water = count(WickState::Water);
    const auto ice = count(WickState::Ice);
    if (water == ice) {
        return std::nullopt;
    }
    return water > ice ? WickState::Water : WickState::Ice;
}

/// The vapour pressure that the pupil and the round's two medians give.
bool sameVapour(const PupilResult& pupil, const ClassRound& round) {
    if (!pupil.derivation || !pupil.derivation->vapourPressure) {
        return false;
    }
    psychrometry::PairInput middle = pupil.input;
    middle.dry = units::Temperature::fromCelsius(round.dry->median);
    middle.wet = units::Temperature::fromCelsius(round.wet->median);
    const auto expected = psychrometry::derive(middle).vapourPressure;
    return expected && std::abs(pupil.derivation->vapourPressure->hectopascals() / expected->hectopascals() -
                                1) <= kSameVapour;
}

} // namespace

std::optional<RoundCause> likelyRoundCause(const PupilResult& pupil, const ClassRound& round) {
    if (!pupil.pair.dry || !pupil.pair.wet) {
        return std::nullopt; // one bulb alone: a slip of it can't be told from another place
    }
    const auto usual = usualWick(round);
    if (usual && pupil.pair.wick != psychrometry::WickState::NotGiven && pupil.pair.wick != *usual) {
        return RoundCause::WickStateDiffers;
    }
    const bool dryFits = std::abs(*pupil.dryOff) <= round.dryLimit;
    const double wetAbove = *pupil.wetOff;
    const double depression = round.dry->median - round.wet->median;
    const bool likeDryWick = dryFits && wetAbove > round.wetLimit && wetAbove <= depression + round.wetLimit;
    // A wet bulb that stands almost at the dry one is a dry wick before it is five or ten misread.
    if (likeDryWick && wetAbove >= depression - round.dryLimit) {
        return RoundCause::DryWick;
    }
    const Unslipped unslipped(pupil, round);
    if (const auto slip = unslipped.cause()) {
        return slip;
    }
    // In a class a wick not wetted, or a whirl cut short, is commoner than five misread on one bulb.
    if (likeDryWick) {
        return RoundCause::DryWick;
    }
    if (const auto slip = unslipped.fiveOff()) {
        return slip;
    }
    if (!dryFits && *pupil.dryOff > 0 && sameVapour(pupil, round)) {
        return RoundCause::WarmAir;
    }
    return std::nullopt;
}

std::string_view roundCauseName(RoundCause cause) {
    switch (cause) {
    case RoundCause::Swapped:
        return "swapped";
    case RoundCause::FahrenheitForCelsius:
        return "fahrenheit-for-celsius";
    case RoundCause::DryTenOff:
        return "dry-ten-off";
    case RoundCause::WetTenOff:
        return "wet-ten-off";
    case RoundCause::DryFiveOff:
        return "dry-five-off";
    case RoundCause::WetFiveOff:
        return "wet-five-off";
    case RoundCause::DryPointMoved:
        return "dry-point-moved";
    case RoundCause::WetPointMoved:
        return "wet-point-moved";
    case RoundCause::DryWick:
        return "dry-wick";
    case RoundCause::WarmAir:
        return "warm-air";
    case RoundCause::WickStateDiffers:
        return "wick-state-differs";
    }
    return {};
}

} // namespace wickbook::comparison
