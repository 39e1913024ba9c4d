// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/console.h"

#include <fmt/format.h>
#include <unistd.h>

#include <cstdio>

namespace wickbook::cli {

namespace {

/// Whether a progress line stands on the terminal: there is one terminal, so one flag.
bool lineShown = false;

void clearLine() {
    if (lineShown) {
        std::fputs("\r\033[K", stderr);
        std::fflush(stderr);
        lineShown = false;
    }
}

} // namespace

void say(std::string_view sentence) {
    clearLine();
    // Standard error is the last place to tell of trouble: if it is gone too, there is nobody to tell.
    std::fwrite(sentence.data(), 1, sentence.size(), stderr);
    std::fputc('\n', stderr);
}

void say(const QString& sentence) {
    say(std::string_view{sentence.toStdString()});
}

ProgressLine::ProgressLine(std::string_view doing) : doing_(doing), onTerminal_(isatty(STDERR_FILENO) == 1) {}

ProgressLine::~ProgressLine() {
    clearLine();
}

void ProgressLine::show(std::int64_t done, std::int64_t total) {
    using namespace std::chrono_literals;
    if (!onTerminal_) {
        return;
    }
    const auto now = std::chrono::steady_clock::now();
    if (now - last_ < 200ms) {
        return;
    }
    last_ = now;
    lineShown = true;
    const std::string text = total > 0 ? fmt::format("\r{} {} %\033[K", doing_, 100 * done / total)
                                       : fmt::format("\r{} {}\033[K", doing_, done);
    std::fwrite(text.data(), 1, text.size(), stderr);
    std::fflush(stderr);
}

} // namespace wickbook::cli
