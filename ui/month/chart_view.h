// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/humidity_chart.h"

#include <QChartView>

/// One chart on the screen that can be moved with the hand: the wheel zooms at the pointer, dragging moves,
/// a click asks for the reading under it. Keys are the panel's, which holds two of these over the same span.

namespace wickbook::ui {

class HumidityChartView : public QChartView {
    Q_OBJECT

public:
    explicit HumidityChartView(HumidityChart* chart, QWidget* parent = nullptr);
    [[nodiscard]] HumidityChart& humidityChart() const { return *chart_; }

signals:
    /// Zoomed about a moment; above 1 shows less.
    void zoomAsked(wickbook::record::Instant about, double factor);
    void moveAsked(std::chrono::seconds by);
    void pointChosen(wickbook::record::Instant instant);
    void pointOpened(wickbook::record::Instant instant);

protected:
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;

private:
    HumidityChart* chart_;
    std::optional<QPoint> grabbed_;
    bool moved_ = false;
};

} // namespace wickbook::ui
