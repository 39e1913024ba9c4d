// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/rule.h"

/// The rules by name, each in a file of its own (rule_<code>.cpp), for rule_table.cpp and for checkPair.
/// Each file opens with what its findings carry.

namespace wickbook::checks::rules {

using Findings = std::vector<Finding>;

void incomplete(const ReadingContext& context, Findings& findings);
void offScale(const ReadingContext& context, Findings& findings);
void grossTemperature(const ReadingContext& context, Findings& findings);
void grossDewPoint(const ReadingContext& context, Findings& findings);
void grossPressure(const ReadingContext& context, Findings& findings);
void wetAboveDry(const ReadingContext& context, Findings& findings);
void noVapour(const ReadingContext& context, Findings& findings);
void veryDry(const ReadingContext& context, Findings& findings);
void dryWick(const ReadingContext& context, Findings& findings);
void wickStateUnknown(const ReadingContext& context, Findings& findings);
void freezingHalt(const ReadingContext& context, Findings& findings);
void iceOverDry(const ReadingContext& context, Findings& findings);
void iceAboveZero(const ReadingContext& context, Findings& findings);
void frozenReadAsWater(const ReadingContext& context, Findings& findings);
void stepTemperature(const ReadingContext& context, Findings& findings);
void stepDewPoint(const ReadingContext& context, Findings& findings);
void persistence(const ReadingContext& context, Findings& findings);
void duplicate(const ReadingContext& context, Findings& findings);
void copiedDay(const ReadingContext& context, Findings& findings);
void future(const ReadingContext& context, Findings& findings);
void early(const ReadingContext& context, Findings& findings);
void late(const ReadingContext& context, Findings& findings);
void climatology(const ReadingContext& context, Findings& findings);
void fogButDry(const ReadingContext& context, Findings& findings);
void rainButDry(const ReadingContext& context, Findings& findings);
void maxMin(const ReadingContext& context, Findings& findings);
void fineButSaturated(const ReadingContext& context, Findings& findings);
void derivationNotes(const ReadingContext& context, Findings& findings);

/// What a pair tells by itself; the rules above call these too, so that derive and check speak alike.
struct PairView {
    const psychrometry::PairInput& input;
    const psychrometry::Derivation& derivation;
    const Limits& limits;
};
void wetAboveDryPair(const PairView& pair, Findings& findings);
void noVapourPair(const PairView& pair, Findings& findings);
void veryDryPair(const PairView& pair, Findings& findings);
void wickStateUnknownPair(const PairView& pair, Findings& findings);
void iceOverDryPair(const PairView& pair, Findings& findings);
void iceAboveZeroPair(const PairView& pair, Findings& findings);
void frozenReadAsWaterPair(const PairView& pair, Findings& findings);
void freezingHaltPair(const PairView& pair, Findings& findings);
void derivationNotesPair(const PairView& pair, Findings& findings);

} // namespace wickbook::checks::rules
