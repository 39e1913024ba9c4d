// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/hut_table.h"

#include "core/psychrometry/standard_atmosphere.h"
#include "core/record/derived_reading.h"

namespace wickbook::report {

psychrometry::HumidityTableRequest hutTable(const record::StationPeriod& period, units::TemperatureUnit unit,
                                            double step) {
    psychrometry::HumidityTableRequest request;
    request.coefficient = record::coefficientRule(period);
    if (period.meanPressure) {
        request.pressure = units::Pressure::fromHectopascals(*period.meanPressure);
    } else if (const auto standard = psychrometry::standardPressure(period.elevation)) {
        request.pressure = *standard;
    }
    request.unit = unit;
    if (unit == units::TemperatureUnit::Fahrenheit) {
        request.lowestDry = psychrometry::kTableLowestFahrenheit;
        request.highestDry = psychrometry::kTableHighestFahrenheit;
        request.highestDepression = psychrometry::kTableDepressionFahrenheit;
    }
    request.depressionStep = step;
    return request;
}

} // namespace wickbook::report
