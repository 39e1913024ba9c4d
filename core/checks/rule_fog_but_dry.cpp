// SPDX-License-Identifier: GPL-3.0-or-later
// fog-but-dry: fog was noted and the humidity lies under 80 % (computed from 162 fog hours of one year at one
// airport: lowest 84, 5th percentile 87). Soft: wick or remark, one of them is wrong, and which is not known.
// Arguments: humidity %; limit %.
#include "core/checks/rule_support.h"
#include "core/checks/rules.h"

namespace wickbook::checks::rules {

void fogButDry(const ReadingContext& context, Findings& findings) {
    const auto humidity = context.reading.humidityPercent();
    const double limit = context.limits.value("fog-but-dry.humidity");
    if (humidity && *humidity < limit && hasAnyWeather(context.reading, {record::Weather::Fog})) {
        findings.push_back(
            {"fog-but-dry", Severity::Soft, Root::Weather, {{"humidity", *humidity}, {"limit", limit}}, {}});
    }
}

} // namespace wickbook::checks::rules
