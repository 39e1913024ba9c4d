// SPDX-License-Identifier: GPL-3.0-or-later
// persistence: the same pair several times running: three on a scale read to tenths, five to halves, eight to
// whole degrees (common practice, no source). Silent in fog, where air does stand still. Soft.
// Arguments: count of equal pairs running, this one included; limit; hours from the first of them.
#include "core/checks/rule_support.h"
#include "core/checks/rules.h"

namespace wickbook::checks::rules {

namespace {

constexpr double kHalvesUpTo = 0.7; // half a degree, one Fahrenheit degree

} // namespace

void persistence(const ReadingContext& context, Findings& findings) {
    const auto& reading = context.reading;
    if (!reading.values().hasPair()) {
        return;
    }
    const double step = coarserStep(reading);
    const double limit = context.limits.value(step <= kTenthsUpTo   ? "persistence.tenths"
                                              : step <= kHalvesUpTo ? "persistence.halves"
                                                                    : "persistence.wholes");
    const double gap = context.limits.value("persistence.gap-hours");
    const auto isFog = [](const record::DerivedReading& r) {
        return hasAnyWeather(r, {record::Weather::Fog, record::Weather::Rime});
    };
    if (isFog(reading)) {
        return;
    }
    int count = 1;
    const record::DerivedReading* first = &reading;
    for (auto it = context.before.rbegin(); it != context.before.rend(); ++it) {
        const double hours = hoursBetween(*it, *first);
        if (isFog(*it) || hours > gap || hours <= 0 || !samePairRead(*it, reading)) {
            break;
        }
        first = &*it;
        ++count;
    }
    if (count >= limit) {
        findings.push_back({"persistence",
                            Severity::Soft,
                            Root::Persistence,
                            {{"count", static_cast<double>(count)},
                             {"limit", limit},
                             {"hours", hoursBetween(*first, reading)}},
                            {}});
    }
}

} // namespace wickbook::checks::rules
