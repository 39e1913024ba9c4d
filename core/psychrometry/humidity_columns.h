// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/psychrometry/saturation.h"

#include <span>

/// Vapour pressure, humidity and dew point of one pair, or of columns of them: the psychrometer equation and
/// Sonntag 1990 as in psychrometer.h and saturation.h, without the questions about the wick and the reading
/// that derive.h asks. Both ways give the same bits.

namespace wickbook::psychrometry {

/// What the equation takes: corrected bulbs °C, pressure hPa, A per kelvin at this wet bulb, f.
struct EquationPair {
    double dry = 0.0;
    double wet = 0.0;
    Surface bulb = Surface::Water;
    double pressure = 0.0;
    double perKelvin = 0.0;
    double enhancement = 1.0;
};

/// What it gives. Not a number where it can't be had: the vapour pressure where a bulb is missing or outside
/// −60…60 °C (an ice bulb: −60…0.01 °C) or no vapour would be left, the dew point also where it lies outside.
struct EquationHumidity {
    double vapourPressure;   ///< e, hPa
    double relativeHumidity; ///< U, %, over water; above 100 where the wet bulb stands above saturation
    double dewPoint;         ///< °C
};

EquationHumidity humidityOf(const EquationPair& pair);

/// Columns of one length. Not a number is a missing value.
struct PairColumns {
    std::span<const double> dry;
    std::span<const double> wet;
    std::span<const Surface> bulb;
    std::span<const double> pressure;
    std::span<const double> perKelvin;
    std::span<const double> enhancement;
};

struct HumidityColumns {
    std::span<double> vapourPressure;
    std::span<double> relativeHumidity;
    std::span<double> dewPoint;
};

/// How wide the instructions are that a column is worked with. Every width gives the same bits.
enum class Width {
    Widest,   ///< the widest this processor has
    Baseline, ///< what every processor of this kind has
};

/// Row by row the same as humidityOf(EquationPair). Pre: all columns have the length of pairs.dry.
void humidityOf(const PairColumns& pairs, const HumidityColumns& results, Width width = Width::Widest);

} // namespace wickbook::psychrometry
