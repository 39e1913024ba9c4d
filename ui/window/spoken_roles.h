// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace wickbook::ui {

/// Tells assistive programs what the window's own widgets are: an index tab is a page tab that can be pressed
/// and is selected or not, the margin is a picture with a name. Called by both when they are made; once is
/// enough.
void makeRolesKnown();

} // namespace wickbook::ui
