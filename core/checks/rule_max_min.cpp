// SPDX-License-Identifier: GPL-3.0-or-later
// max-min: the dry bulb stands outside the maximum and minimum as read: with this reading, or with the next
// one that notes them within a day (they cover the time since they were last set). Or the maximum stands
// below the minimum. Soft: one of the two was misread, which is not known (common practice, no source).
// Compared in °C as read, with a tolerance of 0.2 K or one scale step. Arguments: which "above-maximum" /
// "below-minimum" / "crossed"; dry °C; limit °C (the maximum or minimum; for crossed the minimum, with
// maximum °C beside it); when "own" / "next".
#include "core/checks/rule_support.h"
#include "core/checks/rules.h"

#include <algorithm>

namespace wickbook::checks::rules {

void maxMin(const ReadingContext& context, Findings& findings) {
    const auto& values = context.reading.values();
    const double tolerance =
        std::max(context.limits.value("max-min.tolerance"), context.reading.dry.step.kelvins()) +
        kBinaryFraction;
    const auto add = [&](std::string_view which, double limit, std::string_view when) {
        Finding finding{"max-min",
                        Severity::Soft,
                        Root::None,
                        {{"which", std::string{which}}, {"limit", limit}, {"when", std::string{when}}},
                        {}};
        if (values.dry.value) {
            finding.arguments.push_back({"dry", values.dry.value->temperature().celsius()});
        }
        findings.push_back(std::move(finding));
    };
    if (values.maximum && values.minimum) {
        const double high = values.maximum->temperature().celsius();
        const double low = values.minimum->temperature().celsius();
        if (high < low - kBinaryFraction) {
            add("crossed", low, "own");
            findings.back().arguments.push_back({"maximum", high});
            return;
        }
    }
    if (!values.dry.value) {
        return;
    }
    const double dry = values.dry.value->temperature().celsius();
    const auto check = [&](const record::Observation& kept, std::string_view when) {
        if (kept.maximum && dry > kept.maximum->temperature().celsius() + tolerance) {
            add("above-maximum", kept.maximum->temperature().celsius(), when);
            return true;
        }
        if (kept.minimum && dry < kept.minimum->temperature().celsius() - tolerance) {
            add("below-minimum", kept.minimum->temperature().celsius(), when);
            return true;
        }
        return kept.maximum.has_value() || kept.minimum.has_value();
    };
    if (check(values, "own")) {
        return;
    }
    for (const auto& next : context.after) {
        const double hours = hoursBetween(context.reading, next);
        if (hours > context.limits.value("max-min.hours")) {
            return;
        }
        if (hours > 0 && check(next.values(), "next")) {
            return;
        }
    }
}

} // namespace wickbook::checks::rules
