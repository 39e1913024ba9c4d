// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/rule.h"

#include <functional>
#include <span>
#include <vector>

namespace wickbook::checks {

struct CheckedReading {
    record::DerivedReading reading;
    std::vector<Finding> findings;
    bool leftOut = false;
};

/// What the checks say of one reading of a series.
struct Judgement {
    std::vector<Finding> findings;
    bool leftOut = false;
};

/// Judges every reading of a series in time order, each with its neighbours in the series. The caller gives a
/// margin of readings round the range it wants and asks for judged ones by [first, first + count). Work is
/// linear in the series. Readings must be in time order; withdrawn and missing ones are nobody's neighbour.
/// Where average is not known from the model, it is taken from the series itself (three years or more).
/// Each reading is judged by the limits in force when it was made.
/// Days equal to an earlier one of their month within the series are marked too (copied_days.h).
/// With a model, slips are looked for (unless they are to be left) and the gravest finding of a marked
/// reading carries its likely causes. progress returning false stops the work; what is done by then is
/// returned.
std::vector<CheckedReading>
checkSeries(std::span<const record::DerivedReading> series, std::size_t first, std::size_t count,
            const record::StationRecord& station, const StationLimits& limits,
            std::optional<record::Instant> now,
            const std::function<bool(std::size_t done, std::size_t total)>& progress = {},
            const StationModel* model = nullptr, Slips slips = Slips::LookFor);
/// The same for a whole series that is handed over: a register of a century is kept once, not twice.
std::vector<CheckedReading>
checkWholeSeries(std::vector<record::DerivedReading> series, const record::StationRecord& station,
                 const StationLimits& limits, std::optional<record::Instant> now,
                 const std::function<bool(std::size_t done, std::size_t total)>& progress = {},
                 const StationModel* model = nullptr, Slips slips = Slips::LookFor);

} // namespace wickbook::checks
