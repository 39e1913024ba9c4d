// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/instant.h"
#include "core/record/uuid.h"

#include <span>
#include <string>

/// Absences entered ahead. Where nobody stands in, an hour that is missed in one has its reason without being
/// written down hour by hour; where a deputy reads, a missed hour is a gap like any other. A reading that was
/// made all the same counts as always.

namespace wickbook::record {

struct Absence {
    Uuid id;
    StationDate from{}; ///< first day away
    StationDate to{};   ///< last day away, included
    std::string reason; ///< "away", "ill", … or own words
    std::string deputy; ///< initials of who reads instead; empty: nobody
    std::string note;
    bool withdrawn = false;
    [[nodiscard]] bool contains(StationDate date) const { return from <= date && date <= to; }
    bool operator==(const Absence&) const = default;
};

/// The absence that explains a gap on this date: a live one without a deputy, the one entered last where two
/// overlap; nullptr where none does or a deputy was to read that day.
const Absence* absenceExplaining(std::span<const Absence> absences, StationDate date);

/// Initials of the deputy who reads on this date; empty where there is none.
std::string deputyOn(std::span<const Absence> absences, StationDate date);

} // namespace wickbook::record
