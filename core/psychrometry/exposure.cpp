// SPDX-License-Identifier: GPL-3.0-or-later
// Symbols: A psychrometer coefficient per kelvin, t_w wet bulb °C, f enhancement factor, u(A)/A its relative
//          standard uncertainty.
// Source:  named in each row. The uncertainties are our judgement and can be changed per station.
// Range:   bulbs of −60…60 °C, 300…1100 hPa.
#include "core/psychrometry/exposure.h"

#include <algorithm>

namespace wickbook::psychrometry {

const std::array<ExposureEntry, 6>& exposureTable() {
    static constexpr std::array<ExposureEntry, 6> kTable{{
        {Exposure::Aspirated, "aspirated", 6.53e-4, 0.000944, 5.75e-4, true, 0.02,
         "WMO-No. 8, Annex 4.B; Sonntag 1990: drawn by a fan at 2.5 m/s or more"},
        // Digits of the water value and the ice value as remembered from those tables.
        {Exposure::Whirled, "whirled", 6.66e-4, 0.0, 5.94e-4, false, 0.04,
         "long-used hygrometric tables (6.67e-4 in Sargent 1980; ice as in ASCE/FAO): whirled at 3 m/s or "
         "more"},
        {Exposure::SlingUs, "sling-us", 6.60e-4, 0.00115, 5.82e-4, false, 0.04,
         "AMS Glossary of Meteorology; Ferrel, Smithsonian tables: United States sling practice"},
        {Exposure::Screen, "screen", 7.99e-4, 0.0, 7.20e-4, false, 0.10,
         "Sargent 1980 (ice value from memory): louvred screen, natural air of about 1 m/s"},
        // No source gives a value for ice in still air: the water value scaled as the others are.
        {Exposure::Still, "still", 1.2e-3, 0.0, 1.06e-3, false, 0.25,
         "FAO-56 equation 16 (ice scaled by us): indoors without ventilation, a poor measurement"},
        // 4 %: a coefficient somebody fitted is taken to be as sure as a well-kept whirled instrument's until
        // the station states its own uncertainty.
        {Exposure::Own, "own", 0.0, 0.0, 0.0, false, 0.04, "the station's own comparison"},
    }};
    return kTable;
}

const ExposureEntry& entryOf(Exposure exposure) {
    return exposureTable().at(static_cast<std::size_t>(exposure));
}

std::optional<Exposure> exposureFromName(std::string_view name) {
    const auto& table = exposureTable();
    const auto found =
        std::find_if(table.begin(), table.end(), [&](const auto& entry) { return entry.name == name; });
    return found == table.end() ? std::nullopt : std::optional{found->exposure};
}

Coefficient coefficientFor(Exposure exposure, Surface surface, units::Temperature wetBulb,
                           units::Pressure pressure) {
    const ExposureEntry& entry = entryOf(exposure);
    const double perKelvin =
        surface == Surface::Ice
            ? entry.iceCoefficient
            : entry.waterCoefficient * (1.0 + entry.waterCoefficientSlope * wetBulb.celsius());
    return {perKelvin, entry.usesEnhancement ? enhancementFactor(pressure) : 1.0, entry.relativeUncertainty};
}

} // namespace wickbook::psychrometry
