// SPDX-License-Identifier: GPL-3.0-or-later
// future: the reading's moment has not come yet. It can't have been read then, so its place in the register
// is in doubt: doubtful, and the time stays as given (our judgement). Silent where "now" is not known.
// Arguments: minutes ahead.
#include "core/checks/rules.h"

#include <chrono>

namespace wickbook::checks::rules {

void future(const ReadingContext& context, Findings& findings) {
    if (!context.now) {
        return;
    }
    const double minutes =
        static_cast<double>((context.reading.values().instant - *context.now).count()) / 60.0;
    if (minutes > context.limits.value("future.minutes")) {
        findings.push_back({"future", Severity::Doubtful, Root::Time, {{"minutes", minutes}}, {}});
    }
}

} // namespace wickbook::checks::rules
