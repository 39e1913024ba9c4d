// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/rule_support.h"

/// What step-temperature and step-dew-point have in common: which earlier reading to compare with, and which
/// limit the interval takes.

namespace wickbook::checks {

/// Value of a reading that is fit for comparison, none otherwise.
using SoundValue = std::optional<double> (*)(const record::DerivedReading&);

/// Appends a finding where the value has moved by more than the limit of its interval since the previous
/// sound reading. A neighbour that itself jumped away from the one before and that this reading jumps back
/// from is taken for the slip and passed over.
void checkStep(const ReadingContext& context, std::string_view code, SoundValue soundValue,
               std::optional<double> value, std::vector<Finding>& findings);

} // namespace wickbook::checks
