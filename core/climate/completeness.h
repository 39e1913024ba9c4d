// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string_view>

/// Whether a month holds enough for a mean. The rule speaks of days of the calendar month, per observing
/// hour: a day is missing where that hour has no reading that counts, whatever the reason (not written down,
/// set aside, not yet due, an hour the station did not keep that day), since the mean is called the month's.

namespace wickbook::climate {

/// When a mean is not given (WMO-No. 1203, 2017; section 4.4.1 from memory): 11 or more days missing, or 5 or
/// more in a row; a stricter 5/3 can be chosen.
struct CompletenessRule {
    int daysMissing = 11;
    int daysInARow = 5;
};
inline constexpr CompletenessRule kStricterCompleteness{5, 3};

/// Why a mean is withheld.
enum class Withheld { No, TooManyMissing, TooManyInARow, NothingRead };

/// "too-many-days-missing", "too-many-days-in-a-row", "nothing-read", or empty.
std::string_view withheldName(Withheld withheld);

/// One day of the month at one observing hour.
enum class DayState {
    Counted,
    Missing,
    Skipped ///< the clock change jumped over this hour: neither missing nor the end of a run
};

/// What is missing of a month.
struct MissingDays {
    int days = 0;
    int longestRun = 0;
};
MissingDays missingDays(std::span<const DayState> days);

/// The rule on a month's days. Nothing counted at all comes first, then the total, then the run.
Withheld judgeCompleteness(std::span<const DayState> days, const CompletenessRule& rule);

} // namespace wickbook::climate
