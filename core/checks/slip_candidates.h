// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/derived_reading.h"

#include <string>
#include <vector>

namespace wickbook::checks {

/// A pair that may have stood on the thermometers, and how a slip would have made of it what was written.
struct SlipCandidate {
    std::string code;
    units::ReadTemperature dry;
    units::ReadTemperature wet;
    record::WickState wick = record::WickState::NotGiven;
    double chance = 0; ///< of the slip, times that of this writing given the pair and the slip
    int group = 0;     ///< candidates of one code and group are one cause (digit_slips.h)
};

/// Every single slip that leads to a pair of its own. Pre: the reading has two numbers.
std::vector<SlipCandidate> slipCandidates(const record::DerivedReading& reading);

} // namespace wickbook::checks
