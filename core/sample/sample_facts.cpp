// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/station_record.h"
#include "core/sample/sample_station.h"

namespace wickbook::sample {

namespace {

using namespace std::chrono_literals;

/// Identities of facts have a range of their own, away from those of readings.
constexpr std::uint64_t kFactCounter = 1ULL << 60U;

record::Instant daysBefore(const SamplePlan& plan, int days, std::chrono::hours hour) {
    return record::Instant{(plan.lastDay - date::days{days}).time_since_epoch()} + hour;
}

} // namespace

record::StationFacts sampleFacts(const SamplePlan& plan) {
    std::uint64_t counter = kFactCounter;
    const auto nextId = [&] { return record::Uuid::fromSeed(plan.seed, ++counter); };

    record::NewStation station;
    station.name = "Quillmere (invented)";
    station.position = {52.3, -1.4};
    station.elevation = units::Elevation::fromMetres(165);
    station.zone = "Europe/London";
    station.hours = {9h, 21h};
    station.hourRule = record::HourRule::Utc;
    station.exposure = psychrometry::Exposure::Screen;
    station.step = {1, 1};
    station.lowestMark = {-30, 0};
    station.highestMark = {50, 0};
    station.invented = true;
    record::StationFacts facts = record::factsOf(station, nextId);
    facts.periods.front().surroundings =
        "Louvred screen 1.25 m above short grass; hedge 2 m high 12 m to the west.";

    record::PeriodChange hedge;
    hedge.id = nextId();
    hedge.from = daysBefore(plan, 330, 12h);
    hedge.surroundings = "Hedge cut back to 1.2 m; screen washed and painted.";
    facts.periods.push_back(hedge);

    record::Thermometer& dry = facts.thermometers.at(0);
    dry.name = "Q 17";
    dry.liquid = "spirit";
    record::Thermometer& oldWet = facts.thermometers.at(1);
    oldWet.name = "Q 18";
    oldWet.liquid = "spirit";
    record::Thermometer newWet = oldWet;
    newWet.id = nextId();
    newWet.name = "Q 23";

    record::Fitting fitting;
    fitting.id = nextId();
    fitting.from = daysBefore(plan, 200, 6h);
    fitting.dry = dry.id;
    fitting.wet = newWet.id;
    facts.fittings.push_back(fitting);

    const auto certify = [&](const record::Uuid& thermometer, std::vector<record::CorrectionPoint> points,
                             const char* source) {
        record::Correction correction;
        correction.id = nextId();
        correction.thermometer = thermometer;
        correction.points = std::move(points);
        correction.standardUncertainty = 0.05;
        correction.source = source;
        facts.corrections.push_back(std::move(correction));
    };
    certify(dry.id, {{-10, 0.1}, {0, 0.1}, {15, 0.0}, {30, -0.1}}, "certificate (invented)");
    certify(oldWet.id, {{-10, 0.0}, {0, 0.0}, {15, -0.1}, {30, -0.1}}, "certificate (invented)");
    certify(newWet.id, {{-10, 0.2}, {0, 0.2}, {15, 0.1}, {30, 0.1}}, "certificate (invented)");
    facts.thermometers.push_back(newWet);
    return facts;
}

} // namespace wickbook::sample
