// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/psychrometry/psychrometer.h"
#include "core/psychrometry/uncertainty.h"

#include <optional>
#include <span>
#include <vector>

/// One pair in, everything that follows from it out. The single way from two readings to humidity:
/// the window, the command line, the checks and the reports all come here.
/// Nothing is made up: where a step can't be done, the problem is named and what depends on it is missing.

namespace wickbook::psychrometry {

enum class WickState { NotGiven, Water, Ice };

/// Corrected values and what is known of the instrument.
struct PairInput {
    units::Temperature dry = units::Temperature::fromCelsius(0);
    units::Temperature wet = units::Temperature::fromCelsius(0);
    WickState wick = WickState::NotGiven;
    units::Pressure pressure = units::Pressure::fromHectopascals(1013.25);
    CoefficientRule coefficient;
    /// Scale step of the thermometers, K (0.1 by default): decides when water or ice must be given, how far a
    /// wet bulb may stand above the dry one, and the reading's uncertainty.
    units::TemperatureDifference resolution = units::TemperatureDifference::fromKelvins(0.1);
    /// Largest size of the wet bulb's index correction, K: widens the band round 0 °C where the wick is asked
    /// for.
    units::TemperatureDifference wetCorrection = units::TemperatureDifference::fromKelvins(0);
    UncertaintyInput uncertainty;
};

/// Everything derived from a pair. Missing means it could not be had; problem says why. The depression is as
/// read, negative where wet stands above dry; 0 where a bulb is not a finite number.
struct Derivation {
    std::optional<PsychrometryError> problem;         ///< why there is no vapour pressure
    std::optional<PsychrometryError> dewPointProblem; ///< why there is humidity but no dew point
    bool takenAsSaturation = false;                   ///< wet above dry within reading error: used as equal
    bool extrapolated = false; ///< dry bulb, water bulb or dew point below −20 °C over supercooled water
    WickState wickUsed =
        WickState::NotGiven; ///< water where the wet bulb is well above 0 °C and nothing was given
    std::optional<Coefficient> coefficient;
    std::optional<units::VapourPressure> vapourPressure;
    std::optional<units::RelativeHumidity> relativeHumidity;
    std::optional<units::Temperature> dewPoint;
    std::optional<units::Temperature> frostPoint; ///< only where it lies at or below 0 °C
    units::TemperatureDifference depression = units::TemperatureDifference::fromKelvins(0);
    std::optional<units::VapourPressure> vapourPressureDeficit; ///< f e_w(t) − e
    std::optional<double> absoluteHumidity;                     ///< g/m³
    std::optional<double> mixingRatio;                          ///< g/kg
    std::optional<HumidityUncertainty> uncertainty;             ///< expanded, k = 2; its lines: budgetOf()
};

/// Rules, in order: range; wick state; ice above zero; wet above dry (up to max(0.2 K, one step) taken as
/// saturation, beyond: WetAboveDry); ice over dry (U over water above 100 %: within max(0.2 K, one step) of
/// the bulb that gives 100 % taken as saturation, beyond: IceOverDry); no vapour; then all quantities.
Derivation derive(const PairInput& input);

/// The lines behind the uncertainty of the same derivation; none where derive() gives no uncertainty.
std::optional<UncertaintyBudget> budgetOf(const PairInput& input);

/// Whether water or ice must be given for this wet bulb: at or below 0 °C, or where half a scale step or the
/// correction could bring it there.
bool wickStateNeeded(units::Temperature wet, units::TemperatureDifference resolution,
                     units::TemperatureDifference correction);

/// The same for many pairs, one result per pair in the same order.
std::vector<Derivation> deriveAll(std::span<const PairInput> inputs);

} // namespace wickbook::psychrometry
