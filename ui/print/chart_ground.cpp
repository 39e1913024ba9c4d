// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/chart_drawing.h"
#include "ui/print/chart_frame.h"
#include "ui/print/dense_strokes.h"

#include <QPainter>
#include <QPainterPath>
#include <QPolygonF>

#include <algorithm>
#include <cmath>
#include <vector>

namespace wickbook::ui {

namespace {

constexpr double kBandAlpha = 0.13;
constexpr double kDenseShare = 0.6;  ///< of the line's colour in the strokes, the rest the sheet's
constexpr double kDenseColumn = 3;   ///< pixels that share one stroke
constexpr double kDenseShortest = 2; ///< of a stroke, pixels
constexpr double kExtrasApart = 12;
constexpr double kUprightsApart = 30; ///< closer than this, wick changes are a fence, not a mark

QColor faint(QColor colour, double alpha) {
    colour.setAlphaF(static_cast<float>(alpha));
    return colour;
}

QColor mixed(const QColor& colour, const QColor& ground, double share) {
    const auto part = [share](int of, int with) {
        return static_cast<int>(std::lround(share * of + (1 - share) * with));
    };
    return {part(colour.red(), ground.red()), part(colour.green(), ground.green()),
            part(colour.blue(), ground.blue())};
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
    drawValueRules(painter, chart_.look_, chart_.plot_, chart_.scale_);
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
            if (run.back().instant < chart_.from_ || run.front().instant > chart_.to_) {
                continue;
            }
            QPolygonF upper;
            QPolygonF lower;
            for (const ChartPoint& point : pointsWithin(run, chart_.from_, chart_.to_)) {
                const double x = chart_.xOf(point.instant);
                if (chart_.quantity_ == Quantity::Humidity && point.humidity && point.humidityU95) {
                    upper << QPointF{x, chart_.yOf(point.highestHumidity())};
                    lower << QPointF{x, chart_.yOf(point.lowestHumidity())};
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

std::span<const ChartEvent> HumidityChart::eventsInSight() const {
    const auto& events = points_->events;
    const auto first = std::lower_bound(
        events.begin(), events.end(), from_,
        [](const ChartEvent& event, record::Instant instant) { return event.instant < instant; });
    const auto last =
        std::upper_bound(first, events.end(), to_, [](record::Instant instant, const ChartEvent& event) {
            return instant < event.instant;
        });
    return {first, last};
}

bool HumidityChart::showsWickChanges() const {
    const auto events = eventsInSight();
    const auto count = std::count_if(events.begin(), events.end(), [](const ChartEvent& event) {
        return event.kind == ChartEvent::Kind::WickChanged;
    });
    return count > 0 && plot_.width() / static_cast<double>(count) >= kUprightsApart;
}

/// Over years the readings outside the observing hours would bury those the chart is about.
bool HumidityChart::showsExtras() const {
    const auto extras = pointsWithin(points_->extras, from_, to_);
    return !dense_ || plot_.width() / static_cast<double>(extras.size() + 1) >= kExtrasApart;
}

void HumidityChart::Ground::paintEvents(QPainter& painter) const {
    const bool wicks = chart_.showsWickChanges();
    for (const ChartEvent& event : chart_.eventsInSight()) {
        if (event.kind == ChartEvent::Kind::WickChanged && !wicks) {
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
    // Columns are counted from the plot's left edge, as many as fit it, anew with every span and size.
    const DenseColumns columns(chart_.from_.time_since_epoch().count(), chart_.to_.time_since_epoch().count(),
                               static_cast<std::size_t>(std::ceil(chart_.plot_.width() / kDenseColumn)));
    std::vector<DenseReach> reach;
    for (std::size_t rank = 0; rank < chart_.hoursInSight_.size(); ++rank) {
        const std::size_t i = chart_.hoursInSight_[rank];
        gatherReach(chart_.columns_[i].seconds, chart_.columns_[i].values, columns, reach);
        // The first hour wide and pale, the next narrower over it, so that both are seen, in grey too.
        // Opaque: blending every stroke costs ten times the rest of the frame.
        const double width = std::max(1.0, kDenseColumn - 2.0 * static_cast<double>(rank));
        painter.setPen(
            QPen(mixed(lineColour(chart_.look_.tokens, i), chart_.look_.tokens.sheet, kDenseShare), width));
        QList<QLineF> strokes;
        for (std::size_t place = 0; place < reach.size(); ++place) {
            if (reach[place].isEmpty()) {
                continue;
            }
            const double x = chart_.plot_.left() + (static_cast<double>(place) + 0.5) * kDenseColumn;
            const double top = chart_.yOf(static_cast<double>(reach[place].high));
            const double bottom = chart_.yOf(static_cast<double>(reach[place].low));
            strokes << QLineF{x, top, x, std::max(bottom, top + kDenseShortest)};
        }
        painter.drawLines(strokes);
    }
}

} // namespace wickbook::ui
