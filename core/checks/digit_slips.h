// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/decimal.h"

#include <string_view>
#include <vector>

/// Slips of eye and hand with the digits of one reading: given what was written, what may have stood on the
/// thermometer, and how probable the slip would have made just this writing. No weather in it.

namespace wickbook::checks {

struct DigitSlip {
    std::string_view kind; ///< "ten-high", "sign", "digits-exchanged" …: the code without the bulb
    units::Decimal truth;  ///< what stood on the thermometer
    double chance; ///< of this slip in a bulb's reading, times that of this writing given truth and slip
    /// Slips of the same kind with the same group differ only in a digit that nobody knows; their beliefs add
    /// up.
    int group = 0;
};

/// stepDecimals: decimals to which the scale is read (1 for tenths, 0.5 and whole degrees written with 0 or
/// 1). Truths finer than the scale are left out.
std::vector<DigitSlip> digitSlips(const units::Decimal& written, int stepDecimals);

} // namespace wickbook::checks
