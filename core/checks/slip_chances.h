// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How common each slip is, per reading (both bulbs together), before one looks at the numbers. Our
/// judgement: the kinds and their order from the slips found in a manual register of 7,728 pairs, the sizes
/// set so that planted slips of equal number are told apart best (tests/bench/plant_slips). Together they
/// come to more than a careful observer's slips: a mark asks for another look and costs little, a slip kept
/// costs a month's mean. The marking limits "unlikely.…" are measured with these numbers and belong to them.

namespace wickbook::checks::chance {

inline constexpr double kSwapped = 1.9e-2;
inline constexpr double kTen = 2.2e-2;   ///< ten off, either bulb, either way
inline constexpr double kFive = 1.75e-2; ///< five off
inline constexpr double kBothTen = 9e-4;
inline constexpr double kSign = 3e-3;
inline constexpr double kBothSign = 3e-4;
inline constexpr double kDecimalPoint = 3e-3;
inline constexpr double kBothDecimalPoint = 4e-4;
inline constexpr double kDigitsExchanged = 1.1e-2;
inline constexpr double kDigitDropped = 1.2e-3;
inline constexpr double kDigitDoubled = 1e-3;
inline constexpr double kDigitExtra = 2e-3;
inline constexpr double kWrongUnit = 4e-4;
inline constexpr double kTenthsDownwards = 4e-3; ///< below zero only
inline constexpr double kLineCopied = 1e-3;
inline constexpr double kColumnBroken = 2e-4;
inline constexpr double kWickState = 1e-2; ///< below zero only: water for ice or the reverse
inline constexpr double kDryWick = 1e-3;
inline constexpr double kOther = 3e-3; ///< misread in a way that no list holds

} // namespace wickbook::checks::chance
