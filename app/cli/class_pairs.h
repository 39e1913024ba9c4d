// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/outcome.h"
#include "core/comparison/class_round.h"

#include <string>
#include <vector>

namespace wickbook::cli {

/// The pairs of a class from CSV: columns number, dry, wet and perhaps wick, in any order; a decimal comma is
/// understood; an empty cell is a bulb not read. A line that can't be read is refused with its number, since
/// a class is there to write it again. Columns of other names are refused too: names have no place here.
Outcome<std::vector<comparison::PupilPair>> readClassPairs(const std::string& path,
                                                           units::TemperatureUnit unit);

/// The step the thermometers are read in, from the digits that were written, in degrees of the unit: tenths
/// where most pairs have a tenth, halves where every tenth is 0 or 5, else whole degrees; 0.1 of nothing.
double coarsestStep(const std::vector<comparison::PupilPair>& pairs);

} // namespace wickbook::cli
