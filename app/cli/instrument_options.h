// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/option_list.h"
#include "app/cli/outcome.h"
#include "core/psychrometry/psychrometer.h"
#include "core/units/read_temperature.h"

/// The instrument and the pressure that several verbs ask for in the same words: from the options, else from
/// a book as its station stands now.

namespace wickbook::cli {

struct Instrument {
    psychrometry::CoefficientRule coefficient;
    units::Pressure pressure = units::Pressure::fromHectopascals(1013.25);
    units::TemperatureUnit unit = units::TemperatureUnit::Celsius; ///< the book's, else °C
};

struct InstrumentOptions {
    std::string exposure, pressure, elevation, book;

    void declare(OptionList& command);
    /// Without pressure, elevation and book, sea level's is taken and said so.
    [[nodiscard]] Outcome<Instrument> read() const;
};

} // namespace wickbook::cli
