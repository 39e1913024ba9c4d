// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace wickbook::ui {

/// Letters a note on the Station page may have: a few lines on paper.
inline constexpr int kLongestNote = 500;

} // namespace wickbook::ui
