// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/schema.h"

#include <vector>

/// A schema after the newest one, invented for the fault tests: its change writes some hundred pages.

namespace wickbook::store::testing {

inline std::vector<Migration> schemasWithAnInventedNext() {
    std::vector<Migration> steps(migrations().begin(), migrations().end());
    steps.push_back({currentSchema() + 1,
                     "CREATE TABLE invented (one INTEGER PRIMARY KEY, text TEXT NOT NULL) STRICT; "
                     "INSERT INTO invented WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n "
                     "WHERE i < 400) SELECT i, hex(zeroblob(400)) FROM n;"});
    return steps;
}

} // namespace wickbook::store::testing
