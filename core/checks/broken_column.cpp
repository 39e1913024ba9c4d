// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/broken_column.h"

#include "core/checks/rule_support.h"
#include "core/checks/slip_chances.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace wickbook::checks {

namespace {

constexpr std::size_t kEarlier = 2;
constexpr double kSmallestOffset = 1.0, kLargestOffset = 8.0, kOffsetStep = 0.5;
constexpr double kOffsetsTried = 30;
/// Readings that follow one another tell less than as many apart: what the earlier two say counts half.
constexpr double kEarlierCount = 0.5;
constexpr double kMostFromOne = 6.0;

struct Member {
    double dry, wet;
    record::WickState wick;
    PairFit fit;
    double asRead;
};

} // namespace

std::vector<BrokenColumn> brokenColumns(const record::DerivedReading& reading,
                                        std::span<const record::DerivedReading> before,
                                        const StationModel& model) {
    std::vector<BrokenColumn> found;
    if (model.empty() || before.size() < 2 * kEarlier || !reading.derivation) {
        return found;
    }
    const auto older = before.first(before.size() - kEarlier);
    std::vector<Member> members;
    const auto add = [&](const record::DerivedReading& member) {
        if (!member.dry.temperature || !member.wet.temperature || !member.derivation) {
            return;
        }
        const PairFit fit{member, nullptr, model.expectation(member, older, {})};
        const double dry = member.dry.temperature->celsius();
        const double wet = member.wet.temperature->celsius();
        members.push_back(
            {dry, wet, member.values().wick, fit, fit.logProbability(dry, wet, member.values().wick)});
    };
    add(reading);
    for (std::size_t i = 1; i <= kEarlier; ++i) {
        add(before[before.size() - i]);
    }
    if (members.size() != kEarlier + 1) {
        return found;
    }
    for (const bool dry : {true, false}) {
        BrokenColumn best{dry, 0, kImpossible};
        for (double size = kSmallestOffset; size <= kLargestOffset; size += kOffsetStep) {
            for (const double offset : {size, -size}) {
                double weight = std::log(chance::kColumnBroken / 2 / kOffsetsTried);
                for (std::size_t i = 0; i < members.size(); ++i) {
                    const Member& member = members[i];
                    const double mended = member.fit.logProbability(
                        member.dry - (dry ? offset : 0.0), member.wet - (dry ? 0.0 : offset), member.wick);
                    weight += i == 0 ? mended
                                     : kEarlierCount *
                                           std::clamp(mended - member.asRead, -kMostFromOne, kMostFromOne);
                }
                if (weight > best.logWeight) {
                    best = {dry, offset, weight};
                }
            }
        }
        if (best.logWeight > kImpossible / 2) {
            found.push_back(best);
        }
    }
    return found;
}

} // namespace wickbook::checks
