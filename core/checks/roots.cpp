// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/roots.h"

#include "core/checks/rule.h"

#include <algorithm>
#include <initializer_list>

namespace wickbook::checks {

namespace {

using Codes = std::initializer_list<std::string_view>;

bool isOneOf(const Finding& finding, Codes codes) {
    // A pressure that can't be is a matter of its own, whichever rule says so.
    return finding.root != Root::Pressure &&
           std::find(codes.begin(), codes.end(), finding.code) != codes.end();
}

/// Where one of the causes is among the findings, the consequences take its root.
struct Family {
    Root root;
    Codes causes;
    Codes consequences;
    bool causeMustWeigh = false; ///< a note that the pair was taken as saturation brings nothing else about
};

void gather(const Family& family, std::vector<Finding>& findings) {
    const bool present = std::any_of(findings.begin(), findings.end(), [&](const Finding& finding) {
        return isOneOf(finding, family.causes) &&
               (!family.causeMustWeigh || finding.severity > Severity::Note);
    });
    if (!present) {
        return;
    }
    for (Finding& finding : findings) {
        if (isOneOf(finding, family.causes) || isOneOf(finding, family.consequences)) {
            finding.root = family.root;
        }
    }
}

} // namespace

void shareRoots(std::vector<Finding>& findings) {
    if (findings.empty()) {
        return;
    }
    // From the most general to the most particular: a later family takes over from an earlier one.
    gather({Root::Step,
            {"step-temperature", "step-dew-point", "unlikely"},
            {"climatology", "gross-temperature", "gross-dew-point", "very-dry", "max-min"}},
           findings);
    gather({Root::Pair,
            {"no-vapour", "wet-above-dry", "ice-over-dry"},
            {"step-temperature", "step-dew-point", "unlikely", "climatology", "gross-temperature",
             "gross-dew-point", "very-dry", "max-min"},
            true},
           findings);
    // Saturated without a reason noted: a wick that ran dry brings its own jump of the moisture.
    gather(
        {Root::Weather,
         {"fine-but-saturated"},
         {"wet-above-dry", "ice-over-dry", "step-dew-point", "climatology", "gross-dew-point", "unlikely"}},
        findings);
    gather({Root::Wick,
            {"dry-wick"},
            {"wet-above-dry", "fine-but-saturated", "step-dew-point", "climatology", "gross-dew-point",
             "unlikely"}},
           findings);
    gather({Root::Scale,
            {"off-scale", "out-of-range"},
            {"gross-temperature", "gross-dew-point", "step-temperature", "step-dew-point", "climatology",
             "max-min", "unlikely", "incomplete"}},
           findings);
    gather({Root::FrozenWick,
            {"freezing-halt", "frozen-read-as-water"},
            {"wet-above-dry", "ice-over-dry", "ice-above-zero", "dry-wick", "wick-state-unknown",
             "fine-but-saturated", "step-dew-point", "unlikely"}},
           findings);
}

void sortGravestFirst(std::vector<Finding>& findings) {
    std::stable_sort(findings.begin(), findings.end(),
                     [](const Finding& a, const Finding& b) { return a.severity > b.severity; });
}

std::vector<SpokenNote> spokenNotes(std::vector<Finding> findings) {
    sortGravestFirst(findings);
    std::vector<SpokenNote> notes;
    for (Finding& finding : findings) {
        const auto same = std::find_if(notes.begin(), notes.end(), [&](const SpokenNote& note) {
            return finding.root != Root::None && note.lead.root == finding.root;
        });
        if (same == notes.end()) {
            notes.push_back({std::move(finding), {}});
        } else {
            same->also.push_back(std::move(finding));
        }
    }
    return notes;
}

} // namespace wickbook::checks
