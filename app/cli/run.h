// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

/// The command line's door. main asks first whether a window is wanted, before anything of Qt exists.

namespace wickbook::cli {

struct WindowStart {
    std::string book; ///< empty: whatever the window thinks right
    bool sample = false;
};

/// Whether these arguments ask for the window: none at all, a book, or --sample. What Qt itself takes
/// (-platform, -style, …) may stand among them.
std::optional<WindowStart> windowStart(int argc, char** argv);

/// Runs a verb, --help or --version; the process's exit code (exit_code.h). Never throws.
int run(int argc, char** argv);

} // namespace wickbook::cli
