// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/chart_points.h"
#include "ui/print/framed_chart.h"

#include <memory>

/// The two bulbs over time as they hung: dry a filled disc, wet an open one below it, joined by an upright
/// as long as the depression. Where readings stand too close for that, each column of pixels shows the reach
/// of the dry and of the wet bulb.

namespace wickbook::ui {

class PairChart : public FramedChart {
    Q_OBJECT

public:
    /// The station must outlive the chart.
    PairChart(const record::StationRecord& station, ChartLook look, QLocale locale,
              units::TemperatureUnit unit);

    void setPoints(std::shared_ptr<const ChartPoints> points);
    void setSpan(record::Instant from, record::Instant to);
    void setCaret(const std::optional<record::Instant>& caret);
    [[nodiscard]] QString title() const override;
    [[nodiscard]] bool isDense() const { return dense_; }
    /// The point nearest to a place in chart coordinates; nullptr: none within reach (pixels).
    [[nodiscard]] const ChartPoint* pointNear(QPointF place, double reach) const;
    [[nodiscard]] record::Instant instantAt(double x) const;

protected:
    void arrange() override;
    void paintBelow(QPainter& painter) const override;
    void paintAbove(QPainter& painter) const override;
    [[nodiscard]] std::vector<KeyEntry> key() const override;

private:
    template <typename Each>
    void eachPair(Each each) const;
    [[nodiscard]] double shown(double celsius) const;
    [[nodiscard]] double placeAt(record::Instant instant) const;
    void paintReaches(QPainter& painter) const;

    const record::StationRecord& station_;
    units::TemperatureUnit unit_;
    std::shared_ptr<const ChartPoints> points_;
    record::Instant from_{}, to_{};
    std::optional<record::Instant> caret_;
    bool dense_ = false;
};

} // namespace wickbook::ui
