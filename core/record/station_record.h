// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/station.h"

#include <functional>
#include <span>
#include <vector>

namespace wickbook::record {

/// The station's facts folded into periods, ready to be asked. A value: copy it freely.
/// Invariant: at least one period; periods are contiguous and sorted; the first has no from, the last no to.
class StationRecord {
public:
    StationRecord() : StationRecord(StationFacts{}) {}
    explicit StationRecord(StationFacts facts);

    [[nodiscard]] const StationFacts& facts() const { return facts_; }
    [[nodiscard]] const std::string& name() const { return facts_.name; }
    [[nodiscard]] std::span<const StationPeriod> periods() const { return periods_; }
    [[nodiscard]] const StationPeriod& periodAt(Instant instant) const;
    [[nodiscard]] const StationPeriod& latestPeriod() const { return periods_.back(); }

    /// The thermometers in use at a moment; nullptr where none is on record.
    [[nodiscard]] const Thermometer* dryThermometerAt(Instant instant) const;
    [[nodiscard]] const Thermometer* wetThermometerAt(Instant instant) const;
    [[nodiscard]] const Thermometer* thermometer(const Uuid& id) const;
    /// The correction in force for a thermometer; nullptr: none known.
    [[nodiscard]] const Correction* correctionAt(const Uuid& thermometer, Instant instant) const;

private:
    StationFacts facts_;
    std::vector<StationPeriod> periods_;
};

/// Correction to add at this reading, both in the thermometer's unit: linear between points, the nearest
/// beyond.
double correctionAtReading(const Correction& correction, double reading);

/// Facts of a new station with one pair of like thermometers and one period from the beginning.
struct NewStation {
    std::string name;
    Position position;
    units::Elevation elevation = units::Elevation::fromMetres(0);
    std::string zone = "UTC";
    std::vector<HourOfDay> hours;
    HourRule hourRule = HourRule::Clock;
    psychrometry::Exposure exposure = psychrometry::Exposure::Screen;
    units::TemperatureUnit unit = units::TemperatureUnit::Celsius;
    units::Decimal step{1, 1};
    units::Decimal lowestMark{-40, 0};
    units::Decimal highestMark{60, 0};
    bool invented = false;
};
/// Identities come from the source given (Uuid::random for a person's station, a seeded one for the sample).
StationFacts factsOf(const NewStation& station, const std::function<Uuid()>& nextId);

/// First moment of a date at the station, by the clock of the zone given.
Instant startOfDate(StationDate date, const Zone& zone);
/// By the clock that the station goes by at that moment.
Instant startOfDate(StationDate date, const StationRecord& station);

} // namespace wickbook::record
