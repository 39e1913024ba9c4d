// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/step_rule.h"

#include <array>
#include <cmath>
#include <string>

namespace wickbook::checks {

namespace {

/// A watch is not a chronometer: a reading 12 h and some minutes after another still counts as 12 h.
constexpr double kLateHours = 0.25;

/// Limit for an interval of so many hours; none beyond 12 h.
std::optional<double> limitFor(double hours, std::string_view code, const Limits& limits) {
    constexpr std::array kSteps{std::pair{3.0, std::string_view{".within-3-hours"}},
                                std::pair{6.0, std::string_view{".within-6-hours"}},
                                std::pair{12.0, std::string_view{".within-12-hours"}}};
    for (const auto& [longest, name] : kSteps) {
        if (hours <= longest + kLateHours) {
            return limits.value(std::string{code}.append(name));
        }
    }
    return std::nullopt;
}

struct Compared {
    const record::DerivedReading* reading;
    double value;
};

/// Whether the neighbour jumped away from the reading before it, and this reading jumps back.
bool isSpike(const Compared& spike, const Compared& before, const Compared& now, std::string_view code,
             const Limits& limits) {
    const double away = spike.value - before.value;
    const double back = now.value - spike.value;
    const auto limit = limitFor(hoursBetween(*before.reading, *spike.reading), code, limits);
    return limit && std::abs(away) > *limit && away * back < 0;
}

} // namespace

void checkStep(const ReadingContext& context, std::string_view code, SoundValue soundValue,
               std::optional<double> value, std::vector<Finding>& findings) {
    if (!value) {
        return;
    }
    const Compared now{&context.reading, *value};
    std::optional<Compared> last;
    for (auto it = context.before.rbegin(); it != context.before.rend(); ++it) {
        const auto earlier = soundValue(*it);
        const double hours = hoursBetween(*it, context.reading);
        if (!earlier || hours <= 0) {
            continue;
        }
        const Compared candidate{&*it, *earlier};
        if (last && !isSpike(*last, candidate, now, code, context.limits)) {
            break;
        }
        last = candidate; // the first one, or the one before a spike
        const auto limit = limitFor(hours, code, context.limits);
        if (!limit || std::abs(now.value - candidate.value) <= *limit + kBinaryFraction) {
            return; // nothing to say of it, whatever stands before
        }
    }
    if (!last) {
        return;
    }
    const double hours = hoursBetween(*last->reading, context.reading);
    const auto limit = limitFor(hours, code, context.limits);
    findings.push_back({code,
                        Severity::Soft,
                        Root::Step,
                        {{"value", now.value},
                         {"previous", last->value},
                         {"change", now.value - last->value},
                         {"hours", hours},
                         {"limit", limit.value_or(0.0)}},
                        {}});
}

} // namespace wickbook::checks
