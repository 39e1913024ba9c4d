// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace wickbook::cli {

/// While one lives, Ctrl-C (SIGINT) is a wish to stop that long work asks for between readings, so that it
/// can end with a sentence. A second Ctrl-C ends the program at once, as ever.
class Interrupt {
public:
    Interrupt();
    Interrupt(const Interrupt&) = delete;
    Interrupt& operator=(const Interrupt&) = delete;
    ~Interrupt();

    [[nodiscard]] bool wished() const;
};

} // namespace wickbook::cli
