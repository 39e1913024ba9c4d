// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/month_facts.h"

#include <algorithm>

namespace wickbook::report {

MonthFacts monthFacts(const MonthReport& report) {
    const climate::HourSummary& all = report.summary.all;
    MonthFacts facts;
    facts.stationName = report.station.name();
    facts.invented = report.station.facts().invented;
    facts.month = report.month;
    facts.hoursToCome = report.summary.hoursToCome;
    facts.monthOver = report.summary.hoursToCome == 0;

    facts.expected = all.expected;
    facts.n = all.n;
    facts.missing = all.missing;
    facts.setAside = all.setAside;
    facts.meanHumidity = all.meanHumidity;
    facts.meanDewPoint = all.meanDewPoint;
    facts.humidityU95 = report.typicalHumidityU95;
    facts.dewPointU95 = report.typicalDewPointU95;
    facts.highestHumidity = all.highestHumidity;
    facts.lowestHumidity = all.lowestHumidity;
    facts.highestDewPoint = all.highestDewPoint;
    facts.lowestDewPoint = all.lowestDewPoint;
    for (const climate::HourSummary& hour : report.summary.hours) {
        if (hour.withheld != climate::Withheld::No && hour.hour) {
            facts.withheld.push_back({*hour.hour, hour.withheld, hour.expected, hour.n});
        }
    }

    facts.daysWithFog = all.daysWithFog;
    facts.daysAtOrAboveHigh = all.daysAtOrAbove95;
    facts.daysAtOrBelowLow = all.daysAtOrBelow40;
    facts.highThreshold = report.options.highThreshold;
    facts.lowThreshold = report.options.lowThreshold;
    facts.corrected = report.corrected;
    facts.openQueries = report.openQueries;
    facts.extraReadings = static_cast<int>(std::count_if(report.lines.begin(), report.lines.end(),
                                                         [](const MonthLine& line) { return line.extra; }));
    return facts;
}

} // namespace wickbook::report
