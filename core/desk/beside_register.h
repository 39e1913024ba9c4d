// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/comparison/beside_reference.h"
#include "core/comparison/fitted_coefficient.h"
#include "core/comparison/overlap.h"
#include "core/desk/whole_register.h"

#include <chrono>
#include <vector>

/// Readings of another instrument beside those of the register: which belong together, and what follows.

namespace wickbook::desk {

/// Same place, within five minutes (job: against a sensor).
inline constexpr std::chrono::minutes kBesideWithin{5};

enum class BesideLack {
    NoOwnReading, ///< neither beside it nor in the register within five minutes
    NoHumidity,   ///< of the station's own reading none could be worked out
    NoReference   ///< the other instrument's humidity is missing or can't be worked out
};

struct LackingReading {
    record::BesideReading reading;
    BesideLack lack = BesideLack::NoOwnReading;
};

/// Reference: pairs and what they say. Order of pairs as of readings, by time.
struct BesideReferenceAnswer {
    std::vector<record::BesideReading> readings; ///< those that became a pair
    std::vector<comparison::ComparedPair> pairs;
    std::vector<LackingReading> lacking;
    comparison::BesideReference spread;
    comparison::FittedCoefficient water;
    comparison::FittedCoefficient ice;
};

struct OverlapAnswer {
    std::vector<record::BesideReading> readings;
    std::vector<comparison::OverlapPair> pairs;
    std::vector<LackingReading> lacking;
    comparison::Overlap overlap;
};

/// The readings of one comparison, by time.
std::vector<record::BesideReading> readingsOf(const record::StationFacts& facts,
                                              const record::Uuid& comparison);

/// Of a file's readings those that belong to a comparison: with a pair of the station's beside them, or the
/// nearest to a reading of the register within five minutes. A logger's other thousands are left aside.
/// Readings of a moment that the comparison has already are left out too.
struct BesideSelection {
    std::vector<record::BesideReading> taken; ///< by time, with new identities, of the comparison
    std::size_t leftAside = 0;                ///< nothing of the station's stands beside them
    std::size_t known = 0;                    ///< there already
};
Result<BesideSelection> selectBeside(const store::Book& book, const record::StationRecord& station,
                                     const record::Uuid& comparison,
                                     std::vector<record::BesideReading> readings);

/// One reading of a reference with the station's own: none where something lacks. own: from the register,
/// nullptr where it has none within five minutes. A reference that is a psychrometer itself is derived with
/// the comparison's exposure (aspirated where none is named).
tl::expected<comparison::ComparedPair, BesideLack> pairBeside(const record::BesideReading& reading,
                                                              const record::SideBySide& other,
                                                              const record::StationRecord& station,
                                                              const record::DerivedReading* own);

/// The change of place or exposure that an overlap is about: the first of its time or later that breaks the
/// record, joined or not. None where there is none yet.
std::optional<record::PeriodChange> changeAfterOverlap(const record::StationRecord& station,
                                                       const record::SideBySide& other);

/// Pre: other.purpose is Reference.
Result<BesideReferenceAnswer> besideReference(const store::Book& book, const record::StationRecord& station,
                                              const record::SideBySide& other);
/// The other pair is derived with the comparison's exposure, or the station's where none is named. Pre:
/// other.purpose is Overlap.
Result<OverlapAnswer> besideOverlap(const store::Book& book, const record::StationRecord& station,
                                    const record::SideBySide& other);

} // namespace wickbook::desk
