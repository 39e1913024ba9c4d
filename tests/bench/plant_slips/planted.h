// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/observation.h"

#include <random>
#include <string>
#include <vector>

namespace wickbook::bench {

/// A sound reading with one slip in it.
struct Planted {
    std::string kind;  ///< line of the table: "ten", "five", "swap" …
    std::string cause; ///< the code that tells of it; several bulbs and ways share a kind
    record::Observation observation;
    bool pairIsKnown = true; ///< the true pair can be told; else only the cause's code counts
};

/// Every kind of slip once, where it changes this reading. previous: the reading before, for a copied line.
std::vector<Planted> plantAll(const record::Observation& sound, const record::Observation* previous,
                              std::mt19937& random);

} // namespace wickbook::bench
