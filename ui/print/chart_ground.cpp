// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/chart_drawing.h"

#include <QPainter>
#include <QPainterPath>
#include <QPolygonF>

#include <algorithm>
#include <cmath>
#include <map>

namespace wickbook::ui {

namespace {

constexpr double kBandAlpha = 0.13;
constexpr double kDenseAlpha = 0.6;
constexpr double kDenseColumn = 3;    ///< pixels that share one stroke
constexpr double kDenseShortest = 2;  ///< of a stroke, pixels
constexpr double kUprightsApart = 30; ///< closer than this, wick changes are a fence, not a mark

QColor faint(QColor colour, double alpha) {
    colour.setAlphaF(static_cast<float>(alpha));
    return colour;
}

} // namespace

HumidityChart::Ground::Ground(HumidityChart& chart) : QGraphicsItem(&chart), chart_(chart) {}

QRectF HumidityChart::Ground::boundingRect() const {
    return QRectF{QPointF{0, 0}, chart_.size()};
}

void HumidityChart::Ground::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    if (chart_.to_ <= chart_.from_) {
        return;
    }
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    paintAverage(*painter);
    paintRules(*painter);
    paintEvents(*painter);
    if (chart_.dense_) {
        paintDense(*painter);
    } else {
        paintBands(*painter);
    }
    painter->restore();
}

void HumidityChart::Ground::paintRules(QPainter& painter) const {
    painter.setPen(QPen(chart_.look_.tokens.rule, 1));
    const ValueScale& scale = chart_.scale_;
    for (double value = scale.low; value <= scale.high + scale.step * 1e-6; value += scale.step) {
        const double y = chart_.yOf(value);
        painter.drawLine(QPointF{chart_.plot_.left(), y}, QPointF{chart_.plot_.right(), y});
    }
    for (const TimeTick& tick : chart_.ticks_) {
        const double x = chart_.xOf(tick.instant);
        painter.drawLine(QPointF{x, chart_.plot_.bottom()}, QPointF{x, chart_.plot_.bottom() + 4});
    }
}

void HumidityChart::Ground::paintAverage(QPainter& painter) const {
    painter.setPen(Qt::NoPen);
    painter.setBrush(faint(chart_.look_.tokens.accent, 0.14));
    for (const AverageSpan& span : chart_.average_.spans) {
        const double left = std::max(chart_.plot_.left(), chart_.xOf(span.from));
        const double right = std::min(chart_.plot_.right(), chart_.xOf(span.to));
        if (right > left) {
            painter.drawRect(QRectF{QPointF{left, chart_.yOf(chart_.shown(span.high))},
                                    QPointF{right, chart_.yOf(chart_.shown(span.low))}});
        }
    }
}

void HumidityChart::Ground::paintBands(QPainter& painter) const {
    painter.setPen(Qt::NoPen);
    for (std::size_t i = 0; i < chart_.points_->hours.size(); ++i) {
        painter.setBrush(faint(lineColour(chart_.look_.tokens, i), kBandAlpha));
        for (const auto& run : chart_.points_->hours[i].runs) {
            QPolygonF upper;
            QPolygonF lower;
            for (const ChartPoint& point : run) {
                if (point.instant < chart_.from_ || point.instant > chart_.to_) {
                    continue;
                }
                const double x = chart_.xOf(point.instant);
                if (chart_.quantity_ == Quantity::Humidity && point.lowestHumidity && point.highestHumidity) {
                    upper << QPointF{x, chart_.yOf(*point.highestHumidity)};
                    lower << QPointF{x, chart_.yOf(*point.lowestHumidity)};
                } else if (chart_.quantity_ == Quantity::DewPoint && point.dewPoint && point.dewPointU95) {
                    upper << QPointF{x, chart_.yOf(chart_.shown(*point.dewPoint + *point.dewPointU95))};
                    lower << QPointF{x, chart_.yOf(chart_.shown(*point.dewPoint - *point.dewPointU95))};
                }
            }
            if (upper.size() < 2) {
                continue;
            }
            std::reverse(lower.begin(), lower.end());
            painter.drawPolygon(upper + lower);
        }
    }
}

bool HumidityChart::showsWickChanges() const {
    const auto count =
        std::count_if(points_->events.begin(), points_->events.end(), [this](const ChartEvent& event) {
            return event.kind == ChartEvent::Kind::WickChanged && event.instant >= from_ &&
                   event.instant <= to_;
        });
    return count > 0 && plot_.width() / static_cast<double>(count) >= kUprightsApart;
}

void HumidityChart::Ground::paintEvents(QPainter& painter) const {
    for (const ChartEvent& event : chart_.points_->events) {
        if (event.instant < chart_.from_ || event.instant > chart_.to_ ||
            (event.kind == ChartEvent::Kind::WickChanged && !chart_.showsWickChanges())) {
            continue;
        }
        const double x = chart_.xOf(event.instant);
        QPen pen(chart_.look_.tokens.soft, 1);
        if (event.kind == ChartEvent::Kind::WickChanged) {
            pen.setDashPattern({2, 3});
        } else if (event.kind == ChartEvent::Kind::Diary) {
            pen.setDashPattern({6, 3});
        }
        painter.setPen(pen);
        painter.drawLine(QPointF{x, chart_.plot_.top()}, QPointF{x, chart_.plot_.bottom()});
    }
}

/// One upright stroke for each column of pixels, from the lowest to the highest of what falls into it. A
/// column into which nothing falls stays empty, so gaps stay gaps.
void HumidityChart::Ground::paintDense(QPainter& painter) const {
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (std::size_t i = 0; i < chart_.points_->hours.size(); ++i) {
        std::map<int, std::pair<double, double>> columns;
        for (const auto& run : chart_.points_->hours[i].runs) {
            for (const ChartPoint& point : run) {
                const auto value = point.value(chart_.quantity_);
                if (!value || point.instant < chart_.from_ || point.instant > chart_.to_) {
                    continue;
                }
                const int column = static_cast<int>(std::floor(chart_.xOf(point.instant) / kDenseColumn));
                const double y = chart_.yOf(chart_.shown(*value));
                const auto [place, isNew] = columns.try_emplace(column, y, y);
                if (!isNew) {
                    place->second.first = std::min(place->second.first, y);
                    place->second.second = std::max(place->second.second, y);
                }
            }
        }
        painter.setPen(QPen(faint(lineColour(chart_.look_.tokens, i), kDenseAlpha), kDenseColumn - 1));
        for (const auto& [column, reach] : columns) {
            const double x = (column + 0.5) * kDenseColumn;
            painter.drawLine(QPointF{x, reach.first},
                             QPointF{x, std::max(reach.second, reach.first + kDenseShortest)});
        }
    }
}

} // namespace wickbook::ui
