// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/output.h"
#include "core/record/revision.h"
#include "core/record/station_record.h"

#include <span>

/// The limits of the checks, written out as text, JSON or CSV. Numbers are in the units of the table of
/// limits.

namespace wickbook::cli {

/// Every limit, with one row for each moment from which the station has a value of its own.
void writeLimits(Output& output, Format format, const record::StationRecord& station,
                 std::span<const record::LimitRevision> revisions, record::Instant now);

/// Every change, oldest first.
void writeLimitHistory(Output& output, Format format, std::span<const record::LimitRevision> revisions);

} // namespace wickbook::cli
