// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/check_series.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

/// A register looked through, as questions for a person. Pure: from judged readings to runs, no book.
///
/// A question is a reading that nobody has judged yet and of which a rule says more than a note (soft or
/// worse). Where the observer has said why (fog noted, a limit of the station's own), the rules are quiet
/// themselves, and where a person has judged, nothing is asked again.
///
/// A run is what one answer may settle: questions whose gravest finding has the same code, speaks of the same
/// bulb and has the same first likely cause (or none), each filed at most kRunGap days after the one before.
/// What stands between them, sound or asked otherwise, does not end a run: "fog every morning that week" has
/// sound evenings.
///
/// Worst first: the gravest severity in the run; then how much belief lies in a slip (of its likeliest
/// reading, in tenths, so that a hair's breadth decides nothing); then how many readings; then the earlier.

namespace wickbook::desk {

inline constexpr date::days kRunGap{3};
/// So many readings before and after each one asked about are shown with it.
inline constexpr std::size_t kReviewNeighbours = 2;

struct ReviewLine {
    checks::CheckedReading checked;
    bool asked = false; ///< belongs to the run; else it stands there for comparison
};

struct ReviewRun {
    checks::Finding lead; ///< the gravest finding of the run's gravest reading
    double belief = 0;    ///< share of belief in a slip, 0…1, of its likeliest reading
    std::size_t asked = 0;
    std::vector<ReviewLine> lines; ///< time order
    record::StationDate from{};    ///< of the first reading asked about
    record::StationDate to{};      ///< of the last
};

struct RegisterReview {
    std::vector<ReviewRun> runs; ///< worst first
    std::size_t looked = 0;      ///< readings looked at, judged ones included
    std::size_t asked = 0;       ///< questions in all runs
};

/// Whether a person is still to be asked about it.
bool isQuestion(const checks::CheckedReading& checked);

/// Share of belief that a slip explains the reading, 0…1; 0 where no cause was found.
double beliefInSlip(const checks::CheckedReading& checked);

/// checked: the register in time order.
RegisterReview reviewOf(std::span<const checks::CheckedReading> checked);

} // namespace wickbook::desk
