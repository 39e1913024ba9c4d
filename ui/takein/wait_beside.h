// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/background_work.h"

#include <QString>

#include <functional>

namespace wickbook::ui {

/// Runs a long act in a thread of its own and returns when it has ended; meanwhile the window goes on being
/// drawn and a small sheet shows how far it is. For acts that must be over before anything else may happen,
/// as one step of the undo stack: keys and clicks wait in their queue, and the sheet takes no focus, so that
/// nothing is entered or left under the act.
void waitBeside(const QString& words, const std::function<void(WorkWatch&)>& work);

} // namespace wickbook::ui
