// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdlib>

/// The fault tests run a fast share of their trials with the others, and all of them where
/// WICKBOOK_LONG_FAULTS is set (tests/faults/run.sh sets it).

namespace wickbook::store::testing {

inline bool longRun() {
    const char* set = std::getenv("WICKBOOK_LONG_FAULTS");
    return set != nullptr && *set != '\0' && *set != '0';
}

inline int trialCount(int fast, int all) {
    return longRun() ? all : fast;
}

} // namespace wickbook::store::testing
