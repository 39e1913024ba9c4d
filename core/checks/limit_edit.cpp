// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/limit_edit.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

namespace wickbook::checks {

namespace {

/// The first must not stand above the second.
struct Order {
    std::string_view lower;
    std::string_view upper;
};

constexpr std::array kFourOf{
    Order{"erroneous-low", "doubtful-low"},
    Order{"doubtful-low", "doubtful-high"},
    Order{"doubtful-high", "erroneous-high"},
};
constexpr std::array kGrossStems{
    std::string_view{"gross-temperature.high-summer-"},
    std::string_view{"gross-temperature.high-winter-"},
    std::string_view{"gross-temperature.low-summer-"},
    std::string_view{"gross-temperature.low-winter-"},
    std::string_view{"gross-dew-point."},
    std::string_view{"gross-pressure."},
};
/// A longer time allows no smaller a step; a coarser scale needs no fewer equal readings.
constexpr std::array kOthers{
    Order{"step-temperature.within-3-hours", "step-temperature.within-6-hours"},
    Order{"step-temperature.within-6-hours", "step-temperature.within-12-hours"},
    Order{"step-dew-point.within-3-hours", "step-dew-point.within-6-hours"},
    Order{"step-dew-point.within-6-hours", "step-dew-point.within-12-hours"},
    Order{"persistence.tenths", "persistence.halves"},
    Order{"persistence.halves", "persistence.wholes"},
    Order{"copied-day.fewest-tenths", "copied-day.fewest-coarse"},
};

std::optional<LimitProblem> contradiction(const LimitSpan& span, const std::string& lower,
                                          const std::string& upper, std::span<const LimitEdit> changed) {
    const double low = span.limits.value(lower);
    const double high = span.limits.value(upper);
    if (low <= high) {
        return std::nullopt;
    }
    const bool upperWasChanged = std::any_of(changed.begin(), changed.end(),
                                             [&](const LimitEdit& edit) { return edit.name == upper; });
    LimitProblem problem;
    problem.kind = LimitProblem::Kind::Contradicts;
    problem.from = span.from;
    problem.mustBeBelow = !upperWasChanged;
    problem.name = upperWasChanged ? upper : lower;
    problem.value = upperWasChanged ? high : low;
    problem.other = upperWasChanged ? lower : upper;
    problem.otherValue = upperWasChanged ? low : high;
    return problem;
}

} // namespace

std::optional<LimitProblem> problemOf(std::string_view name, double value) {
    LimitProblem problem;
    problem.name = std::string{name};
    problem.value = value;
    const LimitEntry* entry = limitEntry(name);
    if (entry == nullptr) {
        return problem;
    }
    problem.lowest = entry->lowest;
    problem.highest = entry->highest;
    if (isFixed(*entry)) {
        problem.kind = LimitProblem::Kind::Fixed;
        return problem;
    }
    if (!(value >= entry->lowest && value <= entry->highest)) { // also what is not a number
        problem.kind = LimitProblem::Kind::OutOfRange;
        return problem;
    }
    if (isWhole(*entry) && value != std::floor(value)) {
        problem.kind = LimitProblem::Kind::NotWhole;
        return problem;
    }
    return std::nullopt;
}

std::optional<LimitProblem> contradictionIn(const record::LimitChanges& changes,
                                            std::span<const LimitEdit> changed) {
    const StationLimits limits{changes};
    for (const LimitSpan& span : limits.spans()) {
        for (const std::string_view stem : kGrossStems) {
            for (const Order& order : kFourOf) {
                if (auto problem = contradiction(span, std::string{stem}.append(order.lower),
                                                 std::string{stem}.append(order.upper), changed)) {
                    return problem;
                }
            }
        }
        for (const Order& order : kOthers) {
            if (auto problem =
                    contradiction(span, std::string{order.lower}, std::string{order.upper}, changed)) {
                return problem;
            }
        }
    }
    return std::nullopt;
}

tl::expected<record::LimitChanges, LimitProblem> edited(const record::LimitChanges& now,
                                                        std::span<const LimitEdit> edits) {
    record::LimitChanges after = now;
    for (const LimitEdit& edit : edits) {
        if (limitEntry(edit.name) == nullptr) {
            // A limit that an older or newer program knew can still be taken back.
            const bool known = std::any_of(now.begin(), now.end(),
                                           [&](const auto& held) { return held.first.name == edit.name; });
            if (edit.value || edit.from || !known) {
                return tl::unexpected(LimitProblem{.name = edit.name});
            }
        } else if (edit.value) {
            if (auto problem = problemOf(edit.name, *edit.value)) {
                return tl::unexpected(std::move(*problem));
            }
        }
        if (edit.value || edit.from) {
            after.insert_or_assign(record::LimitMoment{edit.name, edit.from}, edit.value);
        } else {
            std::erase_if(after, [&](const auto& held) { return held.first.name == edit.name; });
        }
    }
    if (auto problem = contradictionIn(after, edits)) {
        return tl::unexpected(std::move(*problem));
    }
    return after;
}

} // namespace wickbook::checks
