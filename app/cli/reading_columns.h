// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/revision.h"

#include <span>
#include <string>
#include <string_view>

/// What a revision of a reading holds, as names and texts: one table for the history and for what a change
/// alters. Readings stay text: "16.0" is not 16.

namespace wickbook::cli {

struct ReadingColumn {
    std::string_view name;
    std::string (*text)(const record::ObservationRevision&);
};

/// First the stamp (revision, recorded_at, who, why), then the values.
std::span<const ReadingColumn> readingColumns();
inline constexpr std::size_t kStampColumns = 4;

} // namespace wickbook::cli
