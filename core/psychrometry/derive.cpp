// SPDX-License-Identifier: GPL-3.0-or-later
// Symbols: t dry bulb °C, t_w wet bulb °C, e vapour pressure hPa, e_w saturation over water hPa, f
// enhancement
//          factor, U relative humidity %.
// Source:  the psychrometer equation of core/psychrometry/psychrometer.h; the order of the rules and their
// limits
//          stand in derive.h (limits: common practice, no source).
// Range:   bulbs −60…60 °C, 300…1100 hPa.
#include "core/psychrometry/derive.h"

#include "core/psychrometry/humidity_columns.h"
#include "core/psychrometry/quantities.h"
#include "core/psychrometry/ranges.h"
#include "core/psychrometry/sonntag.h"
#include "core/units/binary_fraction.h"

#include <algorithm>
#include <cmath>

namespace wickbook::psychrometry {

using units::kBinaryFraction;

namespace {

constexpr double kSaturationTolerance = 0.2;      // kelvins
constexpr double kExtrapolatedBelowCelsius = -20; // over supercooled water

/// How far a wet bulb may stand above where saturation puts it and still be a reading of saturated air.
double allowedAbove(units::TemperatureDifference resolution) {
    return std::max(kSaturationTolerance, resolution.kelvins()) + kBinaryFraction;
}

std::optional<PsychrometryError> rangeProblem(const PairInput& input) {
    if (!isInRange(input.dry) || !isInRange(input.wet) || !isNotNegative(input.resolution.kelvins()) ||
        !std::isfinite(input.wetCorrection.kelvins())) {
        return PsychrometryError::TemperatureOutOfRange;
    }
    if (!isInRange(input.pressure)) {
        return PsychrometryError::PressureOutOfRange;
    }
    return std::nullopt;
}

/// The pair as the equation may take it: ice no warmer than melting, the bulb no higher than saturation.
struct SoundPair {
    units::Temperature wet = units::Temperature::fromCelsius(0);
    Surface bulb = Surface::Water;
    bool saturated = false;
};

tl::expected<SoundPair, PsychrometryError> soundWaterBulb(const PairInput& input) {
    const double above = (input.wet - input.dry).kelvins();
    if (above <= 0.0) {
        return SoundPair{input.wet, Surface::Water, false};
    }
    if (above > allowedAbove(input.resolution)) {
        return tl::unexpected(PsychrometryError::WetAboveDry);
    }
    return SoundPair{input.dry, Surface::Water, true};
}

tl::expected<SoundPair, PsychrometryError> soundIceBulb(const PairInput& input) {
    if (input.wet.celsius() > input.resolution.kelvins() + kBinaryFraction) {
        return tl::unexpected(PsychrometryError::IceAboveZero);
    }
    // Melting ice stands at 0 °C: what is read above that is reading error.
    const auto wet = std::min(input.wet, units::Temperature::fromCelsius(0.0));
    if (wet <= input.dry) {
        return SoundPair{wet, Surface::Ice, false};
    }
    // In fog an ice bulb rightly stands a few tenths above the dry bulb, up to where the air holds 100 % over
    // water.
    const auto highest = wetBulbFor(input.dry, units::RelativeHumidity::fromPercent(100.0), Surface::Ice,
                                    input.pressure, input.coefficient);
    if (!highest) {
        return tl::unexpected(highest.error());
    }
    const double above = (wet - *highest).kelvins();
    if (above <= kBinaryFraction) {
        return SoundPair{std::min(wet, *highest), Surface::Ice, false};
    }
    if (above > allowedAbove(input.resolution)) {
        return tl::unexpected(PsychrometryError::IceOverDry);
    }
    return SoundPair{*highest, Surface::Ice, true};
}

} // namespace

bool wickStateNeeded(units::Temperature wet, units::TemperatureDifference resolution,
                     units::TemperatureDifference correction) {
    const double reach = std::max(resolution.kelvins() / 2.0, std::abs(correction.kelvins()));
    return wet.celsius() <= reach + kBinaryFraction;
}

namespace {

/// Everything derive() gives, and the lines of the budget where a place is given for them.
Derivation worked(const PairInput& input, std::optional<UncertaintyBudget>* lines) {
    Derivation result;
    const double depression = (input.dry - input.wet).kelvins();
    if (std::isfinite(depression)) {
        result.depression = units::TemperatureDifference::fromKelvins(depression);
    }
    result.problem = rangeProblem(input);
    if (result.problem) {
        return result;
    }

    result.wickUsed = input.wick;
    if (input.wick == WickState::NotGiven) {
        if (wickStateNeeded(input.wet, input.resolution, input.wetCorrection)) {
            result.problem = PsychrometryError::WickStateUnknown;
            return result;
        }
        result.wickUsed = WickState::Water;
    }

    const auto pair = result.wickUsed == WickState::Ice ? soundIceBulb(input) : soundWaterBulb(input);
    if (!pair) {
        result.problem = pair.error();
        return result;
    }
    const auto coefficient = input.coefficient.at(pair->bulb, pair->wet, input.pressure);
    if (!coefficient) {
        result.problem = coefficient.error();
        return result;
    }
    result.coefficient = *coefficient;
    const double f = coefficient->enhancement;

    const double t = input.dry.celsius();
    const LogSaturation atDry = logSaturationAt(t, kSonntagWater);
    const double saturation = exponential(atDry.value);
    const EquationHumidity humidity =
        pair->saturated ? EquationHumidity{f * saturation, 100.0, t}
                        : humidityOf(EquationPair{t, pair->wet.celsius(), pair->bulb,
                                                  input.pressure.hectopascals(), coefficient->perKelvin, f});
    if (std::isnan(humidity.vapourPressure)) {
        result.problem = PsychrometryError::NoVapour; // the bulbs are within range
        return result;
    }

    const auto vapour = units::VapourPressure::fromHectopascals(humidity.vapourPressure);
    result.takenAsSaturation = pair->saturated;
    result.vapourPressure = vapour;
    // Above 100 only by the last binary digit.
    result.relativeHumidity =
        units::RelativeHumidity::fromPercent(std::min(humidity.relativeHumidity, 100.0));
    if (std::isnan(humidity.dewPoint)) {
        // No dew point lies above the range: the air would be warmer than the dry bulb.
        result.dewPointProblem = PsychrometryError::BelowRange;
    } else {
        result.dewPoint = units::Temperature::fromCelsius(humidity.dewPoint);
    }
    const auto frost = frostPoint(vapour, f);
    if (frost && frost->celsius() <= 0.0) {
        result.frostPoint = *frost;
    }
    result.vapourPressureDeficit =
        units::VapourPressure::fromHectopascals(std::max(f * saturation - humidity.vapourPressure, 0.0));
    result.absoluteHumidity = absoluteHumidity(vapour, input.dry);
    if (const auto ratio = mixingRatio(vapour, input.pressure)) {
        result.mixingRatio = *ratio;
    }

    const auto isExtrapolated = [](units::Temperature one) {
        return one.celsius() < kExtrapolatedBelowCelsius;
    };
    result.extrapolated = isExtrapolated(input.dry) ||
                          (pair->bulb == Surface::Water && isExtrapolated(pair->wet)) ||
                          (result.dewPoint ? isExtrapolated(*result.dewPoint)
                                           : result.dewPointProblem == PsychrometryError::BelowRange);

    const LogSaturation atWet =
        logSaturationAt(pair->wet.celsius(), pair->bulb == Surface::Ice ? kSonntagIce : kSonntagWater);
    WorkedPair known{input.dry,
                     pair->wet,
                     pair->bulb,
                     input.pressure,
                     *coefficient,
                     humidity.vapourPressure,
                     saturation,
                     saturation * atDry.slope,
                     exponential(atWet.value) * atWet.slope,
                     std::nullopt};
    if (result.dewPoint) {
        // e_w(t_d) is e / f by definition.
        known.slopeAtDew =
            humidity.vapourPressure / f * logSaturationAt(humidity.dewPoint, kSonntagWater).slope;
    }
    const auto budget = budgetOf(known, input.coefficient, input.resolution.kelvins(), input.uncertainty);
    if (budget) {
        result.uncertainty = *budget;
        if (lines != nullptr) {
            *lines = *budget;
        }
    }
    return result;
}

} // namespace

Derivation derive(const PairInput& input) {
    return worked(input, nullptr);
}

std::optional<UncertaintyBudget> budgetOf(const PairInput& input) {
    std::optional<UncertaintyBudget> lines;
    worked(input, &lines);
    return lines;
}

std::vector<Derivation> deriveAll(std::span<const PairInput> inputs) {
    std::vector<Derivation> results;
    results.reserve(inputs.size());
    for (const PairInput& input : inputs) {
        results.push_back(derive(input));
    }
    return results;
}

} // namespace wickbook::psychrometry
