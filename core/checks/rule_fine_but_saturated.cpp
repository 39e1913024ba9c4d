// SPDX-License-Identifier: GPL-3.0-or-later
// fine-but-saturated: the weather was noted, without fog, rain, dew or rime, and the humidity is 98 % or
// more: the wick may be dry, or dew was not noted (common practice, no source). Soft. Silent where no weather
// was noted. Arguments: humidity %; limit %.
#include "core/checks/rule_support.h"
#include "core/checks/rules.h"

namespace wickbook::checks::rules {

void fineButSaturated(const ReadingContext& context, Findings& findings) {
    const auto humidity = context.reading.humidityPercent();
    const double limit = context.limits.value("fine-but-saturated.humidity");
    if (humidity && *humidity >= limit && context.reading.values().weather &&
        !hasWetWeather(context.reading)) {
        findings.push_back({"fine-but-saturated",
                            Severity::Soft,
                            Root::Weather,
                            {{"humidity", *humidity}, {"limit", limit}},
                            {}});
    }
}

} // namespace wickbook::checks::rules
