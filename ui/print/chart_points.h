// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/check_series.h"
#include "core/record/observing_hours.h"
#include "ui/print/chart_number.h"

#include <algorithm>
#include <optional>
#include <span>
#include <vector>

/// What a chart of humidity over time is made of, before any drawing: one line per observing hour, cut into
/// runs. A run ends where an expected hour has no reading that counts, and where the station moved or the
/// exposure changed: a gap is left open, never joined. The same for the screen, the paper and the newsletter.
/// Values are copied out, so the points outlive the readings.

namespace wickbook::ui {

enum class Quantity { Humidity, DewPoint };

/// How a reading stands on the chart.
enum class PointMark {
    Kept,     ///< counts: on the line
    Doubtful, ///< left out by the checks or by judgement: hollow, off the line
    Erroneous ///< judged or marked erroneous: a cross, off the line
};

struct ChartPoint {
    record::ObservingHour hour; ///< for an extra reading its filed date and clock time
    record::Instant instant{};
    PointMark mark = PointMark::Kept;
    ChartNumber humidity;       ///< %
    ChartNumber humidityU95;    ///< half-width, k = 2
    ChartNumber dewPoint;       ///< °C
    ChartNumber dewPointU95;    ///< K
    ChartNumber dry, wet;       ///< °C, corrected
    ChartNumber vapourPressure; ///< hPa

    /// The ends of the band, within 0…100 %. Pre: humidity and humidityU95 are there.
    [[nodiscard]] double lowestHumidity() const { return std::clamp(*humidity - *humidityU95, 0.0, 100.0); }
    [[nodiscard]] double highestHumidity() const { return std::clamp(*humidity + *humidityU95, 0.0, 100.0); }
    [[nodiscard]] ChartNumber value(Quantity quantity) const {
        return quantity == Quantity::Humidity ? humidity : dewPoint;
    }
};

/// The readings of one observing hour.
struct HourLine {
    record::HourOfDay hour{};
    std::vector<std::vector<ChartPoint>> runs; ///< kept points, time order; never empty runs
    std::vector<ChartPoint> aside;             ///< doubtful and erroneous ones, time order
};

/// A moment that the eye should know of.
struct ChartEvent {
    enum class Kind { WickChanged, InstrumentsChanged, StationChanged, Diary };
    record::Instant instant{};
    Kind kind = Kind::WickChanged;
};

struct ChartPoints {
    record::StationDate from;
    record::StationDate to;
    std::vector<HourLine> hours;    ///< by hour of day
    std::vector<ChartPoint> extras; ///< outside the observing hours
    std::vector<ChartEvent> events;

    [[nodiscard]] bool empty() const;
    /// The point read at this moment; nullptr: none.
    [[nodiscard]] const ChartPoint* at(record::Instant instant) const;
    /// Every point with a humidity, in time order.
    [[nodiscard]] std::vector<const ChartPoint*> inTimeOrder() const;
};

/// Those of points in time order that lie in [from, to].
std::span<const ChartPoint> pointsWithin(const std::vector<ChartPoint>& points, record::Instant from,
                                         record::Instant to);

/// Calls with every point within [from, to], on a line, beside it or extra.
template <typename Each>
void forEachPoint(const ChartPoints& points, record::Instant from, record::Instant to, Each each) {
    const auto go = [&](const std::vector<ChartPoint>& some) {
        for (const ChartPoint& point : pointsWithin(some, from, to)) {
            each(point);
        }
    };
    for (const HourLine& line : points.hours) {
        for (const auto& run : line.runs) {
            if (run.back().instant >= from && run.front().instant <= to) {
                go(run);
            }
        }
        go(line.aside);
    }
    go(points.extras);
}

/// readings: filed under [from, to], derived and judged, in time order.
ChartPoints chartPoints(std::span<const checks::CheckedReading> readings,
                        const record::StationRecord& station, record::StationDate from,
                        record::StationDate to);

} // namespace wickbook::ui
