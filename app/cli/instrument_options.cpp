// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/instrument_options.h"

#include "app/cli/book_access.h"
#include "app/cli/console.h"
#include "app/cli/finding_text.h"
#include "app/cli/options.h"
#include "core/psychrometry/standard_atmosphere.h"
#include "core/record/derived_reading.h"

#include <fmt/format.h>

namespace wickbook::cli {

void InstrumentOptions::declare(OptionList& command) {
    command.text("--exposure", exposure, "How the thermometers hang: " + exposureNames(false));
    command.text("--pressure", pressure, "Station pressure, hPa");
    command.text("--elevation", elevation, "Metres above the sea, for the standard atmosphere");
    command.text("--book", book, "A book, for its exposure, elevation and unit");
}

Outcome<Instrument> InstrumentOptions::read() const {
    Instrument instrument;
    std::string named = exposure;
    std::optional<units::Pressure> atStation;
    if (!book.empty()) {
        const auto opened = openToRead(book);
        if (!opened) {
            return tl::unexpected(opened.error());
        }
        const auto& period = opened->station.latestPeriod();
        instrument.unit = opened->unit();
        if (period.meanPressure) {
            atStation = units::Pressure::fromHectopascals(*period.meanPressure);
        } else if (const auto standard = psychrometry::standardPressure(period.elevation)) {
            atStation = *standard;
        }
        if (named.empty()) {
            instrument.coefficient = record::coefficientRule(period);
            named = std::string{psychrometry::entryOf(period.exposure).name};
        }
    }
    if (named.empty()) {
        return refuse(fmt::format("Say how the thermometers hang: --exposure with one of {}, or --book.",
                                  exposureNames(false)));
    }
    const auto chosen = instrument.coefficient.perKelvin ? exposureFrom(named) : stationExposureFrom(named);
    if (!chosen) {
        return tl::unexpected(chosen.error());
    }
    instrument.coefficient.exposure = *chosen;
    if (!pressure.empty() && !elevation.empty()) {
        return refuse("Give --pressure or --elevation, not both: the pressure read is the better one.");
    }
    if (!pressure.empty()) {
        const auto given = numberFrom("--pressure", pressure, 300, 1100, "hPa");
        if (!given) {
            return tl::unexpected(given.error());
        }
        atStation = units::Pressure::fromHectopascals(*given);
    } else if (!elevation.empty()) {
        const auto height = elevationFrom(elevation);
        if (!height) {
            return tl::unexpected(height.error());
        }
        if (const auto standard = psychrometry::standardPressure(*height)) {
            atStation = *standard;
        }
    }
    if (!atStation) {
        // As derive does, and as openly.
        atStation = units::Pressure::fromHectopascals(psychrometry::kStandardSeaLevelHectopascals);
        const auto words = wordsFor(pressureAssumed(*atStation));
        say(words.message + ' ' + words.remedy);
    }
    instrument.pressure = *atStation;
    return instrument;
}

} // namespace wickbook::cli
