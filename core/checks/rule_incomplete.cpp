// SPDX-License-Identifier: GPL-3.0-or-later
// incomplete: one bulb was read, the other not. The reading is kept; there is no humidity.
// Arguments: missing "dry" or "wet".
// A bulb marked as below its scale was read: off-scale speaks of it.
#include "core/checks/rules.h"

namespace wickbook::checks::rules {

void incomplete(const ReadingContext& context, Findings& findings) {
    const auto& values = context.reading.values();
    if (values.dry.given() == values.wet.given()) {
        return;
    }
    findings.push_back({"incomplete",
                        Severity::Note,
                        Root::None,
                        {{"missing", std::string{values.dry.given() ? "wet" : "dry"}}},
                        {}});
}

} // namespace wickbook::checks::rules
