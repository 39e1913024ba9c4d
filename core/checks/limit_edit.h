// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/limits.h"

#include <tl/expected.hpp>

#include <optional>
#include <span>
#include <string>

/// Changing a station's limits: what is asked for is laid into what the book holds, and the whole is refused
/// where it makes no sense. Values in, values out; the caller stores them.

namespace wickbook::checks {

/// One change that a person asks for.
struct LimitEdit {
    std::string name;
    std::optional<record::Instant> from; ///< none: from the beginning
    /// none: the built-in value; without a from every value of the station's own is then taken back.
    std::optional<double> value;
};

/// Why limits can't be so.
struct LimitProblem {
    enum class Kind {
        Unknown,    ///< no limit of this name
        Fixed,      ///< one that a station can't set
        OutOfRange, ///< value outside [lowest, highest]
        NotWhole,   ///< a count with decimals
        Contradicts ///< value of name must not pass otherValue of other at the moment from
    };
    Kind kind = Kind::Unknown;
    std::string name{};
    double value = 0;
    double lowest = 0;
    double highest = 0;
    std::string other{};
    double otherValue = 0;
    bool mustBeBelow = false; ///< Contradicts: name has to stay at or below other; else at or above
    std::optional<record::Instant> from{};
};

/// Whether one value can be by itself.
std::optional<LimitProblem> problemOf(std::string_view name, double value);
/// Pairs of limits of one rule that must not pass each other, held against each other at every moment. The
/// value complained of is one of changed, where one of these is concerned.
std::optional<LimitProblem> contradictionIn(const record::LimitChanges& changes,
                                            std::span<const LimitEdit> changed = {});

/// What the book would hold afterwards, or the first thing that can't be. Nothing is half done.
tl::expected<record::LimitChanges, LimitProblem> edited(const record::LimitChanges& now,
                                                        std::span<const LimitEdit> edits);

} // namespace wickbook::checks
