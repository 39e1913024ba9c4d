// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/comparison/class_round.h"

#include <QLocale>
#include <QString>

/// Sentences of a class round, the same in the window, on the command line and on paper.

namespace wickbook::ui {

/// What probably happened and what to do, for a pupil of ten: "The wick was dry, or …: wet it …".
QString roundCauseWords(comparison::RoundCause cause);
/// The whole judgement of one pupil: empty for one who is near the others.
QString pupilWords(const QLocale& locale, const comparison::PupilResult& pupil, units::TemperatureUnit unit);
/// "12 pairs. The middle value is 48 %; half of them lie between 46 and 50 %. 2 are far off: numbers 4
/// and 9."
QString roundWords(const QLocale& locale, const comparison::ClassRound& round);

} // namespace wickbook::ui
