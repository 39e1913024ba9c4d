// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/psychrometry/saturation.h"

#include <array>
#include <optional>
#include <string_view>

/// How air moves past the bulbs decides the psychrometer coefficient A. One table says which.

namespace wickbook::psychrometry {

enum class Exposure { Aspirated, Whirled, SlingUs, Screen, Still, Own };

struct ExposureEntry {
    Exposure exposure;
    std::string_view name;        ///< as on the command line and in files: "sling-us"
    double waterCoefficient;      ///< A0 per kelvin, water bulb
    double waterCoefficientSlope; ///< b in A = A0 (1 + b t_w), per kelvin
    double iceCoefficient;        ///< per kelvin, ice bulb
    bool usesEnhancement;         ///< f(p) rather than 1
    double relativeUncertainty;   ///< u(A)/A, standard uncertainty, our judgement
    std::string_view source;
};

/// All exposures in the order people choose from; Own has no coefficients of its own (zeros) and 4 % as its
/// relative uncertainty where the station states none.
const std::array<ExposureEntry, 6>& exposureTable();
const ExposureEntry& entryOf(Exposure exposure);
std::optional<Exposure> exposureFromName(std::string_view name);

/// The coefficient that one derivation uses. For Own or a number given by hand, f is 1 and the same number
/// serves water and ice unless the station gives two.
struct Coefficient {
    double perKelvin = 0.0;           ///< at this wet bulb
    double enhancement = 1.0;         ///< f
    double relativeUncertainty = 0.0; ///< u(A)/A
};

/// The table's coefficient at a wet-bulb temperature, over water or ice. Pre: exposure is not Own.
Coefficient coefficientFor(Exposure exposure, Surface surface, units::Temperature wetBulb,
                           units::Pressure pressure);

} // namespace wickbook::psychrometry
