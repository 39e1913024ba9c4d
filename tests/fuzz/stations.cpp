// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/stations.h"

namespace wickbook::fuzz {

namespace {

using record::HourOfDay;
using std::chrono::hours;

record::NewStation invented(std::string zone, record::HourRule rule, std::vector<HourOfDay> readAt) {
    record::NewStation station;
    station.name = "Nowhere (invented)";
    station.elevation = units::Elevation::fromMetres(120);
    station.zone = std::move(zone);
    station.hours = std::move(readAt);
    station.hourRule = rule;
    station.invented = true;
    return station;
}

record::StationFacts factsFrom(const record::NewStation& station) {
    std::uint64_t counter = 0;
    return record::factsOf(station, [&counter] { return record::Uuid::fromSeed(9, ++counter); });
}

record::StationFacts movedFacts() {
    record::StationFacts facts = factsFrom(
        invented("America/Argentina/Cordoba", record::HourRule::Clock, {hours{7}, hours{14}, hours{21}}));
    record::PeriodChange abroad;
    abroad.id = record::Uuid::fromSeed(10, 1);
    abroad.from = record::Instant{date::sys_days{date::year{1968} / 3 / 1}};
    abroad.zone = "Europe/London";
    record::PeriodChange later;
    later.id = record::Uuid::fromSeed(10, 2);
    later.from = record::Instant{date::sys_days{date::year{2001} / 10 / 28}} + std::chrono::minutes{30};
    later.hours = std::vector<HourOfDay>{hours{1} + std::chrono::minutes{30}, hours{13}};
    later.hourRule = record::HourRule::Standard;
    facts.periods.push_back(abroad);
    facts.periods.push_back(later);
    record::Thermometer other = facts.thermometers.front();
    other.id = record::Uuid::fromSeed(10, 3);
    other.unit = units::TemperatureUnit::Fahrenheit;
    other.step = {5, 1};
    facts.thermometers.push_back(other);
    facts.fittings.push_back({record::Uuid::fromSeed(10, 4), later.from, other.id, other.id, false});
    return facts;
}

} // namespace

const record::StationRecord& stationOfUtcHours() {
    static const record::StationRecord kStation{
        factsFrom(invented("Europe/London", record::HourRule::Utc, {hours{9}, hours{21}}))};
    return kStation;
}

const record::StationRecord& stationThatMoved() {
    static const record::StationRecord kStation{movedFacts()};
    return kStation;
}

} // namespace wickbook::fuzz
