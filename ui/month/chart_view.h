// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/chart_points.h"

#include <QChartView>

#include <functional>
#include <optional>

/// One chart on the screen that can be moved with the hand: the wheel zooms at the pointer, dragging moves,
/// a click asks for the reading under it, and resting on a reading tells it. Keys are the panel's.

namespace wickbook::ui {

class ChartHandView : public QChartView {
    Q_OBJECT

public:
    /// What the hand asks of a chart, in its coordinates.
    struct Hands {
        std::function<const ChartPoint*(QPointF place, double reach)> pointNear;
        /// None where the chart has no time axis: it can't be zoomed or moved.
        std::function<record::Instant(double x)> instantAt;
    };
    /// The view owns the chart.
    ChartHandView(QChart* chart, Hands hands, QWidget* parent = nullptr);

signals:
    /// Zoomed about a moment; above 1 shows less.
    void zoomAsked(wickbook::record::Instant about, double factor);
    void moveAsked(std::chrono::seconds by);
    /// The pointer rests on a reading, or no longer on any.
    void pointHovered(const std::optional<wickbook::record::Instant>& instant);
    void pointChosen(wickbook::record::Instant instant);
    void pointOpened(wickbook::record::Instant instant);

protected:
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    void grabMoved(QMouseEvent* event);

    Hands hands_;
    std::optional<record::Instant> hovered_;
    std::optional<QPoint> grabbed_;
    bool moved_ = false;
};

} // namespace wickbook::ui
