// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/sef_reader.h"

#include <span>

namespace wickbook::exchange {

/// Brings SEF files of one station together on time: dry bulb, wet bulb and pressure of the same minute are
/// one reading; a moment that only some of the files have is a reading without the rest. A second file of the
/// same variable continues the first. A value that differs from one already there for the same moment is
/// rejected, and so are lines that say nothing was read where no other file has a value. Line and text of a
/// reading are those of its first file; the texts of the others stand below it, so that a rejected reading is
/// handed back whole. Files that were left aside are named in the plan. Errors: SefStationsDiffer, SefNothing
/// (no file with a bulb or a pressure).
tl::expected<ImportPlan, ImportError> joinSef(std::span<const SefFile> files,
                                              const record::StationRecord& station);

} // namespace wickbook::exchange
