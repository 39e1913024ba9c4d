// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/chart_look.h"
#include "ui/print/chart_points.h"
#include "ui/print/chart_time_axis.h"

#include <QChart>
#include <QLocale>

#include <memory>
#include <optional>
#include <vector>

class QLineSeries;
class QValueAxis;

/// Relative humidity or dew point over time, one line per observing hour. The lines are Qt Charts' series,
/// one for each unbroken run; marks, bands, axis words and the key are drawn by items of ours, so that shape
/// and dash tell the hours apart without colour and the same drawing goes to the screen, PDF, PNG and SVG.
/// Where points stand closer than they can be told apart, each column of pixels shows its lowest to highest.
/// The points are shared, never copied; the station must outlive the chart.

namespace wickbook::ui {

/// The station's own months of other years, as a quiet band.
struct AverageSpan {
    record::Instant from{}, to{};
    double low = 0, high = 0; ///< quartiles, % or °C
};
struct ChartAverage {
    int years = 0; ///< the fewest behind any span
    std::vector<AverageSpan> spans;
};

class HumidityChart : public QChart {
    Q_OBJECT

public:
    HumidityChart(Quantity quantity, const record::StationRecord& station, ChartLook look, QLocale locale,
                  units::TemperatureUnit unit);
    ~HumidityChart() override;

    void setPoints(std::shared_ptr<const ChartPoints> points);
    void setSpan(record::Instant from, record::Instant to);
    void setAverage(const ChartAverage& average);
    void setLook(const ChartLook& look);
    /// The reading under the caret; none to take it away.
    void setCaret(const std::optional<record::Instant>& caret);

    [[nodiscard]] Quantity quantity() const { return quantity_; }
    [[nodiscard]] record::Instant from() const { return from_; }
    [[nodiscard]] record::Instant to() const { return to_; }
    [[nodiscard]] const QList<QLineSeries*>& lines() const { return lines_; }
    [[nodiscard]] bool isDense() const { return dense_; }
    /// The kept or marked point nearest to a place in chart coordinates; nullptr: none within reach (pixels).
    [[nodiscard]] const ChartPoint* pointNear(QPointF place, double reach) const;
    [[nodiscard]] QPointF placeOf(const ChartPoint& point) const;
    [[nodiscard]] record::Instant instantAt(double x) const;
    /// Lays everything out for its size now, without waiting for the event loop: for pages.
    void settle();

protected:
    void resizeEvent(QGraphicsSceneResizeEvent* event) override;

private:
    class Ground;
    class Marks;
    friend class Ground;
    friend class Marks;

    void layOut();
    void drawLines();
    void forgetLines();
    void gatherColumns();
    void scaleValues();
    [[nodiscard]] double shown(double celsiusOrPercent) const;
    [[nodiscard]] double xOf(record::Instant instant) const;
    [[nodiscard]] double yOf(double value) const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] std::span<const ChartEvent> eventsInSight() const;
    [[nodiscard]] bool showsWickChanges() const;
    [[nodiscard]] bool showsExtras() const;

    Quantity quantity_;
    const record::StationRecord& station_;
    ChartLook look_;
    QLocale locale_;
    units::TemperatureUnit unit_;
    std::shared_ptr<const ChartPoints> points_;
    ChartAverage average_;
    std::optional<record::Instant> caret_;
    record::Instant from_{}, to_{};
    QRectF plot_;
    ValueScale scale_;
    std::vector<TimeTick> ticks_;
    bool dense_ = false;
    bool keyBelow_ = false; ///< no room for the key beside the title
    QValueAxis* timeAxis_ = nullptr;
    QValueAxis* valueAxis_ = nullptr;
    QList<QLineSeries*> lines_;
    record::Instant linesFrom_{}, linesTo_{}; ///< lines_ hold every run that touches this
    /// The kept points of each hour as bare numbers, in time order: what every frame of a long span goes
    /// over.
    struct Column {
        std::vector<std::int64_t> seconds; ///< UTC
        std::vector<float> values;         ///< as shown
    };
    std::vector<Column> columns_;
    std::vector<std::size_t> hoursInSight_; ///< those with a point in the span
    Ground* ground_ = nullptr;
    Marks* marks_ = nullptr;
};

} // namespace wickbook::ui
