// SPDX-License-Identifier: GPL-3.0-or-later
// ice-over-dry: an ice bulb may stand a few tenths above the dry bulb in fog, up to where the air holds 100 %
// over water (computed). Within reading error of that: taken as saturation, a note; beyond: doubtful and
// without humidity. Arguments: excess K above the dry bulb; allowed K, where 100 % would put the ice bulb
// above the dry bulb; taken "saturation" where used as saturated.
#include "core/checks/rules.h"

namespace wickbook::checks::rules {

void iceOverDryPair(const PairView& pair, Findings& findings) {
    const bool refused = pair.derivation.problem == psychrometry::PsychrometryError::IceOverDry;
    const bool taken =
        pair.derivation.takenAsSaturation && pair.derivation.wickUsed == psychrometry::WickState::Ice;
    if (!refused && !taken) {
        return;
    }
    Finding finding{"ice-over-dry",
                    refused ? Severity::Doubtful : Severity::Note,
                    Root::Pair,
                    {{"excess", -pair.derivation.depression.kelvins()}},
                    {}};
    if (const auto highest = psychrometry::wetBulbFor(
            pair.input.dry, units::RelativeHumidity::fromPercent(100), psychrometry::Surface::Ice,
            pair.input.pressure, pair.input.coefficient)) {
        finding.arguments.push_back({"allowed", (*highest - pair.input.dry).kelvins()});
    }
    if (taken) {
        finding.arguments.push_back({"taken", std::string{"saturation"}});
    }
    findings.push_back(std::move(finding));
}

void iceOverDry(const ReadingContext& context, Findings& findings) {
    if (context.reading.derivation) {
        iceOverDryPair({context.reading.input, *context.reading.derivation, context.limits}, findings);
    }
}

} // namespace wickbook::checks::rules
