// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/climate/completeness.h"

#include <algorithm>

namespace wickbook::climate {

std::string_view withheldName(Withheld withheld) {
    switch (withheld) {
    case Withheld::TooManyMissing:
        return "too-many-days-missing";
    case Withheld::TooManyInARow:
        return "too-many-days-in-a-row";
    case Withheld::NothingRead:
        return "nothing-read";
    case Withheld::No:
        break;
    }
    return {};
}

MissingDays missingDays(std::span<const DayState> days) {
    MissingDays missing;
    int run = 0;
    for (const DayState day : days) {
        if (day == DayState::Skipped) {
            continue;
        }
        run = day == DayState::Missing ? run + 1 : 0;
        missing.days += day == DayState::Missing ? 1 : 0;
        missing.longestRun = std::max(missing.longestRun, run);
    }
    return missing;
}

Withheld judgeCompleteness(std::span<const DayState> days, const CompletenessRule& rule) {
    if (std::find(days.begin(), days.end(), DayState::Counted) == days.end()) {
        return Withheld::NothingRead;
    }
    const MissingDays missing = missingDays(days);
    if (missing.days >= rule.daysMissing) {
        return Withheld::TooManyMissing;
    }
    if (missing.longestRun >= rule.daysInARow) {
        return Withheld::TooManyInARow;
    }
    return Withheld::No;
}

} // namespace wickbook::climate
