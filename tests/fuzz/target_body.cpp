// SPDX-License-Identifier: GPL-3.0-or-later
// The first byte chooses a kind of revision, the rest is its body: the JSON that a book keeps, from a file
// that anybody may have written.
#include "core/record/derived_reading.h"
#include "core/record/observing_hours.h"
#include "core/store/body_error.h"
#include "core/store/facts_body.h"
#include "core/store/observation_body.h"
#include "tests/fuzz/stations.h"
#include "tests/fuzz/targets.h"

#include <array>

namespace wickbook::fuzz {

namespace {

namespace kind = store::kind;

constexpr std::array kKinds{kind::kObservation,  kind::kStation,    kind::kPeriod,    kind::kThermometer,
                            kind::kFitting,      kind::kCorrection, kind::kLimit,     kind::kAbsence,
                            kind::kDiary,        kind::kPairCheck,  kind::kSaltCheck, kind::kSideBySide,
                            kind::kBesideReading};

/// A reading that was kept can be shown, whatever it says.
void useObservation(const record::Observation& values) {
    static_cast<void>(record::filedDate(values));
    static_cast<void>(record::qualityCode(values.origin, values.quality));
    static_cast<void>(record::instantText(values.instant));
    static_cast<void>(record::deriveReading(values, stationThatMoved()));
    record::Observation moved = values;
    record::placeInTime(moved, stationThatMoved(), values.instant);
}

void checkObservation(std::string_view text) {
    record::Observation values;
    try {
        values = store::observationFromBody(text);
    } catch (const store::MalformedBody&) {
        return;
    }
    // What can be read can be kept, and comes back.
    const std::string body = store::observationBody(values);
    promise(store::observationFromBody(body) == values, "an observation comes back from its body", text);
    promise(store::observationBody(store::observationFromBody(body)) == body, "and its body is canonical",
            text);
    useObservation(values);
}

/// A station of these facts answers what pages ask of it.
void useStation(const record::StationFacts& facts) {
    const record::StationRecord station{facts};
    promise(!station.periods().empty() && !station.periods().front().from && !station.periods().back().to,
            "periods from ever until further notice", facts.name);
    for (std::size_t i = 1; i < station.periods().size(); ++i) {
        promise(station.periods()[i - 1].to == station.periods()[i].from && station.periods()[i].from,
                "one period ends where the next begins", facts.name);
    }
    record::Observation values;
    values.dry.value = {{164, 1}, units::TemperatureUnit::Celsius};
    values.wet.value = {{143, 1}, units::TemperatureUnit::Celsius};
    for (const int year : {1850, 1968, 2025}) {
        const record::StationDate day{date::local_days{date::year{year} / 3 / 30}};
        for (const auto& expected : record::expectedHours(station, day, day + date::days{1})) {
            record::placeInTime(values, station, expected.instant);
            static_cast<void>(record::momentOf(station, expected.hour));
            static_cast<void>(record::deriveReading(values, station));
        }
    }
}

void checkFact(std::string_view name, std::string_view text) {
    // Beside the facts of a whole station, so that a period or a fitting has something to refer to.
    record::StationFacts facts = stationThatMoved().facts();
    const record::Uuid subject = name == kind::kStation ? facts.id : record::Uuid::fromSeed(11, 1);
    const store::FactRow row{std::string{name}, subject, std::string{text}};
    try {
        store::addFact(facts, row);
        static_cast<void>(store::isWithdrawn(text));
    } catch (const store::MalformedBody&) {
        return;
    }
    std::vector<store::FactRow> rows;
    try {
        rows = store::factRows(facts);
    } catch (const store::UnkeepableValue& refused) {
        promise(false, refused.what(), text);
    }
    record::StationFacts again;
    for (const store::FactRow& one : rows) {
        store::addFact(again, one);
    }
    promise(again == facts, "facts come back from their bodies", text);
    promise(store::isWithdrawn(store::withdrawnBody(text)), "a fact can be taken back", text);
    useStation(facts);
}

} // namespace

void runBody(std::string_view bytes) {
    if (bytes.empty()) {
        return;
    }
    const std::string_view name = kKinds.at(static_cast<unsigned char>(bytes.front()) % kKinds.size());
    const std::string_view text = bytes.substr(1);
    if (name == kind::kObservation) {
        checkObservation(text);
    } else {
        checkFact(name, text);
        if (name == kind::kLimit) {
            try {
                static_cast<void>(store::limitFrom(text));
            } catch (const store::MalformedBody&) {
            }
        }
    }
}

} // namespace wickbook::fuzz
