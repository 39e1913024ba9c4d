// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/instant.h"
#include "core/record/uuid.h"

#include <string>
#include <vector>

/// A month signed off: somebody has looked at it and stands for it. What was signed is kept as it was, the
/// numbers as they were handed on and which revision of each reading they rested on, so that any later change
/// shows, whatever it came from: a corrected reading, a correction of a thermometer, a limit. Signing closes
/// nothing: a change is still possible, and both the month and its report say so. Signing again is another
/// fact; the latest counts.

namespace wickbook::record {

/// A reading as it was signed: of which there were so many revisions then.
struct SignedReading {
    Uuid reading;
    int revisions = 1;
    bool operator==(const SignedReading&) const = default;
};

struct MonthSigning {
    Uuid id;
    date::year_month month{};
    Instant at{};
    std::string by;   ///< initials or name
    std::string note; ///< what the signer wants remembered
    int openQueries = 0;
    /// summary.csv as it was (header and rows, report/summary_table.h). Text, since it is a document.
    std::string numbers;
    std::vector<SignedReading> readings; ///< filed under the month, in time order
    bool withdrawn = false;
    bool operator==(const MonthSigning&) const = default;
};

} // namespace wickbook::record
