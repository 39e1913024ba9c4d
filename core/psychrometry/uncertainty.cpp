// SPDX-License-Identifier: GPL-3.0-or-later
// Symbols: t dry bulb, t_w wet bulb °C, d = t − t_w, p air pressure hPa, e_w(t) and e_s(t_w) saturation
// vapour
//          pressure hPa and their slopes e_w', e_s', A coefficient per kelvin, b its relative slope with t_w,
//          f enhancement factor, x = e / f, U = 100 x / e_w(t), t_d dew point with e_w(t_d) = x, u() standard
//          uncertainty, r correlation of the two corrections.
// Source:  JCGM 100:2008 (GUM), equation 16 (correlated inputs, first order); 4.3.7 for half a scale step as
// a
//          rectangular distribution, u = step / (2 √3). The derivatives are those of WMO-No. 8, Annex 4.B:
//            ∂x/∂t   = −A p / f
//            ∂x/∂t_w = e_s' + (A p − A0 b p d) / f
//            ∂x/∂A   = −p d / f
//            ∂x/∂p   = −(A d / f) (1 − p f' / f)
//            ∂U/∂t   = 100 (∂x/∂t) / e_w − U e_w' / e_w, else ∂U/∂y = 100 (∂x/∂y) / e_w
//            ∂t_d/∂y = (∂x/∂y) / e_w'(t_d)
// Range:   that of the psychrometer equation. First order fails near 0 and 100 %, where the interval shown is
// cut.
#include "core/psychrometry/uncertainty.h"

#include "core/psychrometry/ranges.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace wickbook::psychrometry {

namespace {

constexpr double kCoverage = 2.0; // k = 2, about 95 %

/// A0 b: how A itself changes with the wet bulb, per kelvin². A number given by hand is one number.
double coefficientSlope(const CoefficientRule& rule, Surface bulb) {
    if (bulb == Surface::Ice || rule.perKelvin) {
        return 0.0;
    }
    const ExposureEntry& entry = entryOf(rule.exposure);
    return entry.waterCoefficient * entry.waterCoefficientSlope;
}

/// f'(p), per hPa; 0 where f is 1.
double enhancementSlope(const Coefficient& coefficient, double pressure) {
    // The one exposure with an enhancement factor takes WMO's; its derivative is written out here.
    return coefficient.enhancement == 1.0 ? 0.0 : 3.15e-6 + 0.074 / (pressure * pressure);
}

std::optional<PsychrometryError> refusedInput(double scaleStepKelvins, const UncertaintyInput& input) {
    if (!isNotNegative(scaleStepKelvins) || !isNotNegative(input.dryCorrectionKelvins) ||
        !isNotNegative(input.wetCorrectionKelvins) || !isNotNegative(input.ventilationKelvins)) {
        return PsychrometryError::TemperatureOutOfRange;
    }
    if (!isNotNegative(input.pressureHectopascals)) {
        return PsychrometryError::PressureOutOfRange;
    }
    if (!(std::abs(input.correctionCorrelation) <= 1.0)) {
        return PsychrometryError::CoefficientOutOfRange;
    }
    return std::nullopt;
}

/// A line whose share is (sensitivity × u)².
BudgetLine independentLine(std::string_view quantity, double u, double humiditySensitivity,
                           double dewPointSensitivity) {
    return {quantity,
            u,
            humiditySensitivity,
            dewPointSensitivity,
            humiditySensitivity * humiditySensitivity * u * u,
            dewPointSensitivity * dewPointSensitivity * u * u};
}

/// The covariance term 2 c1 c2 r u1 u2 written as a line: u = √(|r| u1 u2), sensitivity √(2 |c1 c2|) with the
/// sign of the term. A common error gives a negative share: it nearly cancels.
BudgetLine correlationLine(const UncertaintyInput& input, const BudgetLine& dry, const BudgetLine& wet) {
    const double covariance =
        input.correctionCorrelation * input.dryCorrectionKelvins * input.wetCorrectionKelvins;
    const auto term = [&](double c1, double c2) { return 2.0 * c1 * c2 * covariance; };
    const auto sensitivity = [&](double c1, double c2) {
        return std::copysign(std::sqrt(2.0 * std::abs(c1 * c2)), term(c1, c2));
    };
    return {"corrections",
            std::sqrt(std::abs(covariance)),
            sensitivity(dry.humiditySensitivity, wet.humiditySensitivity),
            sensitivity(dry.dewPointSensitivity, wet.dewPointSensitivity),
            term(dry.humiditySensitivity, wet.humiditySensitivity),
            term(dry.dewPointSensitivity, wet.dewPointSensitivity)};
}

double expanded(const std::array<BudgetLine, 5>& lines, double BudgetLine::*share) {
    double variance = 0.0;
    for (const BudgetLine& line : lines) {
        variance += line.*share;
    }
    // Full correlation may leave −1e-18 instead of nothing.
    return kCoverage * std::sqrt(std::max(variance, 0.0));
}

} // namespace

