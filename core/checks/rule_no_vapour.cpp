// SPDX-License-Identifier: GPL-3.0-or-later
// no-vapour: the pair gives a vapour pressure of 0 or less, which no air has (computed).
// Arguments: depression K; limit K, the depression at which the vapour pressure reaches 0 for this dry bulb
// (absent where there is none).
// Where the wick's state is not known, it speaks only of what neither water nor ice explains.
#include "core/checks/rules.h"

namespace wickbook::checks::rules {

namespace {

bool hasNoVapour(const PairView& pair) {
    using psychrometry::PsychrometryError;
    using psychrometry::WickState;
    if (pair.derivation.problem != PsychrometryError::WickStateUnknown) {
        return pair.derivation.problem == PsychrometryError::NoVapour;
    }
    const auto wouldHaveNone = [&](WickState wick) {
        psychrometry::PairInput assumed = pair.input;
        assumed.wick = wick;
        return psychrometry::derive(assumed).problem == PsychrometryError::NoVapour;
    };
    return wouldHaveNone(WickState::Water) && wouldHaveNone(WickState::Ice);
}

} // namespace

void noVapourPair(const PairView& pair, Findings& findings) {
    if (!hasNoVapour(pair)) {
        return;
    }
    Finding finding{"no-vapour",
                    Severity::Impossible,
                    Root::Pair,
                    {{"depression", pair.derivation.depression.kelvins()}},
                    {}};
    const auto surface = pair.derivation.wickUsed == psychrometry::WickState::Ice
                             ? psychrometry::Surface::Ice
                             : psychrometry::Surface::Water;
    if (const auto limit = psychrometry::largestDepression(pair.input.dry, surface, pair.input.pressure,
                                                           pair.input.coefficient)) {
        finding.arguments.push_back({"limit", limit->kelvins()});
    }
    findings.push_back(std::move(finding));
}

void noVapour(const ReadingContext& context, Findings& findings) {
    if (context.reading.derivation) {
        noVapourPair({context.reading.input, *context.reading.derivation, context.limits}, findings);
    }
}

} // namespace wickbook::checks::rules
