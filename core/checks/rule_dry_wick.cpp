// SPDX-License-Identifier: GPL-3.0-or-later
// dry-wick: a wick that has run dry reads like a dry bulb: hardly any depression, and so far more vapour than
// the last readings had, without fog, rain or dew to bring it; or the wet bulb rises through repeated whirls
// (common practice, no source; the size of "far more" is our judgement). Doubtful where the weather was noted
// and is dry; soft where nothing was noted, for rain can't be excluded then.
// Arguments: sign "vapour" with depression K, limit K, vapour hPa, usual hPa (the highest of the readings of
// the last hours, the same hour yesterday among them), hours h looked back; or sign "rising" with rise K.
#include "core/checks/rule_support.h"
#include "core/checks/rules.h"

#include <algorithm>

namespace wickbook::checks::rules {

namespace {

void checkRepeats(const ReadingContext& context, Findings& findings) {
    const auto& repeats = context.reading.values().repeats;
    std::vector<double> wets;
    for (const record::Repeat& repeat : repeats) {
        if (repeat.wet) {
            wets.push_back(repeat.wet->temperature().celsius());
        }
    }
    if (wets.size() < 2 || !std::is_sorted(wets.begin(), wets.end())) {
        return;
    }
    const double rise = wets.back() - wets.front();
    const double limit =
        std::max(context.limits.value("dry-wick.rise-in-repeats"), 2 * context.reading.wet.step.kelvins());
    if (rise >= limit - kBinaryFraction) {
        findings.push_back(
            {"dry-wick", Severity::Soft, Root::Wick, {{"sign", std::string{"rising"}}, {"rise", rise}}, {}});
    }
}

} // namespace

void dryWick(const ReadingContext& context, Findings& findings) {
    const std::size_t before = findings.size();
    checkRepeats(context, findings);
    const auto& reading = context.reading;
    const auto vapour = reading.vapourPressureHectopascals();
    if (findings.size() != before || !vapour || hasWetWeather(reading)) {
        return;
    }
    const double depression = reading.derivation->depression.kelvins();
    const double limit = std::max(context.limits.value("dry-wick.depression"), coarserStep(reading));
    if (depression >= limit - kBinaryFraction) {
        return;
    }
    const double hours = context.limits.value("dry-wick.hours");
    double usual = 0;
    int compared = 0;
    for (const auto& neighbour : context.before) {
        const double gap = hoursBetween(neighbour, reading);
        if (gap > hours || gap <= 0 || !isSoundNeighbour(neighbour)) {
            continue;
        }
        usual = std::max(usual, neighbour.vapourPressureHectopascals().value_or(0.0));
        ++compared;
    }
    if (compared < 2 || *vapour < usual * context.limits.value("dry-wick.vapour-ratio") ||
        *vapour < usual + context.limits.value("dry-wick.vapour-rise")) {
        return;
    }
    findings.push_back({"dry-wick",
                        reading.values().weather ? Severity::Doubtful : Severity::Soft,
                        Root::Wick,
                        {{"sign", std::string{"vapour"}},
                         {"depression", depression},
                         {"limit", limit},
                         {"vapour", *vapour},
                         {"usual", usual},
                         {"hours", hours}},
                        {}});
}

} // namespace wickbook::checks::rules
