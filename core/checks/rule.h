// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/finding.h"
#include "core/checks/limits.h"
#include "core/climate/station_average.h"
#include "core/record/derived_reading.h"

#include <functional>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

/// What a rule is given and what it is. One rule, one file; rule_table.cpp lists them all.

namespace wickbook::checks {

class StationModel; // station_model.h

/// The reading in question and what stands round it. Rules read only what they need: the neighbours are the
/// few readings before and after in time, live ones only, the reading itself not among them.
/// Whether slips are looked for where a model is known. They are findings of at most soft severity and causes
/// hung on others: who only asks which readings count can leave them, and has the answer in half the time.
enum class Slips { LookFor, Leave };

struct ReadingContext {
    const record::DerivedReading& reading;
    const record::StationRecord& station;
    const Limits& limits;
    std::span<const record::DerivedReading> before; ///< time order, the newest last
    std::span<const record::DerivedReading> after;  ///< time order, the nearest first
    std::optional<record::Instant> now;             ///< for "future"; none when a file is judged by itself
    bool live = false;                              ///< being entered now, so it can be read again
    std::optional<climate::StationAverage> average; ///< the month and hour in other years, where known
    const StationModel* model =
        nullptr; ///< the station's habits; with it slips are looked for (likely_causes.h)
    Slips slips = Slips::LookFor;
};

/// How many neighbours a context should hold each way for every rule to see enough.
inline constexpr int kNeighboursBefore = 12;
inline constexpr int kNeighboursAfter = 8;

struct Rule {
    std::string_view code;
    Root root;
    /// Appends findings; must not look at anything but the context.
    void (*check)(const ReadingContext&, std::vector<Finding>&);
};

/// Every rule, in the order they speak.
std::span<const Rule> ruleTable();

/// Runs every rule on one reading, gravest first. Readings of origin Missing or withdrawn give nothing.
std::vector<Finding> checkReading(const ReadingContext& context);

/// A pair by itself, without a station's neighbours: what derive tells of it.
std::vector<Finding> checkPair(const psychrometry::PairInput& input,
                               const psychrometry::Derivation& derivation);

/// One note per root: the gravest finding of each root, the others of that root behind it.
struct SpokenNote {
    Finding lead;
    std::vector<Finding> also;
};
std::vector<SpokenNote> spokenNotes(std::vector<Finding> findings);

} // namespace wickbook::checks
