// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/chart_frame.h"

#include <QChart>
#include <QLocale>

#include <functional>
#include <vector>

class QLineSeries;
class QValueAxis;

/// What the charts beside the two over time share: a title, a key, numbers at the left and words below, and
/// a plot in which a subclass has its lines (Qt Charts' series) and draws its marks. The same drawing goes to
/// the screen, PDF, PNG and SVG.

namespace wickbook::ui {

class FramedChart : public QChart {
    Q_OBJECT

public:
    ~FramedChart() override;
    void setLook(const ChartLook& look);
    [[nodiscard]] const ChartLook& look() const { return look_; }
    /// Lays everything out for its size now, without waiting for the event loop: for pages.
    void settle();
    /// What the chart shows, as its heading has it.
    [[nodiscard]] virtual QString title() const = 0;

protected:
    FramedChart(ChartLook look, QLocale locale);
    void resizeEvent(QGraphicsSceneResizeEvent* event) override;

    struct KeyEntry {
        QString text;
        double width = 8;                             ///< of the sample
        std::function<void(QPainter&, QPointF)> draw; ///< at the sample's left end, at half its height
    };

    /// The plot's place is known: set x_ and y_, words_ and lines.
    virtual void arrange() = 0;
    virtual void paintBelow(QPainter&) const {}
    virtual void paintAbove(QPainter& painter) const = 0;
    [[nodiscard]] virtual std::vector<KeyEntry> key() const { return {}; }
    /// What stands below the right end of the x axis; empty where the words say it.
    [[nodiscard]] virtual QString xName() const { return {}; }

    void layOut();
    [[nodiscard]] double xOf(double x) const;
    [[nodiscard]] double yOf(double y) const { return placeOnScale(plot_, y_, y); }
    /// A line in the plot's values, above the ground and below the marks.
    QLineSeries* addLine(const QList<QPointF>& vertices, const QPen& pen);

    ChartLook look_;
    QLocale locale_;
    QRectF plot_;
    ValueScale y_;
    double xLow_ = 0, xHigh_ = 1;
    std::vector<PlacedWord> words_;

private:
    class Below;
    class Above;
    double drawKey(QPainter* painter, QPointF topLeft) const;
    void drawAround(QPainter& painter) const;

    QValueAxis* xAxis_ = nullptr;
    QValueAxis* yAxis_ = nullptr;
    Below* below_ = nullptr;
    Above* above_ = nullptr;
    bool keyBelow_ = false;
};

} // namespace wickbook::ui
