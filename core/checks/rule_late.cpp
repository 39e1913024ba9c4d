// SPDX-License-Identifier: GPL-3.0-or-later
// late: read more than 15 min after its observing hour (common practice, no source). A note; the true time is
// kept. Arguments: minutes after the hour; limit min; hour "09:00".
#include "core/checks/punctuality.h"
#include "core/checks/rules.h"

namespace wickbook::checks::rules {

void late(const ReadingContext& context, Findings& findings) {
    const auto minutes = minutesLate(context);
    const double limit = context.limits.value("late.minutes");
    if (minutes && *minutes > limit) {
        findings.push_back({"late",
                            Severity::Note,
                            Root::Time,
                            {{"minutes", *minutes},
                             {"limit", limit},
                             {"hour", record::hourText(context.reading.values().hour->hour)}},
                            {}});
    }
}

} // namespace wickbook::checks::rules
