// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/instant.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

/// Which copies of one book stay: of the last 7 days that have copies the newest of each day, of the last 8
/// weeks the newest of each week, of the last 24 months the newest of each month. Days, ISO weeks and months
/// are those of UTC, as the copies' names are. A day without a copy takes no place, so that a station that is
/// written once a fortnight keeps its seven days too. Within these seven days every copy made before a large
/// act stays: one that is made an hour later must not take its place.

namespace wickbook::store {

inline constexpr std::size_t kDaysKept = 7;
inline constexpr std::size_t kWeeksKept = 8;
inline constexpr std::size_t kMonthsKept = 24;

struct CopyAge {
    record::Instant moment{};
    /// Whether it passed when it was last verified; none: not verified since it was found.
    std::optional<bool> sound{};
    /// Made before a register was brought in or taken back.
    bool beforeAct = false;
};

/// The places in copies that go, in any order. Never among them: the newest that verified; a copy from
/// after now, which is one of a clock that was set back since and must neither go nor push others out; one
/// that is known not to verify, which takes no other's place either and is left to a person.
std::vector<std::size_t> copiesToDrop(std::span<const CopyAge> copies, record::Instant now);

} // namespace wickbook::store
