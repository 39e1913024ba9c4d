// SPDX-License-Identifier: GPL-3.0-or-later
// gross-dew-point: beyond what air does at this latitude and season (WMO-No. 305, chapter 6). The source
// gives limits for summer above 45 degrees and for winter up to 45 degrees; the other two cases take the
// limits of the temperature (our judgement: a dew point can't stand above the air's temperature). Arguments:
// value °C; limit °C, the one passed.
#include "core/checks/rule_support.h"
#include "core/checks/rules.h"

#include <cmath>

namespace wickbook::checks::rules {

void grossDewPoint(const ReadingContext& context, Findings& findings) {
    const auto dewPoint = context.reading.dewPointCelsius();
    if (!dewPoint) {
        return;
    }
    const double latitude = context.station.periodAt(context.reading.values().instant).position.latitude;
    const bool high = std::abs(latitude) > context.limits.value("gross-temperature.latitude");
    const GrossLimits limits = high == isSummer(context.reading, latitude)
                                   ? GrossLimits{context.limits.value("gross-dew-point.doubtful-low"),
                                                 context.limits.value("gross-dew-point.doubtful-high"),
                                                 context.limits.value("gross-dew-point.erroneous-low"),
                                                 context.limits.value("gross-dew-point.erroneous-high")}
                                   : grossTemperatureLimits(context);
    if (const auto severity = limits.judge(*dewPoint)) {
        findings.push_back({"gross-dew-point",
                            *severity,
                            Root::Season,
                            {{"value", *dewPoint}, {"limit", limits.passed(*dewPoint)}},
                            {}});
    }
}

} // namespace wickbook::checks::rules
