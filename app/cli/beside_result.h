// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/output.h"
#include "core/desk/beside_register.h"

/// What a comparison says, as data: for the verb beside, with a book and without.

namespace wickbook::cli {

/// readings: the moment of each pair, in order; empty where the file had none.
Outcome<void> writeBesideReference(Format format, const comparison::BesideReference& spread,
                                   const comparison::FittedCoefficient& water,
                                   const comparison::FittedCoefficient& ice,
                                   const std::vector<record::Instant>& moments);
Outcome<void> writeOverlap(Format format, const comparison::Overlap& overlap);

} // namespace wickbook::cli
