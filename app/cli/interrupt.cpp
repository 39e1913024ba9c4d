// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/interrupt.h"

#include <signal.h>

namespace wickbook::cli {

namespace {

volatile sig_atomic_t wish = 0;

extern "C" void noteWish(int /*signal*/) {
    wish = 1;
}

} // namespace

Interrupt::Interrupt() {
    wish = 0;
    struct sigaction action {};
    action.sa_handler = noteWish;
    // The default comes back with the first one; calls under way are taken up again.
    action.sa_flags = static_cast<int>(SA_RESETHAND) | SA_RESTART;
    sigemptyset(&action.sa_mask);
    sigaction(SIGINT, &action, nullptr);
}

Interrupt::~Interrupt() {
    signal(SIGINT, SIG_DFL);
}

bool Interrupt::wished() const {
    return wish != 0;
}

} // namespace wickbook::cli
