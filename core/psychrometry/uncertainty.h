// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/psychrometry/psychrometer.h"

#include <array>
#include <optional>
#include <string_view>

/// How sure a derived humidity is: GUM (JCGM 100:2008), first order, stated as k = 2.

namespace wickbook::psychrometry {

/// Standard uncertainties of what goes in. Defaults as in the coefficient table and a tenth-degree scale.
struct UncertaintyInput {
    double dryCorrectionKelvins = 0.0;  ///< u of the dry thermometer's correction
    double wetCorrectionKelvins = 0.0;  ///< u of the wet thermometer's correction
    double correctionCorrelation = 0.0; ///< −1…1; 1 is a common error, which nearly cancels
    double ventilationKelvins = 0.0;    ///< wet bulb: ventilation and wick
    double pressureHectopascals = 1.0;  ///< 1 read, 10 from elevation
};

/// One line of the budget: symbol, its standard uncertainty, the sensitivities and what each contributes.
/// "dry" and "wet" hold reading, correction and, for the wet bulb, ventilation; "corrections" is what the
/// correlation of the two corrections adds or, for a common error, takes away: u = √(|r| u_dry u_wet), share
/// = s |s| u².
struct BudgetLine {
    std::string_view quantity;  ///< "dry", "wet", "corrections", "coefficient", "pressure"
    double standardUncertainty; ///< in the quantity's own unit
    double humiditySensitivity; ///< ∂U/∂x, % per unit
    double dewPointSensitivity; ///< ∂t_d/∂x, K per unit (0 where the dew point is missing)
    double humidityShare;       ///< signed variance contribution, %²
    double dewPointShare;       ///< signed variance contribution, K²
};

/// What a budget comes to.
struct HumidityUncertainty {
    double relativeHumidityU95 = 0.0;  ///< unclipped half-width, k = 2, %
    std::optional<double> dewPointU95; ///< k = 2, K
    double lowestHumidity = 0.0;       ///< end points of the interval shown, within 0…100 %
    double highestHumidity = 0.0;
};

struct UncertaintyBudget : HumidityUncertainty {
    std::array<BudgetLine, 5> lines{}; ///< in the order of BudgetLine::quantity
};

/// The budget for a pair that derives to the humidity given. scaleStep is in kelvins: half a step as a
/// rectangular distribution, u = step / (2 √3). Errors as vapourPressure; an uncertainty that is negative or
/// not finite, or a correlation outside −1…1, gives TemperatureOutOfRange, PressureOutOfRange or
/// CoefficientOutOfRange by its kind.
tl::expected<UncertaintyBudget, PsychrometryError>
uncertaintyBudget(units::Temperature dry, units::Temperature wet, Surface bulb, units::Pressure pressure,
                  const CoefficientRule& rule, double scaleStepKelvins, const UncertaintyInput& input);

/// What is already known of a pair when its budget is wanted.
struct WorkedPair {
    units::Temperature dry = units::Temperature::fromCelsius(0);
    units::Temperature wet = units::Temperature::fromCelsius(0);
    Surface bulb = Surface::Water;
    units::Pressure pressure = units::Pressure::fromHectopascals(1013.25);
    Coefficient coefficient;
    double vapourPressure = 0.0;      ///< e, hPa
    double saturationAtDry = 0.0;     ///< e_w(t), hPa
    double slopeAtDry = 0.0;          ///< e_w'(t), hPa/K
    double slopeAtWet = 0.0;          ///< e_s'(t_w), hPa/K
    std::optional<double> slopeAtDew; ///< e_w'(t_d), hPa/K; none where the dew point is missing
};

/// The budget of a pair already worked out; errors as uncertaintyBudget for the uncertainties given.
tl::expected<UncertaintyBudget, PsychrometryError> budgetOf(const WorkedPair& pair,
                                                            const CoefficientRule& rule,
                                                            double scaleStepKelvins,
                                                            const UncertaintyInput& input);

} // namespace wickbook::psychrometry
