// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/month_signing.h"
#include "core/report/summary_table.h"

#include <optional>
#include <vector>

/// What has become of a month since somebody signed it off. Whatever the change came from, it shows in the
/// readings (other revisions than those signed) or in the numbers (a correction, a coefficient, a limit).

namespace wickbook::report {

struct MonthReport;

struct SignedMonth {
    record::MonthSigning signing;
    int earlierSignings = 0;           ///< of the same month, before this one
    std::vector<record::Uuid> changed; ///< readings revised since, in time order
    std::vector<record::Uuid> added;   ///< readings that came into the month since
    int gone = 0;                      ///< readings withdrawn, or moved out of the month, since
    std::vector<NumberChange> numbers; ///< of the summary, then and now
    [[nodiscard]] bool asSigned() const {
        return changed.empty() && added.empty() && gone == 0 && numbers.empty();
    }
};

/// The latest signing of the report's month held against the month as it stands; none where nobody signed.
std::optional<SignedMonth> signedMonth(const MonthReport& report);

/// The fact to keep when somebody signs the month as the report has it.
record::MonthSigning signingOf(const MonthReport& report, record::Instant at, std::string by,
                               std::string note);

} // namespace wickbook::report
