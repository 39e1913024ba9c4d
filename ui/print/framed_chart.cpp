// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/framed_chart.h"

#include <QFontMetricsF>
#include <QGraphicsItem>
#include <QGraphicsLayout>
#include <QLineSeries>
#include <QPainter>
#include <QValueAxis>

#include <cmath>

namespace wickbook::ui {

class FramedChart::Below : public QGraphicsItem {
public:
    explicit Below(FramedChart& chart) : QGraphicsItem(&chart), chart_(chart) {}
    [[nodiscard]] QRectF boundingRect() const override { return {QPointF{0, 0}, chart_.size()}; }
    void changed() { prepareGeometryChange(); }
    void paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) override {
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        drawValueRules(*painter, chart_.look_, chart_.plot_, chart_.y_);
        chart_.paintBelow(*painter);
        painter->restore();
    }

private:
    FramedChart& chart_;
};

class FramedChart::Above : public QGraphicsItem {
public:
    explicit Above(FramedChart& chart) : QGraphicsItem(&chart), chart_(chart) {}
    [[nodiscard]] QRectF boundingRect() const override { return {QPointF{0, 0}, chart_.size()}; }
    void changed() { prepareGeometryChange(); }
    void paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) override {
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        painter->setFont(chart_.look_.font);
        painter->save();
        painter->setClipRect(chart_.plot_.adjusted(-6, -6, 6, 6));
        chart_.paintAbove(*painter);
        painter->restore();
        chart_.drawAround(*painter);
        painter->restore();
    }

private:
    FramedChart& chart_;
};

FramedChart::FramedChart(ChartLook look, QLocale locale)
    : look_(std::move(look))
    , locale_(std::move(locale))
    , xAxis_(new QValueAxis(this))
    , yAxis_(new QValueAxis(this)) {
    layBare(*this, *xAxis_, *yAxis_);
    below_ = new Below(*this);
    above_ = new Above(*this);
    below_->setZValue(-0.5);
    above_->setZValue(1000);
}

FramedChart::~FramedChart() = default;

void FramedChart::setLook(const ChartLook& look) {
    look_ = look;
    layOut();
}

void FramedChart::settle() {
    layOut();
    if (layout() != nullptr) {
        layout()->activate();
    }
}

void FramedChart::resizeEvent(QGraphicsSceneResizeEvent* event) {
    QChart::resizeEvent(event);
    layOut();
}

double FramedChart::xOf(double x) const {
    return plot_.left() + plot_.width() * (x - xLow_) / (xHigh_ - xLow_);
}

QLineSeries* FramedChart::addLine(const QList<QPointF>& vertices, const QPen& pen) {
    auto* series = new QLineSeries;
    series->setPen(pen);
    series->append(vertices);
    addSeries(series);
    series->attachAxis(xAxis_);
    series->attachAxis(yAxis_);
    return series;
}

void FramedChart::layOut() {
    if (above_ == nullptr || size().isEmpty()) {
        return;
    }
    below_->changed();
    above_->changed();
    const QFontMetricsF metrics(look_.font);
    const double line = std::ceil(metrics.height());
    const double left = std::ceil(metrics.horizontalAdvance(QStringLiteral("−100"))) + 8;
    removeAllSeries(); // deletes them
    // The key is measured before the plot has its place: it does not depend on it.
    keyBelow_ = left + metrics.horizontalAdvance(title()) * 1.12 + 24 + drawKey(nullptr, {}) > size().width();
    const double top = line + 8 + (keyBelow_ ? line + 4 : 0);
    const double bottom = line + 8 + (xName().isEmpty() ? 0 : line);
    const double right = std::ceil(metrics.averageCharWidth() * 3);
    plot_ = QRectF{left, top, std::max(10.0, size().width() - left - right),
                   std::max(10.0, size().height() - top - bottom)};
    setPlotArea(plot_);
    words_.clear();
    arrange();
    xAxis_->setRange(xLow_, xHigh_);
    yAxis_->setRange(y_.low, y_.high);
    update();
}

double FramedChart::drawKey(QPainter* painter, QPointF topLeft) const {
    const QFontMetricsF metrics(look_.font);
    double x = topLeft.x();
    for (const KeyEntry& entry : key()) {
        if (painter != nullptr) {
            entry.draw(*painter, QPointF{x, topLeft.y() + metrics.height() / 2});
            painter->setPen(look_.tokens.soft);
            painter->drawText(QPointF{x + entry.width + 5, topLeft.y() + metrics.ascent()}, entry.text);
        }
        x += entry.width + 5 + metrics.horizontalAdvance(entry.text) + 16;
    }
    return std::max(0.0, x - topLeft.x() - 16);
}

void FramedChart::drawAround(QPainter& painter) const {
    const QFontMetricsF metrics(look_.font);
    QFont bold = look_.font;
    bold.setBold(true);
    painter.setFont(bold);
    painter.setPen(look_.tokens.ink);
    painter.drawText(QPointF{plot_.left(), 2 + metrics.ascent()}, title());
    painter.setFont(look_.font);
    drawKey(&painter, keyBelow_ ? QPointF{plot_.left(), 2 + metrics.height() + 4}
                                : QPointF{plot_.right() - drawKey(nullptr, {}), 2});
    drawValueWords(painter, look_, locale_, plot_, y_);
    drawWordsBelow(painter, look_, plot_, size().width(), words_);
    if (!xName().isEmpty()) {
        painter.setPen(look_.tokens.soft);
        painter.drawText(QPointF{plot_.right() - metrics.horizontalAdvance(xName()),
                                 plot_.bottom() + 6 + metrics.height() + metrics.ascent()},
                         xName());
    }
}

} // namespace wickbook::ui
