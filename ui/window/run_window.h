// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

/// The window as the program's main starts it.

namespace wickbook::ui {

struct WindowRequest {
    QString book;        ///< path to open; empty: the last one, or the first-start page
    bool sample = false; ///< open a fresh copy of the invented sample station
};

/// Runs the application until the window closes; the process's exit code.
int runWindow(int& argc, char** argv, const WindowRequest& request);

} // namespace wickbook::ui
