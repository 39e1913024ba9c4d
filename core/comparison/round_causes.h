// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/comparison/class_round.h"

namespace wickbook::comparison {

/// What probably happened to a pupil who is far off. In this order: another wick state than most; a wet bulb
/// almost at the dry one (dry wick); the first slip of swapped, °F for °C, ten off, decimal point after which
/// both bulbs lie within the round's limits; a wet bulb between the round's wet and dry (dry wick); five off;
/// air that was warmer at the same vapour pressure. None where nothing fits.
/// Pre: the pupil is far off and the round has limits.
std::optional<RoundCause> likelyRoundCause(const PupilResult& pupil, const ClassRound& round);

} // namespace wickbook::comparison
