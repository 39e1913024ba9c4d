// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/whole_register.h"

#include <date/date.h>

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

/// What a change of the station's facts (a correction that came late, another coefficient, a thermometer that
/// hung there all along) would do to what is worked out of the register, month by month, before it is kept.
/// What was read never changes.

namespace wickbook::desk {

/// A month with at least one reading whose humidity or dew point would differ. Means are of the month's
/// readings that have humidity both ways, each reading counted alike.
struct ChangedMonth {
    date::year_month month;
    std::size_t readings = 0;                            ///< with humidity both ways
    std::size_t rederived = 0;                           ///< whose humidity or dew point differ
    std::size_t lost = 0;                                ///< with humidity now and none afterwards
    std::size_t gained = 0;                              ///< the other way round
    std::optional<double> humidityBefore, humidityAfter; ///< mean, %
    std::optional<double> dewPointBefore, dewPointAfter; ///< mean, °C, of those that have one both ways
    double largestChange = 0;                            ///< of one reading's humidity, % RH, with its sign
};

struct ChangedRegister {
    std::size_t readings = 0;
    std::size_t rederived = 0;
    std::vector<ChangedMonth> months; ///< in order; months without a change are not there
};

/// Both as values of the station: as it is and as it would be. None where progress stopped it.
Result<std::optional<ChangedRegister>>
changedMonths(const store::Book& book, const record::StationRecord& now, const record::StationRecord& after,
              const std::function<bool(std::size_t done, std::size_t total)>& progress = {});

} // namespace wickbook::desk
