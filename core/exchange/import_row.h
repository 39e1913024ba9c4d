// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_time.h"

/// From the cells of one row to an observation. The rules stand in import_plan.h.

namespace wickbook::exchange {

/// As observationFromFields, with the order of day and month that the file's dates have shown.
tl::expected<record::Observation, RejectedLine> readRow(const FieldCells& cells,
                                                        const record::StationRecord& station,
                                                        const ImportOptions& options, DateOrder order);

} // namespace wickbook::exchange
