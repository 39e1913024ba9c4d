// SPDX-License-Identifier: GPL-3.0-or-later
// gross-temperature: beyond what air does at this latitude and season (WMO-No. 305, chapter 6).
// Arguments: bulb "dry" / "wet"; value °C; limit °C, the one passed.
#include "core/checks/rule_support.h"
#include "core/checks/rules.h"

namespace wickbook::checks::rules {

void grossTemperature(const ReadingContext& context, Findings& findings) {
    const GrossLimits limits = grossTemperatureLimits(context);
    const auto check = [&](std::string_view bulb, std::optional<double> value) {
        if (!value) {
            return;
        }
        if (const auto severity = limits.judge(*value)) {
            findings.push_back(
                {"gross-temperature",
                 *severity,
                 Root::Season,
                 {{"bulb", std::string{bulb}}, {"value", *value}, {"limit", limits.passed(*value)}},
                 {}});
        }
    };
    check("dry", dryCelsius(context.reading));
    check("wet", wetCelsius(context.reading));
}

} // namespace wickbook::checks::rules
