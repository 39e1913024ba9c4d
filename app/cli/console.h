// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <chrono>
#include <cstdint>
#include <string_view>

/// What goes to the person: sentences and progress on standard error. Data go through Output (output.h).

namespace wickbook::cli {

/// One sentence and a line's end.
void say(std::string_view sentence);
void say(const QString& sentence);

/// "checking 40 %" rewritten in place, on a terminal only, and not oftener than a few times a second.
/// Clears its line when it goes.
class ProgressLine {
public:
    explicit ProgressLine(std::string_view doing);
    ProgressLine(const ProgressLine&) = delete;
    ProgressLine& operator=(const ProgressLine&) = delete;
    ~ProgressLine();

    /// total 0: not known, then the count is shown.
    void show(std::int64_t done, std::int64_t total);

private:
    std::string_view doing_;
    bool onTerminal_;
    std::chrono::steady_clock::time_point last_{};
};

} // namespace wickbook::cli
