// SPDX-License-Identifier: GPL-3.0-or-later
// Symbols: t dry bulb, t_w wet bulb °C, T = t + 273.15 K, p pressure hPa, A coefficient per K, f enhancement
//          factor, e vapour pressure hPa, e_w / e_i saturation over water / ice hPa, U relative humidity %,
//          u standard uncertainty.
// Source:  the equations of core/psychrometry, written out with the numbers that were used; nothing is
//          computed here that derive() has not computed.
#include "app/cli/derive_text.h"
#include "core/psychrometry/saturation.h"
#include "core/units/number_text.h"
#include "ui/text/number_words.h"

#include <fmt/format.h>

#include <cmath>

namespace wickbook::cli {

namespace {

using psychrometry::Surface;

constexpr std::string_view kOverWater =
    "−6096.9385/T + 16.635794 − 2.711193e−2 T + 1.673952e−5 T² + 2.433502 ln T";
constexpr std::string_view kOverIce =
    "−6024.5282/T + 24.7219 + 1.0613868e−2 T − 1.3198825e−5 T² − 0.49382577 ln T";

/// A second factor in a product: −0.4 stands in brackets.
std::string factor(double value, int decimals) {
    const std::string text = paperNumber(value, decimals);
    return value < 0 ? "(" + text + ")" : text;
}

/// One line of Sonntag's formula with its T, and the value.
void saturationStep(std::string& text, std::string_view symbol, std::string_view bulb,
                    units::Temperature temperature, Surface surface) {
    const auto saturation = psychrometry::saturationVapourPressure(temperature, surface);
    if (!saturation) {
        return;
    }
    text += fmt::format("   ln {} = {}\n", symbol, surface == Surface::Ice ? kOverIce : kOverWater);
    text += fmt::format("   T = {} + 273.15 = {} K, so {}({}) = {} hPa\n", factor(temperature.celsius(), 2),
                        paperNumber(temperature.kelvin(), 2), symbol, bulb,
                        paperNumber(saturation->hectopascals(), 4));
}

void coefficientStep(std::string& text, const PairResult& result) {
    const auto& derivation = *result.derivation;
    const double a = derivation.coefficient->perKelvin;
    const double f = derivation.coefficient->enhancement;
    const bool ice = derivation.wickUsed == psychrometry::WickState::Ice;
    if (result.input.coefficient.perKelvin) {
        text += fmt::format("   A = {} per K, given; f = 1\n", units::exactText(a));
        return;
    }
    const auto& entry = psychrometry::entryOf(*result.exposure);
    if (!ice && entry.waterCoefficientSlope != 0.0) {
        text += fmt::format("   A = {} (1 + {} t_w) = {} per K\n", units::exactText(entry.waterCoefficient),
                            units::exactText(entry.waterCoefficientSlope), units::fixedText(a, 9));
    } else {
        text += fmt::format("   A = {} per K over {}\n", units::exactText(a), ice ? "ice" : "water");
    }
    text += fmt::format("   {}\n", coefficientSource(result));
    if (entry.usesEnhancement) {
        text += fmt::format("   f(p) = 1.0016 + 3.15e−6 p − 0.074/p = {}\n", units::fixedText(f, 6));
    } else {
        text += "   f = 1\n";
    }
}

void vapourStep(std::string& text, const PairResult& result) {
    const auto& derivation = *result.derivation;
    const double f = derivation.coefficient->enhancement;
    const bool ice = derivation.wickUsed == psychrometry::WickState::Ice;
    const std::string vapour = paperNumber(derivation.vapourPressure->hectopascals(), 4);
    const std::string_view symbol = ice ? "e_i" : "e_w";
    if (derivation.takenAsSaturation) {
        text +=
            fmt::format("   the wet bulb stands above the dry one by no more than reading error: taken as "
                        "saturated, e = {} hPa\n",
                        vapour);
        return;
    }
    // What derive() used: ice can't be warmer than its melting point.
    const double wet = ice ? std::min(result.input.wet.celsius(), 0.0) : result.input.wet.celsius();
    saturationStep(text, symbol, "t_w", units::Temperature::fromCelsius(wet),
                   ice ? Surface::Ice : Surface::Water);
    const auto saturation = psychrometry::saturationVapourPressure(units::Temperature::fromCelsius(wet),
                                                                   ice ? Surface::Ice : Surface::Water);
    text += fmt::format("   e = f {}(t_w) − A p (t − t_w)\n", symbol);
    if (saturation) {
        text += fmt::format("     = {} × {} − {} × {} × {} = {} hPa\n",
                            units::exactText(std::round(f * 1e6) / 1e6),
                            paperNumber(saturation->hectopascals(), 4),
                            units::exactText(std::round(derivation.coefficient->perKelvin * 1e9) / 1e9),
                            paperNumber(result.input.pressure.hectopascals(), 2),
                            factor(result.input.dry.celsius() - wet, 2), vapour);
    }
}

void budgetText(std::string& text, const psychrometry::UncertaintyBudget& budget) {
    text += "Uncertainty, first order (GUM): u times sensitivity, for humidity in %, for dew point in K\n";
    text += fmt::format("   {:<14}{:>12} {:<6}{:>14}{:>10}{:>14}{:>10}\n", "quantity", "u", "", "∂U/∂x",
                        "% RH", "∂t_d/∂x", "K");
    const auto share = [](double variance) { return std::copysign(std::sqrt(std::abs(variance)), variance); };
    for (const auto& row : budget.lines) {
        const bool coefficient = row.quantity == "coefficient";
        const std::string_view unit = coefficient ? "1/K" : row.quantity == "pressure" ? "hPa" : "K";
        text += fmt::format("   {:<14}{:>12} {:<6}{:>12}{:>10}{:>12}{:>10}\n", row.quantity,
                            units::fixedText(row.standardUncertainty, coefficient ? 8 : 4), unit,
                            units::fixedText(row.humiditySensitivity, coefficient ? 1 : 4),
                            units::fixedText(share(row.humidityShare), 3),
                            units::fixedText(row.dewPointSensitivity, coefficient ? 1 : 4),
                            units::fixedText(share(row.dewPointShare), 3));
    }
    text += fmt::format("   root of the sum of squares, times 2 (k = 2): ± {} % RH",
                        units::fixedText(budget.relativeHumidityU95, 3));
    if (budget.dewPointU95) {
        text += fmt::format(", ± {} K dew point", units::fixedText(*budget.dewPointU95, 3));
    }
    text += fmt::format("\n   humidity between {} and {} %\n", units::fixedText(budget.lowestHumidity, 2),
                        units::fixedText(budget.highestHumidity, 2));
}

} // namespace

std::string workingText(const PairResult& result) {
    std::string text = "\nWorking\n";
    const auto& derivation = *result.derivation;
    text +=
        fmt::format("1. Readings: t = {} °C, t_w = {} °C, depression t − t_w = {} K\n",
                    paperNumber(result.input.dry.celsius(), 2), paperNumber(result.input.wet.celsius(), 2),
                    paperNumber(derivation.depression.kelvins(), 2));
    text += fmt::format("2. Pressure: p = {} hPa, {}\n", paperNumber(result.input.pressure.hectopascals(), 2),
                        pressureOriginText(result.pressureOrigin));
    if (!derivation.coefficient) {
        return text + "The work ends here: see the findings.\n";
    }
    text += "3. Psychrometer coefficient\n";
    coefficientStep(text, result);
    if (derivation.problem) {
        return text + "The work ends here: see the findings.\n";
    }
    text += "4. Vapour pressure (saturation after Sonntag 1990)\n";
    vapourStep(text, result);
    text += "5. Relative humidity, over water\n";
    saturationStep(text, "e_w", "t", result.input.dry, Surface::Water);
    const auto atDry = psychrometry::saturationVapourPressure(result.input.dry, Surface::Water);
    if (atDry) {
        text += fmt::format("   U = 100 e / (f e_w(t)) = 100 × {} / ({} × {}) = {} %\n",
                            paperNumber(derivation.vapourPressure->hectopascals(), 4),
                            units::exactText(std::round(derivation.coefficient->enhancement * 1e6) / 1e6),
                            paperNumber(atDry->hectopascals(), 4),
                            paperNumber(derivation.relativeHumidity->percent(), 4));
    }
    text += "6. Dew point: the temperature at which f e_w = e\n";
    text += derivation.dewPoint
                ? fmt::format("   t_d = {} °C\n", paperNumber(derivation.dewPoint->celsius(), 4))
                : std::string{"   lies below −60 °C and is left out\n"};
    if (derivation.frostPoint) {
        text += fmt::format("   frost point, where f e_i = e: {} °C\n",
                            paperNumber(derivation.frostPoint->celsius(), 4));
    }
    if (const auto budget = psychrometry::budgetOf(result.input)) {
        budgetText(text, *budget);
    }
    return text;
}

} // namespace wickbook::cli
