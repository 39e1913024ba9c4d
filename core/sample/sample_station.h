// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/revision.h"
#include "core/record/station.h"

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

/// A station that never was, for looking round without a book of one's own, for pictures and for tests. It is
/// made afresh each time and marked invented; nothing in it is anybody's data. The air is that of
/// sample_weather.h; it is read as an observer would read it:
///   - twice daily at 09 and 21 UTC, a few minutes early or late, in a louvred screen, spirit in glass, read
///   to
///     tenths, 0.04 °C of reading error on each bulb, certificates applied backwards so that what is read is
///     not quite what the air has;
///   - the wet bulb by the inverse psychrometer equation with the screen's coefficient; in frost ice as a
///   rule,
///     supercooled water at times;
///   - pressure read by observer A, not by the deputy B (one week in nine); weather, wind, max and min
///   mostly;
///   - a new wick every fourteenth day; an extra reading about once a month; about one hour in a hundred
///   missed.
///
/// Counted in days before the last: the wet thermometer broke at 201 and a new one hangs since 200; six days
/// ill from 158 to 153 (a month without means); two days away at 71 and 70; one dry bulb alone at 33; two
/// hours with nothing written down at 12 and 5; an estimate at about 90; corrections with their history at
/// about 20, 64 and 110; a withdrawn extra reading at about 45. Slips: see SamplePlan::slips.
///
/// The same plan gives the same station on every machine, but for the last bit of a machine's exp and log,
/// which could once in many years turn a tenth.

namespace wickbook::sample {

inline constexpr std::uint64_t kSampleSeed = 52165;

struct SamplePlan {
    record::StationDate lastDay; ///< date of the last readings
    int years = 2;               ///< whole years before …
    int weeks = 5;               ///< … and weeks on top
    std::uint64_t seed = kSampleSeed;
    /// Readings after this moment are left out, so that a sample opened at noon has no evening yet.
    std::optional<record::Instant> until = std::nullopt;
    /// Honest slips, each at the first reading that fits on or before: swapped pair 6, dry wick 13, wet above
    /// dry 19, the same pair three times 27, no vapour 40 (judged erroneous since), dry bulb ten low 48, step
    /// in temperature 55, step in dew point 83 days before the last; wick not told, freezing halt and ice
    /// over dry in the frost before 4, 8 and 16 days; off the scale nine days after the first (an old page).
    /// With less than a year and a half, slips that need frost may find none.
    bool slips = true;
};

struct SampleRevision {
    record::Uuid id;
    record::Observation values;
    record::Author author;
    record::Instant recordedAt{};
};

/// One observation with its history, oldest first, never empty.
struct SampleObservation {
    record::Uuid subject;
    std::vector<SampleRevision> revisions;
    [[nodiscard]] const record::Observation& newest() const { return revisions.back().values; }
};

/// Where a slip was planted, and the code of the rule that should mark it.
struct PlantedSlip {
    record::Uuid subject;
    std::string_view code;
    std::string_view what; ///< in English, for tests and logs
};

struct SampleStation {
    record::StationFacts facts;
    std::vector<SampleObservation> observations; ///< in time order
    std::vector<PlantedSlip> slips;
};

/// Station, thermometers, certificates and their history: all but the readings.
record::StationFacts sampleFacts(const SamplePlan& plan);

/// The whole station. Work in proportion to the years: a hundred take a few seconds.
SampleStation makeSample(const SamplePlan& plan);

/// The newest revision of each observation as a book would hand it out, in time order, none withdrawn:
/// for tests and for whoever wants the sample without a book.
std::vector<record::StoredObservation> storedObservations(const SampleStation& sample);

} // namespace wickbook::sample
