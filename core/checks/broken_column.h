// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/pair_fit.h"

#include <span>
#include <vector>

namespace wickbook::checks {

/// A thermometer whose column has parted reads off by a steady amount from then on. Looked for over the
/// reading and the two before it, against what the readings before those lead one to expect.
struct BrokenColumn {
    bool dry = true;
    double offset = 0;    ///< K that the thermometer reads too high
    double logWeight = 0; ///< to be compared with log chance + log probability of the other causes
};

std::vector<BrokenColumn> brokenColumns(const record::DerivedReading& reading,
                                        std::span<const record::DerivedReading> before,
                                        const StationModel& model);

} // namespace wickbook::checks
