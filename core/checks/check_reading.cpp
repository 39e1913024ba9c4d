// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/likely_causes.h"
#include "core/checks/roots.h"
#include "core/checks/rule_support.h"
#include "core/checks/rules.h"

#include <algorithm>

namespace wickbook::checks {

namespace {

/// Findings that a slip of eye or hand with the numbers could have brought about.
bool mayBeASlip(const Finding& finding) {
    return finding.severity >= Severity::Soft && finding.root != Root::Time &&
           finding.root != Root::Pressure && finding.code != "coefficient-missing" &&
           finding.code != "wick-state-unknown";
}

/// unlikely: a slip explains the reading clearly better than the weather does. Always
/// soft: an odd reading must not be left out of means for being odd; that takes a rule or a person.
/// Arguments: belief, the share left in "read right"; temperature, dew-point °C (where they can be had) and
/// expected-temperature, expected-dew-point °C.
void addUnlikely(const ReadingContext& context, const Explanation& explanation,
                 std::vector<Finding>& findings) {
    const Expectation expected = context.model->expectation(context.reading, context.before, context.after);
    Finding finding{"unlikely",
                    Severity::Soft,
                    Root::Step,
                    {{"belief", explanation.readRight},
                     {"expected-temperature", expected.temperature},
                     {"expected-dew-point", expected.dewPoint}},
                    {}};
    if (const auto dry = dryCelsius(context.reading)) {
        finding.arguments.push_back({"temperature", *dry});
    }
    if (const auto dewPoint = context.reading.dewPointCelsius()) {
        finding.arguments.push_back({"dew-point", *dewPoint});
    }
    findings.push_back(std::move(finding));
}

/// Looks for slips, marks what only they explain, and hangs the causes on the gravest finding they may
/// concern.
void lookForSlips(const ReadingContext& context, std::vector<Finding>& findings) {
    if (context.model == nullptr || context.slips == Slips::Leave || !context.reading.values().hasPair()) {
        return;
    }
    const bool marked = std::any_of(findings.begin(), findings.end(), mayBeASlip);
    if (!marked && fitsWell(context.reading, context.before, context.after, *context.model)) {
        return;
    }
    Explanation explanation =
        explain(context.reading, context.before, context.after, *context.model, context.limits);
    // Where a rule has marked the reading already, one note is enough: it carries the causes.
    if (explanation.unlikely && !marked) {
        addUnlikely(context, explanation, findings);
    }
    sortGravestFirst(findings);
    const auto gravest = std::find_if(findings.begin(), findings.end(), mayBeASlip);
    if (gravest != findings.end()) {
        gravest->causes = std::move(explanation.causes);
    }
}

} // namespace

std::vector<Finding> checkReading(const ReadingContext& context) {
    std::vector<Finding> findings;
    const auto& values = context.reading.values();
    if (values.withdrawn || values.origin == record::Origin::Missing) {
        return findings;
    }
    for (const Rule& rule : ruleTable()) {
        rule.check(context, findings);
    }
    lookForSlips(context, findings);
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
