// SPDX-License-Identifier: GPL-3.0-or-later
// Symbols: t dry bulb, t_w wet bulb, t_d dew point °C, A coefficient K⁻¹, p pressure hPa, e_s saturation hPa.
// Source:  change of variables: |∂(t, t_d)/∂(t, t_w)| = (f e_s'(t_w) + A p) / (f e_w'(t_d)), from the
// psychrometer
//          equation of core/psychrometry/psychrometer.h.
// Range:   as there; outside, a pair counts as impossible.
#include "core/checks/pair_fit.h"

#include "core/checks/log_sum.h"
#include "core/psychrometry/ranges.h"

#include <algorithm>
#include <cmath>

namespace wickbook::checks {

namespace {

using psychrometry::Surface;
using record::WickState;
using units::Temperature;

constexpr double kTolerance = 0.2;        // K, a wet bulb above the dry one by reading error
constexpr double kIceAboveDry = 0.6;      // K, fog over an ice bulb, and the tolerance
constexpr double kUsualPressure = 1000.0; // hPa, where what was read can't be

} // namespace

PairFit::PairFit(const record::DerivedReading& reading, const record::DerivedReading* neighbour,
                 const Expectation& expectation)
    : expectation_(expectation)
    , dryStep_(std::max(reading.dry.step.kelvins(), 0.05))
    , wetStep_(std::max(reading.wet.step.kelvins(), 0.05)) {
    if (reading.derivation) {
        input_ = reading.input;
    } else if (neighbour != nullptr) {
        input_ = neighbour->input;
    }
    input_.pressure = psychrometry::isInRange(reading.pressure)
                          ? reading.pressure
                          : units::Pressure::fromHectopascals(kUsualPressure);
    input_.resolution = std::max(reading.dry.step, reading.wet.step);
}

double PairFit::logProbability(double dry, double wet, WickState wick) const {
    if (wick == WickState::NotGiven &&
        psychrometry::wickStateNeeded(Temperature::fromCelsius(wet), input_.resolution,
                                      input_.wetCorrection)) {
        return logSum(logProbability(dry, wet, Surface::Water), logProbability(dry, wet, Surface::Ice)) -
               std::log(2.0);
    }
    return logProbability(dry, wet, wick == WickState::Ice ? Surface::Ice : Surface::Water);
}

double PairFit::logProbability(double dry, double wet, Surface bulb) const {
    const double step = input_.resolution.kelvins();
    const double above = wet - dry;
    const double allowed = bulb == Surface::Ice ? kIceAboveDry : std::max(kTolerance, step);
    if (!psychrometry::isInRange(Temperature::fromCelsius(dry)) || above > allowed + 1e-9 ||
        (bulb == Surface::Ice && wet > step + 1e-9)) {
        return kImpossible;
    }
    const double held = bulb == Surface::Ice ? std::min(wet, 0.0) : std::min(wet, dry);
    const auto wetBulb = Temperature::fromCelsius(held);
    const auto coefficient = input_.coefficient.at(bulb, wetBulb, input_.pressure);
    if (!coefficient) {
        return kImpossible;
    }
    const auto e = psychrometry::vapourPressure(Temperature::fromCelsius(dry), wetBulb, bulb, input_.pressure,
                                                *coefficient);
    if (!e) {
        return kImpossible;
    }
    const auto dewPoint = psychrometry::dewPoint(*e, coefficient->enhancement);
    if (!dewPoint) {
        return kImpossible;
    }
    const auto slopeAtWet = psychrometry::saturationSlope(wetBulb, bulb);
    const auto slopeAtDew = psychrometry::saturationSlope(*dewPoint, Surface::Water);
    if (!slopeAtWet || !slopeAtDew) {
        return kImpossible;
    }
    const double perWet =
        (coefficient->enhancement * *slopeAtWet + coefficient->perKelvin * input_.pressure.hectopascals()) /
        (coefficient->enhancement * *slopeAtDew);
    return expectation_.logDensity(dry, dewPoint->celsius()) + std::log(perWet * dryStep_ * wetStep_);
}

double PairFit::logProbabilityDry(double dry) const {
    return expectation_.logDensityTemperature(dry) + std::log(dryStep_);
}

double PairFit::logProbabilityWet(double wet) const {
    constexpr double kNarrower = 0.5; // of the variance: the wet bulb varies less than the dry one
    Expectation midway = expectation_;
    midway.temperature = (expectation_.temperature + expectation_.dewPoint) / 2;
    midway.varianceTemperature *= kNarrower;
    return midway.logDensityTemperature(wet) + std::log(wetStep_);
}

psychrometry::Derivation PairFit::derive(double dry, double wet, WickState wick) const {
    psychrometry::PairInput input = input_;
    input.dry = Temperature::fromCelsius(dry);
    input.wet = Temperature::fromCelsius(wet);
    input.wick = wick;
    return psychrometry::derive(input);
}

} // namespace wickbook::checks
