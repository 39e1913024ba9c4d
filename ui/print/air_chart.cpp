// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/air_chart.h"

#include "core/psychrometry/saturation.h"
#include "ui/text/number_words.h"
#include "ui/text/time_words.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QLineSeries>
#include <QPainter>

#include <algorithm>
#include <limits>

namespace wickbook::ui {

namespace {

constexpr double kMark = 3;
constexpr std::size_t kMostMarks = 2000;
constexpr int kCurves[] = {20, 40, 60, 80, 100};

struct AirText {
    Q_DECLARE_TR_FUNCTIONS(AirText)
};

/// hPa over liquid water; none beyond the formula's range.
std::optional<double> saturationAt(double celsius) {
    const auto pressure = psychrometry::saturationVapourPressure(units::Temperature::fromCelsius(celsius),
                                                                 psychrometry::Surface::Water);
    return pressure ? std::optional{pressure->hectopascals()} : std::nullopt;
}

} // namespace

AirChart::AirChart(ChartLook look, QLocale locale, units::TemperatureUnit unit)
    : FramedChart(std::move(look), std::move(locale))
    , unit_(unit)
    , points_(std::make_shared<ChartPoints>()) {}

void AirChart::setPoints(std::shared_ptr<const ChartPoints> points) {
    points_ = std::move(points);
    layOut();
}

void AirChart::setSpan(record::Instant from, record::Instant to) {
    from_ = from;
    to_ = to;
    layOut();
}

void AirChart::setCaret(const std::optional<record::Instant>& caret) {
    caret_ = caret;
    update();
}

QString AirChart::title() const {
    return AirText::tr("Vapour pressure over temperature, hPa");
}

QString AirChart::xName() const {
    return AirText::tr("dry bulb, %1").arg(unitWords(unit_));
}

double AirChart::celsiusOf(double value) const {
    return unit_ == units::TemperatureUnit::Fahrenheit ? (value - 32) / 1.8 : value;
}

QPointF AirChart::placeOf(const ChartPoint& point) const {
    return {xOf(celsiusAsShown(*point.dry, unit_)), yOf(*point.vapourPressure)};
}

template <typename Each>
void AirChart::eachPoint(Each each) const {
    const auto go = [&](const std::vector<ChartPoint>& points, std::size_t hour) {
        for (const ChartPoint& point : pointsWithin(points, from_, to_)) {
            if (point.dry && point.vapourPressure) {
                each(point, hour);
            }
        }
    };
    for (std::size_t hour = 0; hour < points_->hours.size(); ++hour) {
        for (const auto& run : points_->hours[hour].runs) {
            go(run, hour);
        }
        go(points_->hours[hour].aside, hour);
    }
}

void AirChart::arrange() {
    double low = std::numeric_limits<double>::max();
    double high = std::numeric_limits<double>::lowest();
    double most = 0;
    eachPoint([&](const ChartPoint& point, std::size_t) {
        low = std::min(low, celsiusAsShown(*point.dry, unit_));
        high = std::max(high, celsiusAsShown(*point.dry, unit_));
        most = std::max(most, *point.vapourPressure);
    });
    if (low > high) {
        low = celsiusAsShown(0, unit_);
        high = celsiusAsShown(20, unit_);
        most = 15;
    }
    const ValueScale across =
        valueScale(low - 1, high + 1, std::max(2, static_cast<int>(plot_.width() / 90)));
    xLow_ = across.low;
    xHigh_ = across.high;
    y_ = valueScale(0, most * 1.05, std::clamp(static_cast<int>(plot_.height() / 36), 2, 8));
    for (double value = across.low; value <= across.high + across.step * 1e-6; value += across.step) {
        words_.push_back({xOf(value), numberWords(locale_, value, across.decimals)});
    }
    curveNames_.clear();
    curveHeights_.clear();
    for (const int percent : kCurves) {
        addCurve(percent);
    }
}

void AirChart::addCurve(int percent) {
    QList<QPointF> curve;
    constexpr int kSteps = 60;
    for (int step = 0; step <= kSteps; ++step) {
        const double x = xLow_ + (xHigh_ - xLow_) * step / kSteps;
        const auto saturated = saturationAt(celsiusOf(x));
        if (!saturated) {
            continue;
        }
        const double pressure = *saturated * percent / 100;
        if (pressure > y_.high) {
            break;
        }
        curve << QPointF{x, pressure};
    }
    if (curve.size() < 2) {
        return;
    }
    QColor quiet = look_.tokens.soft;
    quiet.setAlphaF(percent == 100 ? 1.0F : 0.5F);
    const QPen pen(quiet, percent == 100 ? 1.5 : 1.0);
    addLine(curve, pen);
    curveNames_.push_back({xOf(curve.back().x()), percentWords(locale_, percent)});
    curveHeights_.push_back(yOf(curve.back().y()));
}

void AirChart::paintBelow(QPainter& painter) const {
    painter.setPen(QPen(look_.tokens.rule, 1));
    for (const PlacedWord& word : words_) {
        painter.drawLine(QPointF{word.x, plot_.bottom()}, QPointF{word.x, plot_.bottom() + 4});
    }
}

/// More than can be told apart: a dot each, where they lie thick they darken.
void AirChart::paintDots(QPainter& painter) const {
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (std::size_t wanted = 0; wanted < points_->hours.size(); ++wanted) {
        QPolygonF dots;
        eachPoint([&](const ChartPoint& point, std::size_t hour) {
            if (hour == wanted && point.mark == PointMark::Kept) {
                dots << placeOf(point);
            }
        });
        QColor colour = lineColour(look_.tokens, wanted);
        colour.setAlphaF(0.35F);
        painter.setPen(QPen(colour, 2));
        painter.drawPoints(dots);
    }
    painter.setRenderHint(QPainter::Antialiasing);
}

void AirChart::paintAbove(QPainter& painter) const {
    const QFontMetricsF metrics(look_.font);
    std::size_t count = 0;
    eachPoint([&](const ChartPoint&, std::size_t) { ++count; });
    if (count > kMostMarks) {
        paintDots(painter);
    }
    eachPoint([&](const ChartPoint& point, std::size_t hour) {
        if (count > kMostMarks && point.mark == PointMark::Kept) {
            return;
        }
        switch (point.mark) {
        case PointMark::Kept:
            drawKept(painter, shapeOf(hour), placeOf(point), kMark, lineColour(look_.tokens, hour));
            break;
        case PointMark::Doubtful:
            drawHollow(painter, shapeOf(hour), placeOf(point), kMark, look_.tokens.query, look_.tokens.sheet);
            break;
        case PointMark::Erroneous:
            drawCross(painter, placeOf(point), kMark, look_.tokens.wrong);
            break;
        }
    });
    if (caret_) {
        const ChartPoint* point = points_->at(*caret_);
        if (point != nullptr && point->dry && point->vapourPressure && *caret_ >= from_ && *caret_ <= to_) {
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(look_.tokens.accent, 2));
            painter.drawEllipse(placeOf(*point), kMark * 2.2, kMark * 2.2);
        }
    }
    painter.setFont(look_.font);
    for (std::size_t at = 0; at < curveNames_.size(); ++at) {
        const double width = metrics.horizontalAdvance(curveNames_[at].text);
        // At the curve's end, kept within the plot, on the sheet's colour so that it stays legible.
        const QPointF where{
            std::min(curveNames_[at].x - width - 4, plot_.right() - width - 2),
            std::max(curveHeights_[at] + metrics.ascent() / 2, plot_.top() + metrics.ascent())};
        painter.setPen(Qt::NoPen);
        painter.setBrush(look_.tokens.sheet);
        painter.drawRect(QRectF{where.x() - 2, where.y() - metrics.ascent(), width + 4, metrics.height()});
        painter.setPen(look_.tokens.soft);
        painter.drawText(where, curveNames_[at].text);
    }
}

std::vector<FramedChart::KeyEntry> AirChart::key() const {
    std::vector<KeyEntry> entries;
    for (std::size_t hour = 0; hour < points_->hours.size(); ++hour) {
        entries.push_back(
            {hourWords(points_->hours[hour].hour), 8, [this, hour](QPainter& painter, QPointF at) {
                 drawKept(painter, shapeOf(hour), at + QPointF{4, 0}, kMark, lineColour(look_.tokens, hour));
             }});
    }
    entries.push_back({AirText::tr("relative humidity"), 20, [this](QPainter& painter, QPointF at) {
                           painter.setPen(QPen(look_.tokens.soft, 1.5));
                           painter.drawLine(at, at + QPointF{20, 0});
                       }});
    return entries;
}

const ChartPoint* AirChart::pointNear(QPointF place, double reach) const {
    NearestPoint nearest(place, reach);
    eachPoint([&](const ChartPoint& point, std::size_t) { nearest.look(point, placeOf(point)); });
    return nearest.point();
}

} // namespace wickbook::ui
