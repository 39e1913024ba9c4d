// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/whole_register.h"

#include <cstddef>
#include <functional>
#include <optional>

/// What a change of the station's periods would do to the register, before it is kept. What was read never
/// changes; what is worked out from it may. The hour a reading is kept under is part of what was written and
/// stays until somebody moves it: here is counted how many would lie under another hour by the new plan.

namespace wickbook::desk {

struct PeriodPreview {
    std::size_t readings = 0;    ///< in the register
    std::size_t rederived = 0;   ///< of which humidity or dew point differ afterwards
    std::size_t anotherHour = 0; ///< that the new plan would file under another hour, or under none
};

/// Derives the register under both; a hundred years of twice-daily readings take a second. progress returning
/// false stops it: no preview then.
Result<std::optional<PeriodPreview>>
previewPeriods(const store::Book& book, const record::StationRecord& now, const record::StationRecord& after,
               const std::function<bool(std::size_t done, std::size_t total)>& progress = {});

} // namespace wickbook::desk
