// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/rule.h"
#include "core/checks/rules.h"

#include <array>

namespace wickbook::checks {

std::span<const Rule> ruleTable() {
    static constexpr std::array kRules{
        Rule{"off-scale", Root::Scale, rules::offScale},
        Rule{"incomplete", Root::None, rules::incomplete},
        Rule{"out-of-range", Root::Scale, rules::derivationNotes},
        Rule{"no-vapour", Root::Pair, rules::noVapour},
        Rule{"wet-above-dry", Root::Pair, rules::wetAboveDry},
        Rule{"ice-over-dry", Root::Pair, rules::iceOverDry},
        Rule{"ice-above-zero", Root::Wick, rules::iceAboveZero},
        Rule{"wick-state-unknown", Root::Wick, rules::wickStateUnknown},
        Rule{"freezing-halt", Root::FrozenWick, rules::freezingHalt},
        Rule{"frozen-read-as-water", Root::FrozenWick, rules::frozenReadAsWater},
        Rule{"dry-wick", Root::Wick, rules::dryWick},
        Rule{"fine-but-saturated", Root::Weather, rules::fineButSaturated},
        Rule{"very-dry", Root::Pair, rules::veryDry},
        Rule{"gross-temperature", Root::Season, rules::grossTemperature},
        Rule{"gross-dew-point", Root::Season, rules::grossDewPoint},
        Rule{"gross-pressure", Root::Pressure, rules::grossPressure},
        Rule{"step-temperature", Root::Step, rules::stepTemperature},
        Rule{"step-dew-point", Root::Step, rules::stepDewPoint},
        Rule{"climatology", Root::Season, rules::climatology},
        Rule{"max-min", Root::None, rules::maxMin},
        Rule{"persistence", Root::Persistence, rules::persistence},
        Rule{"copied-day", Root::Persistence, rules::copiedDay},
        Rule{"duplicate", Root::Time, rules::duplicate},
        Rule{"future", Root::Time, rules::future},
        Rule{"early", Root::Time, rules::early},
        Rule{"late", Root::Time, rules::late},
        Rule{"fog-but-dry", Root::Weather, rules::fogButDry},
        Rule{"rain-but-dry", Root::Weather, rules::rainButDry},
    };
    return kRules;
}

} // namespace wickbook::checks
