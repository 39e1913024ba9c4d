// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/derive_text.h"

#include "app/cli/finding_text.h"
#include "core/units/number_text.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"

#include <fmt/format.h>

#include <cmath>

namespace wickbook::cli {

namespace {

/// Name and value in two columns.
void line(std::string& text, std::string_view name, const std::string& value) {
    text += fmt::format("  {:<24}{}\n", name, value);
}

/// With a plain blank: no line is broken here, and people search for "± 1.5".
std::string halfWidth(double u95, int decimals) {
    return ui::plusMinusWords(QLocale::c(), u95, decimals)
        .replace(QChar::Nbsp, QLatin1Char(' '))
        .toStdString();
}

void leadText(std::string& text, const psychrometry::Derivation& derivation) {
    const double humidity = derivation.relativeHumidity->percent();
    text += fmt::format("Relative humidity {} % ({})", paperNumber(humidity, 0), paperNumber(humidity, 2));
    if (derivation.uncertainty) {
        text += fmt::format(" {}", halfWidth(derivation.uncertainty->relativeHumidityU95, 1));
    }
    if (derivation.dewPoint) {
        const double dew = derivation.dewPoint->celsius();
        text += fmt::format(", dew point {} °C ({})", paperNumber(dew, 1), paperNumber(dew, 2));
        if (derivation.uncertainty && derivation.uncertainty->dewPointU95) {
            text += fmt::format(" {}", halfWidth(*derivation.uncertainty->dewPointU95, 1));
        }
    } else {
        text += ", no dew point";
    }
    text += '\n';
    if (derivation.uncertainty) {
        const auto& budget = *derivation.uncertainty;
        const bool cut =
            humidity - budget.relativeHumidityU95 < 0 || humidity + budget.relativeHumidityU95 > 100;
        text += fmt::format("± holds for about 95 readings in 100 (k = 2){}.\n",
                            cut ? fmt::format("; the humidity lies between {} and {} %",
                                              paperNumber(budget.lowestHumidity, 1),
                                              paperNumber(budget.highestHumidity, 1))
                                : std::string{});
    }
}

void quantitiesText(std::string& text, const psychrometry::Derivation& derivation) {
    line(text, "vapour pressure", paperNumber(derivation.vapourPressure->hectopascals(), 2) + " hPa");
    if (derivation.frostPoint) {
        line(text, "frost point", paperNumber(derivation.frostPoint->celsius(), 2) + " °C");
    }
    line(text, "depression", paperNumber(derivation.depression.kelvins(), 2) + " °C");
    if (derivation.vapourPressureDeficit) {
        line(text, "vapour pressure deficit",
             paperNumber(derivation.vapourPressureDeficit->hectopascals(), 2) + " hPa");
    }
    if (derivation.absoluteHumidity) {
        line(text, "absolute humidity", paperNumber(*derivation.absoluteHumidity, 2) + " g/m³");
    }
    if (derivation.mixingRatio) {
        line(text, "mixing ratio", paperNumber(*derivation.mixingRatio, 2) + " g/kg");
    }
}

void basisText(std::string& text, const PairResult& result) {
    const auto& derivation = *result.derivation;
    line(text, "dry bulb, wet bulb",
         fmt::format("{} °C, {} °C{}", paperNumber(result.input.dry.celsius(), 2),
                     paperNumber(result.input.wet.celsius(), 2),
                     derivation.wickUsed == psychrometry::WickState::Ice     ? ", wick frozen"
                     : derivation.wickUsed == psychrometry::WickState::Water ? ", wick of water"
                                                                             : ""));
    if (derivation.coefficient) {
        line(text, "coefficient",
             fmt::format("{} per K, {}", units::exactText(derivation.coefficient->perKelvin),
                         result.input.coefficient.perKelvin ? std::string{"given"}
                                                            : coefficientSource(result)));
    }
    line(text, "pressure",
         fmt::format("{} hPa, {}", paperNumber(result.input.pressure.hectopascals(), 2),
                     pressureOriginText(result.pressureOrigin)));
}

void findingsText(std::string& text, const PairResult& result) {
    for (const checks::Finding& finding : result.findings) {
        const auto words = wordsFor(finding);
        text += fmt::format("{} ({}): {} {}\n", words.title.toStdString(), finding.code,
                            words.message.toStdString(), words.remedy.toStdString());
    }
}

} // namespace

std::string paperNumber(double value, int decimals) {
    return ui::numberWords(QLocale::c(), value, decimals).toStdString();
}

std::string coefficientSource(const PairResult& result) {
    if (!result.exposure) {
        return {};
    }
    const auto& entry = psychrometry::entryOf(*result.exposure);
    return fmt::format("{}: {}", entry.name, entry.source);
}

std::string pressureOriginText(PressureOrigin origin) {
    switch (origin) {
    case PressureOrigin::Given:
        return "given";
    case PressureOrigin::Elevation:
        return "standard atmosphere at the elevation given";
    case PressureOrigin::Assumed:
        return "assumed: the mean at sea level";
    }
    return {};
}

std::string pairText(const PairResult& result) {
    std::string text;
    const bool derived = result.derivation && !result.derivation->problem;
    if (derived) {
        leadText(text, *result.derivation);
        quantitiesText(text, *result.derivation);
    } else {
        text += "No humidity can be given for this pair.\n";
    }
    if (result.derivation) {
        basisText(text, result);
    }
    findingsText(text, result);
    return text;
}

} // namespace wickbook::cli
