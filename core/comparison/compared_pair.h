// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/psychrometry/derive.h"

#include <optional>

/// The station's pair and a reference read beside it at the same time: values ready for computing, corrected.

namespace wickbook::comparison {

struct ComparedPair {
    psychrometry::PairInput own;  ///< the station's pair, its pressure and the coefficient in force
    double referenceHumidity = 0; ///< % RH over water, as the reference showed
    /// Air temperature at the reference, °C; none: the air is taken to be as warm as the dry bulb says.
    std::optional<double> referenceTemperature;
    std::optional<int> windBeaufort;
};

/// Vapour pressure by the reference, hPa: U e_w(t) / 100. None where the temperature is out of range.
std::optional<double> referenceVapourPressure(const ComparedPair& pair);

} // namespace wickbook::comparison
