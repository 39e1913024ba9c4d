// SPDX-License-Identifier: GPL-3.0-or-later
// Symbols: dry bulb and depression in the scale degrees asked for, wet bulb = dry bulb − depression.
// Source:  the psychrometer equation of core/psychrometry/psychrometer.h, cell by cell.
// Range:   dry bulbs −60…60 °C; a cell without such air stays empty.
#include "core/psychrometry/humidity_table.h"

#include "core/psychrometry/ranges.h"
#include "core/units/binary_fraction.h"

#include <algorithm>
#include <cmath>

namespace wickbook::psychrometry {

using units::kBinaryFraction;

namespace {

constexpr std::size_t kMostRows = 500;
constexpr std::size_t kMostColumns = 200;

/// first, first + step … up to last. Each from its index, so that errors don't add up; nothing where the list
/// can't be or would be longer than allowed.
std::optional<std::vector<double>> ladder(double first, double last, double step, std::size_t most) {
    if (!isPositive(step) || !std::isfinite(first) || !std::isfinite(last) || last < first) {
        return std::nullopt;
    }
    const double count = std::floor((last - first) / step + kBinaryFraction) + 1.0;
    if (count > static_cast<double>(most)) {
        return std::nullopt;
    }
    std::vector<double> values(static_cast<std::size_t>(count));
    for (std::size_t i = 0; i < values.size(); ++i) {
        values[i] = first + static_cast<double>(i) * step;
    }
    return values;
}

units::Temperature onScale(double degrees, units::TemperatureUnit unit) {
    return unit == units::TemperatureUnit::Celsius ? units::Temperature::fromCelsius(degrees)
                                                   : units::Temperature::fromFahrenheit(degrees);
}

HumidityTableCell cellFor(const HumidityTableRequest& request, double dryDegrees, double depression,
                          Surface bulb) {
    const auto dry = onScale(dryDegrees, request.unit);
    // Subtracted in scale degrees, as the observer does it.
    auto wet = onScale(dryDegrees - depression, request.unit);
    if (bulb == Surface::Ice) {
        if (wet.celsius() > kBinaryFraction) {
            return {};
        }
        wet = std::min(wet, units::Temperature::fromCelsius(0.0));
    }
    const auto coefficient = request.coefficient.at(bulb, wet, request.pressure);
    if (!coefficient) {
        return {};
    }
    const auto vapour = vapourPressure(dry, wet, bulb, request.pressure, *coefficient);
    if (!vapour) {
        return {};
    }
    HumidityTableCell cell;
    if (const auto humidity = relativeHumidity(*vapour, dry, coefficient->enhancement)) {
        cell.humidity = *humidity;
    }
    if (const auto dew = dewPoint(*vapour, coefficient->enhancement)) {
        cell.dewPoint = *dew;
    }
    return cell;
}

HumidityTableRow rowFor(const HumidityTableRequest& request, double dryDegrees,
                        const std::vector<double>& depressions, Surface bulb) {
    HumidityTableRow row{dryDegrees, bulb, {}};
    row.cells.reserve(depressions.size());
    for (const double depression : depressions) {
        row.cells.push_back(cellFor(request, dryDegrees, depression, bulb));
    }
    return row;
}

} // namespace

tl::expected<HumidityTable, PsychrometryError> humidityTable(const HumidityTableRequest& request) {
    const auto dryBulbs = ladder(request.lowestDry, request.highestDry, request.dryStep, kMostRows);
    const auto depressions = ladder(0.0, request.highestDepression, request.depressionStep, kMostColumns);
    if (!dryBulbs || !depressions) {
        return tl::unexpected(PsychrometryError::NoSolution);
    }
    if (!isInRange(onScale(dryBulbs->front(), request.unit)) ||
        !isInRange(onScale(dryBulbs->back(), request.unit))) {
        return tl::unexpected(PsychrometryError::TemperatureOutOfRange);
    }
    // A coefficient or pressure that can't be would leave every cell empty: say why instead.
    for (const Surface bulb : {Surface::Water, Surface::Ice}) {
        const auto coefficient =
            request.coefficient.at(bulb, units::Temperature::fromCelsius(0.0), request.pressure);
        if (!coefficient) {
            return tl::unexpected(coefficient.error());
        }
    }

    HumidityTable table{request, *depressions, {}, {}};
    for (const double dry : *dryBulbs) {
        table.waterRows.push_back(rowFor(request, dry, *depressions, Surface::Water));
        auto ice = rowFor(request, dry, *depressions, Surface::Ice);
        // Above the warmest dry bulb that keeps a wick frozen there is no line to print.
        if (std::any_of(ice.cells.begin(), ice.cells.end(),
                        [](const auto& cell) { return cell.humidity.has_value(); })) {
            table.iceRows.push_back(std::move(ice));
        }
    }
    return table;
}

} // namespace wickbook::psychrometry
