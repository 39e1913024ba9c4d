// SPDX-License-Identifier: GPL-3.0-or-later
// duplicate: two live readings for the same observing hour, or two extra readings at the same moment (common
// practice, no source). Doubtful, both of them, until one is chosen: the hour must not count twice.
// Arguments: hour "07:00" or, for extra readings, the moment; other-dry and other-wet °C where there are;
// same "yes" / "no": whether both pairs are alike.
#include "core/checks/rule_support.h"
#include "core/checks/rules.h"

namespace wickbook::checks::rules {

namespace {

bool isSameSlot(const record::DerivedReading& a, const record::DerivedReading& b) {
    if (a.values().hour || b.values().hour) {
        return a.values().hour == b.values().hour;
    }
    return a.values().instant == b.values().instant;
}

} // namespace

void duplicate(const ReadingContext& context, Findings& findings) {
    const auto& reading = context.reading;
    const auto check = [&](const record::DerivedReading& other) {
        if (!isSameSlot(reading, other)) {
            return false;
        }
        const auto& hour = reading.values().hour;
        Finding finding{
            "duplicate",
            Severity::Doubtful,
            Root::Time,
            {{"hour", hour ? record::hourText(hour->hour) : record::instantText(reading.values().instant)},
             {"same", std::string{samePairRead(reading, other) ? "yes" : "no"}}},
            {}};
        if (const auto dry = dryCelsius(other)) {
            finding.arguments.push_back({"other-dry", *dry});
        }
        if (const auto wet = wetCelsius(other)) {
            finding.arguments.push_back({"other-wet", *wet});
        }
        findings.push_back(std::move(finding));
        return true;
    };
    for (auto it = context.before.rbegin(); it != context.before.rend(); ++it) {
        if (check(*it)) {
            return;
        }
    }
    for (const auto& other : context.after) {
        if (check(other)) {
            return;
        }
    }
}

} // namespace wickbook::checks::rules
