// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

/// How fast to whirl: the coefficient of a whirled instrument holds from 3 m/s past the bulbs on (OIML
/// Bulletin), so the distance from the hand to the bulbs gives the turns a second.

namespace wickbook::ui {

/// Speed of the bulbs through the air that is asked for, m/s.
inline constexpr double kWhirlSpeed = 3.0;
inline constexpr double kShortestArm = 5.0;  ///< cm
inline constexpr double kLongestArm = 100.0; ///< cm

/// v / (2 π r); none for an arm outside 5…100 cm.
std::optional<double> turnsPerSecond(double armCentimetres);

} // namespace wickbook::ui
