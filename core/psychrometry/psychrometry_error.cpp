// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/psychrometry/psychrometry_error.h"

namespace wickbook::psychrometry {

std::string_view name(PsychrometryError error) {
    switch (error) {
    case PsychrometryError::TemperatureOutOfRange:
        return "temperature-out-of-range";
    case PsychrometryError::PressureOutOfRange:
        return "pressure-out-of-range";
    case PsychrometryError::CoefficientOutOfRange:
        return "coefficient-out-of-range";
    case PsychrometryError::WickStateUnknown:
        return "wick-state-unknown";
    case PsychrometryError::WetAboveDry:
        return "wet-above-dry";
    case PsychrometryError::IceOverDry:
        return "ice-over-dry";
    case PsychrometryError::IceAboveZero:
        return "ice-above-zero";
    case PsychrometryError::NoVapour:
        return "no-vapour";
    case PsychrometryError::BelowRange:
        return "below-range";
    case PsychrometryError::AboveRange:
        return "above-range";
    case PsychrometryError::NoSolution:
        return "no-solution";
    }
    return "unknown"; // only a value cast from a stray integer comes here
}

} // namespace wickbook::psychrometry
