// SPDX-License-Identifier: GPL-3.0-or-later
// rain-but-dry: rain was noted and the humidity lies under 40 %: information only, rain does fall through dry
// air (one year at one airport: lowest 29, 5th percentile 63). Arguments: humidity %; limit %.
#include "core/checks/rule_support.h"
#include "core/checks/rules.h"

namespace wickbook::checks::rules {

void rainButDry(const ReadingContext& context, Findings& findings) {
    const auto humidity = context.reading.humidityPercent();
    const double limit = context.limits.value("rain-but-dry.humidity");
    if (humidity && *humidity < limit &&
        hasAnyWeather(context.reading, {record::Weather::Rain, record::Weather::Drizzle})) {
        findings.push_back(
            {"rain-but-dry", Severity::Note, Root::Weather, {{"humidity", *humidity}, {"limit", limit}}, {}});
    }
}

} // namespace wickbook::checks::rules
