// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/humidity_chart.h"

#include "ui/print/chart_drawing.h"
#include "ui/print/chart_frame.h"
#include "ui/text/number_words.h"
#include "ui/text/time_words.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QGraphicsLayout>
#include <QLineSeries>
#include <QValueAxis>

#include <algorithm>
#include <cmath>
#include <limits>

namespace wickbook::ui {

namespace {

/// Closer than this, pixels, two readings of one hour can't be told apart.
constexpr double kDensePixels = 1.6;

double seconds(record::Instant instant) {
    return static_cast<double>(instant.time_since_epoch().count());
}

/// Places of what lies in [from, to]: first and one past the last.
std::pair<std::size_t, std::size_t> inSight(const std::vector<std::int64_t>& times, record::Instant from,
                                            record::Instant to) {
    const auto first = std::lower_bound(times.begin(), times.end(), from.time_since_epoch().count());
    const auto last = std::upper_bound(first, times.end(), to.time_since_epoch().count());
    return {static_cast<std::size_t>(first - times.begin()), static_cast<std::size_t>(last - times.begin())};
}

} // namespace

HumidityChart::HumidityChart(Quantity quantity, const record::StationRecord& station, ChartLook look,
                             QLocale locale, units::TemperatureUnit unit)
    : quantity_(quantity)
    , station_(station)
    , look_(std::move(look))
    , locale_(std::move(locale))
    , unit_(unit)
    , points_(std::make_shared<ChartPoints>())
    , timeAxis_(new QValueAxis(this))
    , valueAxis_(new QValueAxis(this)) {
    layBare(*this, *timeAxis_, *valueAxis_); // words and rules are the ground's and the marks'
    ground_ = new Ground(*this);
    marks_ = new Marks(*this);
    ground_->setZValue(-0.5);
    marks_->setZValue(1000);
}

HumidityChart::~HumidityChart() = default;

double HumidityChart::shown(double value) const {
    return quantity_ == Quantity::DewPoint ? celsiusAsShown(value, unit_) : value;
}

double HumidityChart::xOf(record::Instant instant) const {
    const double span = std::max(1.0, seconds(to_) - seconds(from_));
    return plot_.left() + plot_.width() * (seconds(instant) - seconds(from_)) / span;
}

double HumidityChart::yOf(double value) const {
    return plot_.bottom() - plot_.height() * (value - scale_.low) / (scale_.high - scale_.low);
}

QPointF HumidityChart::placeOf(const ChartPoint& point) const {
    return {xOf(point.instant), yOf(shown(point.value(quantity_).value_or(0)))};
}

record::Instant HumidityChart::instantAt(double x) const {
    const double share = plot_.width() > 0 ? (x - plot_.left()) / plot_.width() : 0;
    return from_ + std::chrono::seconds{std::llround(share * (seconds(to_) - seconds(from_)))};
}

QString HumidityChart::title() const {
    return quantity_ == Quantity::Humidity
               ? QCoreApplication::translate("charts", "Relative humidity, %")
               : QCoreApplication::translate("charts", "Dew point, %1").arg(unitWords(unit_));
}

void HumidityChart::gatherColumns() {
    columns_.assign(points_->hours.size(), {});
    for (std::size_t i = 0; i < points_->hours.size(); ++i) {
        Column& column = columns_[i];
        for (const auto& run : points_->hours[i].runs) {
            for (const ChartPoint& point : run) {
                if (const auto value = point.value(quantity_)) {
                    column.seconds.push_back(point.instant.time_since_epoch().count());
                    column.values.push_back(static_cast<float>(shown(*value)));
                }
            }
        }
    }
}

void HumidityChart::setPoints(std::shared_ptr<const ChartPoints> points) {
    points_ = std::move(points);
    gatherColumns();
    forgetLines();
    layOut();
}

void HumidityChart::setSpan(record::Instant from, record::Instant to) {
    from_ = from;
    to_ = std::max(to, from + std::chrono::hours{1});
    layOut();
}

void HumidityChart::setAverage(const ChartAverage& average) {
    average_ = average;
    layOut();
}

void HumidityChart::setLook(const ChartLook& look) {
    look_ = look;
    forgetLines();
    layOut();
}

void HumidityChart::setCaret(const std::optional<record::Instant>& caret) {
    caret_ = caret;
    marks_->update();
}

const ChartPoint* HumidityChart::pointNear(QPointF place, double reach) const {
    NearestPoint nearest(place, reach);
    forEachPoint(*points_, from_, to_, [&](const ChartPoint& point) {
        if (point.value(quantity_)) {
            nearest.look(point, placeOf(point));
        }
    });
    return nearest.point();
}

void HumidityChart::resizeEvent(QGraphicsSceneResizeEvent* event) {
    QChart::resizeEvent(event);
    layOut();
}

void HumidityChart::settle() {
    layOut();
    if (layout() != nullptr) {
        layout()->activate();
    }
}

void HumidityChart::scaleValues() {
    if (quantity_ == Quantity::Humidity) {
        scale_ = {0, 100, plot_.height() < 110 ? 50.0 : 20.0, 0};
        return;
    }
    double low = std::numeric_limits<double>::max();
    double high = std::numeric_limits<double>::lowest();
    if (dense_) {
        for (const Column& column : columns_) {
            const auto [first, last] = inSight(column.seconds, from_, to_);
            for (std::size_t k = first; k < last; ++k) {
                low = std::min(low, static_cast<double>(column.values[k]));
                high = std::max(high, static_cast<double>(column.values[k]));
            }
        }
    }
    const auto widen = [&](const ChartPoint& point) {
        if (point.dewPoint) {
            const double band =
                point.mark == PointMark::Kept && !dense_ ? point.dewPointU95.value_or(0) : 0.0;
            low = std::min(low, shown(*point.dewPoint - band));
            high = std::max(high, shown(*point.dewPoint + band));
        }
    };
    if (!dense_) {
        forEachPoint(*points_, from_, to_, widen);
    } else {
        for (const HourLine& line : points_->hours) {
            for (const ChartPoint& point : pointsWithin(line.aside, from_, to_)) {
                widen(point);
            }
        }
    }
    for (const AverageSpan& span : average_.spans) {
        if (span.to >= from_ && span.from <= to_) {
            low = std::min(low, shown(span.low));
            high = std::max(high, shown(span.high));
        }
    }
    if (low > high) {
        low = shown(0);
        high = shown(10);
    }
    scale_ = valueScale(low, high, std::clamp(static_cast<int>(plot_.height() / 32), 2, 6));
}

void HumidityChart::layOut() {
    if (ground_ == nullptr || to_ <= from_ || size().isEmpty()) {
        return;
    }
    ground_->changed();
    marks_->changed();
    hoursInSight_.clear();
    for (std::size_t i = 0; i < columns_.size(); ++i) {
        const auto [first, last] = inSight(columns_[i].seconds, from_, to_);
        if (last > first || !pointsWithin(points_->hours[i].aside, from_, to_).empty()) {
            hoursInSight_.push_back(i);
        }
    }
    const QFontMetricsF metrics(look_.font);
    const double line = std::ceil(metrics.height());
    const double left = std::ceil(metrics.horizontalAdvance(QStringLiteral("−100"))) + 8;
    const double titleWidth = metrics.horizontalAdvance(title()) * 1.12;
    keyBelow_ = left + titleWidth + 24 + marks_->key(nullptr, {}) > size().width();
    const double top = line + 8 + (keyBelow_ ? line + 4 : 0);
    const double bottom = line + 8;
    const double right = std::ceil(metrics.averageCharWidth() * 3);
    plot_ = QRectF{left, top, std::max(10.0, size().width() - left - right),
                   std::max(10.0, size().height() - top - bottom)};
    setPlotArea(plot_);

    std::size_t most = 0;
    for (const Column& column : columns_) {
        const auto [first, last] = inSight(column.seconds, from_, to_);
        most = std::max(most, last - first);
    }
    dense_ = most > 2 && plot_.width() / static_cast<double>(most) < kDensePixels;
    scaleValues();
    const double widest = metrics.horizontalAdvance(QStringLiteral("00 Mmm 0000")) + 14;
    const double days = (seconds(to_) - seconds(from_)) / 86400.0;
    ticks_ = timeTicks(locale_, station_, from_, to_, plot_.width(), days < 100 ? widest * 0.75 : widest);
    timeAxis_->setRange(seconds(from_), seconds(to_));
    valueAxis_->setRange(scale_.low, scale_.high);
    drawLines();
    update();
}

void HumidityChart::forgetLines() {
    removeAllSeries(); // deletes them
    lines_.clear();
    linesFrom_ = linesTo_ = {};
}

void HumidityChart::drawLines() {
    if (dense_) {
        forgetLines();
        return;
    }
    if (!lines_.isEmpty() && from_ >= linesFrom_ && to_ <= linesTo_) {
        return; // the axes have moved, the lines hold
    }
    forgetLines();
    linesFrom_ = from_ - (to_ - from_);
    linesTo_ = to_ + (to_ - from_);
    for (std::size_t i = 0; i < points_->hours.size(); ++i) {
        for (const auto& run : points_->hours[i].runs) {
            if (run.back().instant < linesFrom_ || run.front().instant > linesTo_) {
                continue;
            }
            QList<QPointF> vertices;
            for (std::size_t k = 0; k < run.size(); ++k) {
                // One point beyond the edge on each side, so that the line runs on to the edge.
                const bool near = run[std::min(k + 1, run.size() - 1)].instant >= linesFrom_ &&
                                  run[k == 0 ? 0 : k - 1].instant <= linesTo_;
                if (near && run[k].value(quantity_)) {
                    vertices.append({seconds(run[k].instant), shown(*run[k].value(quantity_))});
                }
            }
            if (vertices.isEmpty()) {
                continue;
            }
            auto* series = new QLineSeries;
            series->setName(hourWords(points_->hours[i].hour));
            QPen pen(lineColour(look_.tokens, i), 1.5);
            pen.setCapStyle(Qt::FlatCap);
            if (const auto dash = lineDash(i); !dash.isEmpty()) {
                pen.setDashPattern(dash);
            }
            series->setPen(pen);
            series->append(vertices);
            addSeries(series);
            series->attachAxis(timeAxis_);
            series->attachAxis(valueAxis_);
            lines_.append(series);
        }
    }
}

} // namespace wickbook::ui
