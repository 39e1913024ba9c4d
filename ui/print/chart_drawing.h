// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/humidity_chart.h"

#include <QGraphicsItem>

/// The two items that a HumidityChart draws itself: the ground below the lines (rules, bands, upright marks)
/// and the marks above them (readings, axis words, key, caret). Children of the chart, which owns them.

namespace wickbook::ui {

class HumidityChart::Ground : public QGraphicsItem {
public:
    explicit Ground(HumidityChart& chart);
    [[nodiscard]] QRectF boundingRect() const override;
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;
    void changed() { prepareGeometryChange(); }

private:
    void paintRules(QPainter& painter) const;
    void paintAverage(QPainter& painter) const;
    void paintBands(QPainter& painter) const;
    void paintEvents(QPainter& painter) const;
    void paintDense(QPainter& painter) const;

    HumidityChart& chart_;
};

class HumidityChart::Marks : public QGraphicsItem {
public:
    explicit Marks(HumidityChart& chart);
    [[nodiscard]] QRectF boundingRect() const override;
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;
    void changed() { prepareGeometryChange(); }
    /// Draws (or only measures, without a painter) the key from x on; its width.
    double key(QPainter* painter, QPointF topLeft) const;

private:
    void paintWords(QPainter& painter) const;
    void paintPoints(QPainter& painter) const;
    void paintDenseMarks(QPainter& painter) const;
    void paintCaret(QPainter& painter) const;

    HumidityChart& chart_;
};

} // namespace wickbook::ui
