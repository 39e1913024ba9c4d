// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/store/book_testing.h"

#include <vector>

/// What the kept books hold. Never changed for a book already kept: it says what such a file must still mean.

namespace wickbook::store::testing {

/// One of everything that an observation can be.
inline std::vector<ObservationChange> fixtureChanges() {
    using namespace units;
    std::vector<ObservationChange> changes;
    for (int i = 0; i < 4; ++i)
        changes.push_back(change(reading(i), static_cast<std::uint64_t>(i)));
    record::Observation full = reading(4);
    full.offset = std::chrono::seconds{-15408};
    full.dry = {ReadTemperature{{615, 1}, TemperatureUnit::Fahrenheit}, false};
    full.wet = {std::nullopt, true};
    full.wick = record::WickState::Ice;
    full.wickCare = record::WickCare::Wetted;
    full.pressure = Decimal{10132, 1};
    full.weather = record::WeatherSet{};
    for (int i = 0; i < record::kWeatherCount; ++i)
        full.weather->add(static_cast<record::Weather>(i));
    full.windBeaufort = 0;
    full.maximum = ReadTemperature{{18, 0}, TemperatureUnit::Celsius};
    full.minimum = ReadTemperature{{-35, 1}, TemperatureUnit::Celsius};
    full.repeats = {{ReadTemperature{{141, 1}, TemperatureUnit::Celsius}, std::nullopt}};
    full.note = "Nebel über dem Bach; \"so dicht\"";
    full.origin = record::Origin::Estimated;
    full.quality = record::Quality::Doubtful;
    changes.push_back(change(full, 4));
    record::Observation missing = reading(5);
    missing.dry = {};
    missing.wet = {};
    missing.weather = record::WeatherSet{};
    missing.origin = record::Origin::Missing;
    missing.missingReason = "ill";
    changes.push_back(change(missing, 5));
    record::Observation extra = reading(6);
    extra.hour.reset();
    extra.wick = record::WickState::Water;
    extra.wickCare = record::WickCare::Changed;
    extra.quality = record::Quality::Sound;
    changes.push_back(change(extra, 6));
    record::Observation corrected = reading(0);
    corrected.wet.value->value = {139, 1};
    corrected.origin = record::Origin::Corrected;
    corrected.quality = record::Quality::Erroneous;
    changes.push_back(change(corrected, 0, "read again"));
    changes.back().revision = record::Uuid::fromSeed(4, 0);
    record::Observation withdrawn = reading(1);
    withdrawn.withdrawn = true;
    changes.push_back(change(withdrawn, 1, "wrong page"));
    changes.back().revision = record::Uuid::fromSeed(4, 1);
    return changes;
}

/// The facts after the one revision that the book holds.
inline record::StationFacts fixtureFacts() {
    record::StationFacts facts = inventedStation();
    facts.limits[{"very-dry.lowest-humidity"}] = 7.25;
    facts.corrections.clear();
    return facts;
}

inline void makeFixture(const std::filesystem::path& path) {
    Book book = newBook(path);
    const auto fail = [](const StoreError& error) { throw std::runtime_error(error.detail); };
    if (const auto done = book.appendAll(fixtureChanges()); !done)
        fail(done.error());
    if (const auto done = book.reviseFacts(fixtureFacts(), {"cd", "certificate withdrawn"}); !done)
        fail(done.error());
}

} // namespace wickbook::store::testing
