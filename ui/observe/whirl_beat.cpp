// SPDX-License-Identifier: GPL-3.0-or-later
// Symbols: v speed of the bulbs m/s, r distance from the hand to the bulbs m, n turns a second.
// Source:  circular motion, n = v / (2 π r); v = 3 m/s from OIML Bulletin 123 on psychrometry.
// Range:   r 0.05…1 m.
#include "ui/observe/whirl_beat.h"

#include <numbers>

namespace wickbook::ui {

std::optional<double> turnsPerSecond(double armCentimetres) {
    if (!(armCentimetres >= kShortestArm && armCentimetres <= kLongestArm)) {
        return std::nullopt;
    }
    return kWhirlSpeed / (2.0 * std::numbers::pi * armCentimetres / 100.0);
}

} // namespace wickbook::ui
