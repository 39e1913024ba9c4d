// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/finding.h"

#include <vector>

namespace wickbook::checks {

/// Gives findings that one trouble has brought about the same root, so that they speak as one: a number off
/// the scale makes its own step, a frozen wick its own wet-above-dry. Nothing is removed.
void shareRoots(std::vector<Finding>& findings);

/// Gravest first; among equals the order in which the rules speak.
void sortGravestFirst(std::vector<Finding>& findings);

} // namespace wickbook::checks
