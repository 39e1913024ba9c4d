// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/chart_points.h"
#include "ui/print/framed_chart.h"

#include <memory>

/// The month's air at once: the vapour pressure of every reading over its temperature, among curves of equal
/// relative humidity (over liquid water, as everywhere). Readings along a curve differ in warmth alone, one
/// above another in moisture.

namespace wickbook::ui {

class AirChart : public FramedChart {
    Q_OBJECT

public:
    AirChart(ChartLook look, QLocale locale, units::TemperatureUnit unit);

    void setPoints(std::shared_ptr<const ChartPoints> points);
    void setSpan(record::Instant from, record::Instant to);
    void setCaret(const std::optional<record::Instant>& caret);
    [[nodiscard]] QString title() const override;
    /// The point nearest to a place in chart coordinates; nullptr: none within reach (pixels).
    [[nodiscard]] const ChartPoint* pointNear(QPointF place, double reach) const;

protected:
    void arrange() override;
    void paintBelow(QPainter& painter) const override;
    void paintAbove(QPainter& painter) const override;
    [[nodiscard]] std::vector<KeyEntry> key() const override;
    [[nodiscard]] QString xName() const override;

private:
    template <typename Each>
    void eachPoint(Each each) const;
    [[nodiscard]] double celsiusOf(double shownTemperature) const;
    [[nodiscard]] QPointF placeOf(const ChartPoint& point) const;
    void addCurve(int percent);
    void paintDots(QPainter& painter) const;

    units::TemperatureUnit unit_;
    std::shared_ptr<const ChartPoints> points_;
    record::Instant from_{}, to_{};
    std::optional<record::Instant> caret_;
    std::vector<PlacedWord> curveNames_; ///< x in pixels
    std::vector<double> curveHeights_;   ///< their y
};

} // namespace wickbook::ui
