// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/observe/working_excerpt.h"

#include "core/psychrometry/humidity_table.h"

#include <algorithm>
#include <cmath>

namespace wickbook::ui {

namespace {

constexpr double kBinaryFraction = 1e-9;
constexpr double kDryStep = 1.0;
constexpr double kDepressionStep = 0.5;
constexpr int kLinesEachWay = 2;

/// Two printed lines on either side of the reading's own; its own once, where it is a printed one.
std::vector<double> linesRound(double own, double step, double lowest) {
    std::vector<double> lines{own};
    const double below = std::floor(own / step + kBinaryFraction);
    const bool printed = std::abs(own / step - std::round(own / step)) < 1e-6;
    for (int away = 0; away < kLinesEachWay; ++away) {
        const double down = (below - away - (printed ? 1 : 0)) * step;
        if (down > lowest - kBinaryFraction) {
            lines.push_back(down);
        }
        lines.push_back((below + 1 + away) * step);
    }
    std::sort(lines.begin(), lines.end());
    return lines;
}

std::size_t placeOf(double own, const std::vector<double>& lines) {
    return static_cast<std::size_t>(std::find(lines.begin(), lines.end(), own) - lines.begin());
}

/// One cell, looked up in the table as it is printed for the station.
std::optional<double> cellOf(const psychrometry::HumidityTableRequest& station, double dry, double depression,
                             bool ice) {
    psychrometry::HumidityTableRequest request = station;
    request.lowestDry = dry;
    request.highestDry = dry;
    const bool first = depression < kBinaryFraction;
    request.depressionStep = first ? kDepressionStep : depression;
    request.highestDepression = first ? 0.0 : depression;
    const auto table = psychrometry::humidityTable(request);
    if (!table) {
        return std::nullopt;
    }
    const auto& rows = ice ? table->iceRows : table->waterRows;
    if (rows.empty() || rows.front().cells.empty() || !rows.front().cells.back().humidity) {
        return std::nullopt;
    }
    return rows.front().cells.back().humidity->percent();
}

} // namespace

units::Temperature wetBulbUsed(const record::DerivedReading& reading) {
    const bool ice = reading.derivation && reading.derivation->wickUsed == psychrometry::WickState::Ice;
    return ice ? std::min(reading.input.wet, units::Temperature::fromCelsius(0.0)) : reading.input.wet;
}

std::optional<WorkingExcerpt> workingExcerpt(const record::DerivedReading& reading,
                                             units::TemperatureUnit unit) {
    if (!reading.derivation) {
        return std::nullopt;
    }
    const psychrometry::Derivation& derived = *reading.derivation;
    if (derived.problem && derived.problem != psychrometry::PsychrometryError::NoVapour) {
        return std::nullopt;
    }
    WorkingExcerpt excerpt;
    excerpt.ice = derived.wickUsed == psychrometry::WickState::Ice;
    const bool celsius = unit == units::TemperatureUnit::Celsius;
    const double dry = celsius ? reading.input.dry.celsius() : reading.input.dry.fahrenheit();
    const auto apart = reading.input.dry - wetBulbUsed(reading);
    double depression = celsius ? apart.kelvins() : apart.fahrenheitDegrees();
    if (depression < 0) {
        if (excerpt.ice || !derived.takenAsSaturation) {
            return std::nullopt;
        }
        depression = 0;
    }
    excerpt.dryBulbs = linesRound(dry, kDryStep, -1000);
    excerpt.depressions = linesRound(depression, kDepressionStep, 0);
    excerpt.row = placeOf(dry, excerpt.dryBulbs);
    excerpt.column = placeOf(depression, excerpt.depressions);

    psychrometry::HumidityTableRequest station;
    station.unit = unit;
    station.pressure = reading.pressure;
    station.coefficient = reading.input.coefficient;
    for (const double row : excerpt.dryBulbs) {
        std::vector<std::optional<double>> cells;
        for (const double column : excerpt.depressions) {
            cells.push_back(cellOf(station, row, column, excerpt.ice));
        }
        excerpt.humidity.push_back(std::move(cells));
    }
    return excerpt;
}

} // namespace wickbook::ui
