// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/whole_register.h"

#include <cstddef>
#include <functional>
#include <optional>

/// What a change of the checks' limits would do to the register, before it is applied. The whole register is
/// judged twice, with likely causes as elsewhere, so that the number is exact; readings from before the first
/// moment that differs are not judged, for nothing changes there.

namespace wickbook::desk {

struct LimitPreview {
    std::size_t readings = 0;    ///< in the register
    std::size_t changed = 0;     ///< of which the findings, or how grave they are, differ afterwards
    std::size_t newlyMarked = 0; ///< without a finding of soft or worse now, with one afterwards
    std::size_t noLonger = 0;    ///< the other way round
    std::size_t setAside = 0;    ///< left out of statistics afterwards and not now
    std::size_t takenIn = 0;     ///< the other way round
};

/// done of total in three equal parts: reading, judging as it is, judging as it would be. None where progress
/// stopped it.
Result<std::optional<LimitPreview>>
previewLimits(const store::Book& book, const record::StationRecord& station,
              const record::LimitChanges& after, std::optional<record::Instant> now,
              const std::function<bool(std::size_t done, std::size_t total)>& progress = {});

} // namespace wickbook::desk
