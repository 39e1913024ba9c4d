// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Tenths have no exact binary fraction: 20.2 − 20.0 must still count as 0.2. Differences of values as read
/// are held against a limit with this much room, far under any graduation and far over what a double loses.

namespace wickbook::units {

inline constexpr double kBinaryFraction = 1e-9;

} // namespace wickbook::units