tl::expected<UncertaintyBudget, PsychrometryError> budgetOf(const WorkedPair& pair,
                                                            const CoefficientRule& rule,
                                                            double scaleStepKelvins,
                                                            const UncertaintyInput& input) {
    if (const auto refused = refusedInput(scaleStepKelvins, input)) {
        return tl::unexpected(*refused);
    }
    const double f = pair.coefficient.enhancement;
    const double a = pair.coefficient.perKelvin;
    const double p = pair.pressure.hectopascals();
    const double d = (pair.dry - pair.wet).kelvins();
    const double x = pair.vapourPressure / f;
    const double ew = pair.saturationAtDry;
    const double humidity = 100.0 * x / ew;

    const double byDry = -a * p / f;
    const double byWet = pair.slopeAtWet + (a - coefficientSlope(rule, pair.bulb) * d) * p / f;
    const double byCoefficient = -p * d / f;
    const double byPressure = -(a * d / f) * (1.0 - p * enhancementSlope(pair.coefficient, p) / f);

    // Where the dew point is missing it has no sensitivities.
    const double perVapour = pair.slopeAtDew ? 1.0 / *pair.slopeAtDew : 0.0;
    const double percent = 100.0 / ew;

    const double reading = scaleStepKelvins / (2.0 * std::numbers::sqrt3);
    const double uDry = std::hypot(reading, input.dryCorrectionKelvins);
    const double uWet = std::hypot(reading, input.wetCorrectionKelvins, input.ventilationKelvins);

    UncertaintyBudget budget;
    const BudgetLine dryLine =
        independentLine("dry", uDry, percent * byDry - humidity * pair.slopeAtDry / ew, perVapour * byDry);
    const BudgetLine wetLine = independentLine("wet", uWet, percent * byWet, perVapour * byWet);
    budget.lines = {dryLine, wetLine, correlationLine(input, dryLine, wetLine),
                    independentLine("coefficient", pair.coefficient.relativeUncertainty * a,
                                    percent * byCoefficient, perVapour * byCoefficient),
                    independentLine("pressure", input.pressureHectopascals, percent * byPressure,
                                    perVapour * byPressure)};
    budget.relativeHumidityU95 = expanded(budget.lines, &BudgetLine::humidityShare);
    if (pair.slopeAtDew) {
        budget.dewPointU95 = expanded(budget.lines, &BudgetLine::dewPointShare);
    }
    budget.lowestHumidity = std::clamp(humidity - budget.relativeHumidityU95, 0.0, 100.0);
    budget.highestHumidity = std::clamp(humidity + budget.relativeHumidityU95, 0.0, 100.0);
    return budget;
}

tl::expected<UncertaintyBudget, PsychrometryError>
uncertaintyBudget(units::Temperature dry, units::Temperature wet, Surface bulb, units::Pressure pressure,
                  const CoefficientRule& rule, double scaleStepKelvins, const UncertaintyInput& input) {
    if (const auto refused = refusedInput(scaleStepKelvins, input)) {
        return tl::unexpected(*refused);
    }
    const auto coefficient = rule.at(bulb, wet, pressure);
    if (!coefficient) {
        return tl::unexpected(coefficient.error());
    }
    const auto vapour = vapourPressure(dry, wet, bulb, pressure, *coefficient);
    if (!vapour) {
        return tl::unexpected(vapour.error());
    }
    const auto saturation = saturationVapourPressure(dry, Surface::Water);
    const auto slopeAtDry = saturationSlope(dry, Surface::Water);
    const auto slopeAtWet = saturationSlope(wet, bulb);
    if (!saturation || !slopeAtDry || !slopeAtWet) {
        return tl::unexpected(PsychrometryError::TemperatureOutOfRange);
    }
    WorkedPair pair{dry,
                    wet,
                    bulb,
                    pressure,
                    *coefficient,
                    vapour->hectopascals(),
                    saturation->hectopascals(),
                    *slopeAtDry,
                    *slopeAtWet,
                    std::nullopt};
    if (const auto dew = dewPoint(*vapour, coefficient->enhancement)) {
        const auto slope = saturationSlope(*dew, Surface::Water);
        pair.slopeAtDew = slope ? std::optional{*slope} : std::nullopt;
    }
    return budgetOf(pair, rule, scaleStepKelvins, input);
}

} // namespace wickbook::psychrometry
