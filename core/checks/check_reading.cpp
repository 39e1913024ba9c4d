// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/roots.h"
#include "core/checks/rules.h"

namespace wickbook::checks {

std::vector<Finding> checkReading(const ReadingContext& context) {
    std::vector<Finding> findings;
    const auto& values = context.reading.values();
    if (values.withdrawn || values.origin == record::Origin::Missing) {
        return findings;
    }
    for (const Rule& rule : ruleTable()) {
        rule.check(context, findings);
    }
    shareRoots(findings);
    sortGravestFirst(findings);
    return findings;
}

std::vector<Finding> checkPair(const psychrometry::PairInput& input,
                               const psychrometry::Derivation& derivation) {
    const Limits limits;
    const rules::PairView pair{input, derivation, limits};
    std::vector<Finding> findings;
    rules::derivationNotesPair(pair, findings);
    rules::noVapourPair(pair, findings);
    rules::wetAboveDryPair(pair, findings);
    rules::iceOverDryPair(pair, findings);
    rules::iceAboveZeroPair(pair, findings);
    rules::wickStateUnknownPair(pair, findings);
    rules::freezingHaltPair(pair, findings);
    rules::frozenReadAsWaterPair(pair, findings);
    rules::veryDryPair(pair, findings);
    shareRoots(findings);
    sortGravestFirst(findings);
    return findings;
}

} // namespace wickbook::checks
