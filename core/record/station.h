// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/psychrometry/exposure.h"
#include "core/record/absence.h"
#include "core/record/exposure_diary.h"
#include "core/record/instant.h"
#include "core/record/instrument_checks.h"
#include "core/record/month_signing.h"
#include "core/record/uuid.h"
#include "core/record/zone.h"
#include "core/units/decimal.h"
#include "core/units/elevation.h"
#include "core/units/read_temperature.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

/// What is known of the station, each fact valid from a moment (half-open UTC periods).
/// Kept as changes: a period names only what differs from the one before, so that putting in a forgotten
/// change of zone carries on into later periods that do not name a zone of their own.

namespace wickbook::record {

/// What observing hours follow.
enum class HourRule { Utc, Standard, Clock };
std::string_view hourRuleName(HourRule rule);
std::optional<HourRule> hourRuleFromName(std::string_view name);

struct Position {
    double latitude = 0;  ///< degrees, north positive
    double longitude = 0; ///< degrees, east positive
    bool operator==(const Position&) const = default;
};

/// The station's own fitted coefficient, used with the exposure "own".
struct OwnCoefficient {
    double waterPerKelvin = 0;
    std::optional<double> icePerKelvin;
    std::optional<double> relativeUncertainty;
    bool operator==(const OwnCoefficient&) const = default;
};

/// From a moment on, what is named here differs.
struct PeriodChange {
    Uuid id;
    std::optional<Instant> from; ///< none: from the beginning
    std::optional<Position> position;
    std::optional<units::Elevation> elevation;
    std::optional<std::string> zone;
    std::optional<std::vector<HourOfDay>> hours;
    std::optional<HourRule> hourRule;
    std::optional<psychrometry::Exposure> exposure;
    std::optional<OwnCoefficient> ownCoefficient;
    /// Mean pressure at the station, hPa: used where a reading has none, rather than the elevation's. 0: none
    /// any more.
    std::optional<double> meanPressure;
    std::optional<std::string> surroundings;
    /// An overlap has shown that the record goes on across this change: averages and lines are not broken.
    bool joined = false;
    bool withdrawn = false;
    bool operator==(const PeriodChange&) const = default;
};

/// All facts in force over [from, to).
struct StationPeriod {
    std::optional<Instant> from; ///< none: since ever
    std::optional<Instant> to;   ///< none: until further notice
    Position position;
    units::Elevation elevation = units::Elevation::fromMetres(0);
    Zone zone = Zone::utc();
    std::vector<HourOfDay> hours; ///< sorted
    HourRule hourRule = HourRule::Clock;
    psychrometry::Exposure exposure = psychrometry::Exposure::Screen;
    std::optional<OwnCoefficient> ownCoefficient;
    std::optional<double> meanPressure; ///< hPa
    std::string surroundings;
    /// Periods of one number are one series: the same place and exposure, or joined after an overlap.
    int series = 0;

    [[nodiscard]] bool contains(Instant instant) const {
        return (!from || instant >= *from) && (!to || instant < *to);
    }
};

struct Thermometer {
    Uuid id;
    std::string name;   ///< serial number or what it is called
    std::string liquid; ///< mercury, spirit, …
    units::TemperatureUnit unit = units::TemperatureUnit::Celsius;
    units::Decimal step{1, 1};         ///< finest step that is read, in unit
    units::Decimal lowestMark{-40, 0}; ///< engraved scale, in unit
    units::Decimal highestMark{60, 0};
    bool withdrawn = false;
    bool operator==(const Thermometer&) const = default;
};

/// A point of a certificate or ice-point check: at this reading, add this. Both in the thermometer's unit.
struct CorrectionPoint {
    double reading = 0;
    double correction = 0;
    bool operator==(const CorrectionPoint&) const = default;
};

/// Valid from a moment until the thermometer's next one. Between points linear, beyond them the nearest.
struct Correction {
    Uuid id;
    Uuid thermometer;
    std::optional<Instant> from;
    std::vector<CorrectionPoint> points;
    double standardUncertainty = 0; ///< in the thermometer's unit
    std::string source;             ///< certificate, ice point, …
    bool withdrawn = false;
    bool operator==(const Correction&) const = default;
};

/// Which thermometer hangs where, from a moment on.
struct Fitting {
    Uuid id;
    std::optional<Instant> from;
    Uuid dry;
    Uuid wet;
    bool withdrawn = false;
    bool operator==(const Fitting&) const = default;
};

/// Which limit of the checks, and from when on: none, from the beginning.
struct LimitMoment {
    std::string name; ///< "very-dry.lowest-humidity"
    std::optional<Instant> from{};
    auto operator<=>(const LimitMoment&) const = default;
};
/// Only what differs from the built-in table. A limit holds for the readings made from its moment on, until
/// the next moment of the same name: readings of 1990 are judged by the limits that hold for 1990, whenever
/// they are looked at. No value: the built-in one again.
using LimitChanges = std::map<LimitMoment, std::optional<double>>;

/// Everything but the observations, as values. Folded views are worked out once by StationRecord's functions.
struct StationFacts {
    Uuid id;
    std::string name;
    bool invented = false; ///< the sample station; shown wherever its data are
    std::vector<PeriodChange> periods;
    std::vector<Thermometer> thermometers;
    std::vector<Fitting> fittings;
    std::vector<Correction> corrections;
    std::vector<Absence> absences;
    std::vector<DiaryEntry> diary;
    std::vector<PairCheck> pairChecks;
    std::vector<SaltCheck> saltChecks;
    std::vector<SideBySide> sideBySides;
    std::vector<BesideReading> besideReadings;
    std::vector<MonthSigning> signings;
    LimitChanges limits;
    int hourWindowMinutes = 60; ///< a reading this near to an observing hour takes it
    bool operator==(const StationFacts&) const = default;
};

} // namespace wickbook::record
