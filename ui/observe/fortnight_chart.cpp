// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/observe/fortnight_chart.h"

#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/number_words.h"

#include <QLocale>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace wickbook::ui {

namespace {

constexpr double kDot = 3.2;

/// Air drier than this is rare enough that its point may run along the lower edge.
constexpr double kLowestShown = 20;

double heightOf(const QRectF& plot, double humidity) {
    const double share = (std::max(humidity, kLowestShown) - kLowestShown) / (100 - kLowestShown);
    return plot.bottom() - share * plot.height();
}

} // namespace

std::vector<FortnightChart::Point> fortnightPoints(const std::vector<checks::CheckedReading>& readings,
                                                   const std::vector<record::ExpectedHour>& expected) {
    std::vector<FortnightChart::Point> points;
    for (const checks::CheckedReading& checked : readings) {
        if (const auto humidity = checked.reading.humidityPercent()) {
            points.push_back({checked.reading.values().instant, std::min(*humidity, 100.0), checked.leftOut});
        }
    }
    for (const record::ExpectedHour& hour : expected) {
        const bool kept =
            std::any_of(readings.begin(), readings.end(), [&](const checks::CheckedReading& checked) {
                return checked.reading.values().hour == hour.hour && checked.reading.humidityPercent();
            });
        if (!kept) {
            points.push_back({hour.instant, std::nullopt, false});
        }
    }
    std::sort(points.begin(), points.end(),
              [](const auto& a, const auto& b) { return a.instant < b.instant; });
    return points;
}

FortnightChart::FortnightChart(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Relative humidity of the last two weeks"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize FortnightChart::sizeHint() const {
    return {typePixels(420), typePixels(150)};
}

void FortnightChart::setPoints(std::vector<Point> points, record::Instant from, record::Instant to) {
    points_ = std::move(points);
    from_ = from;
    to_ = to;
    const auto count = std::count_if(points_.begin(), points_.end(),
                                     [](const Point& point) { return point.humidity.has_value(); });
    setAccessibleDescription(tr("readings shown: %1").arg(count));
    update();
}

void FortnightChart::paintLines(QPainter& painter, const QRectF& plot) const {
    const Tokens& tokens = tokensFor(palette());
    painter.setFont(typeFont(TypeSize::Label));
    const double lineHeight = QFontMetricsF(painter.font()).height();
    for (const double level : {20.0, 60.0, 100.0}) {
        const double y = std::round(heightOf(plot, level)) + 0.5;
        painter.setPen(QPen(tokens.rule, 1));
        painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
        painter.setPen(tokens.soft);
        drawTabular(painter, QRectF(0, y - lineHeight / 2, plot.left() - 8, lineHeight), Qt::AlignRight,
                    numberWords(QLocale(), level, 0));
    }
}

void FortnightChart::paintPoints(QPainter& painter, const QRectF& plot) const {
    const Tokens& tokens = tokensFor(palette());
    const double span = std::max<double>(1, static_cast<double>((to_ - from_).count()));
    const auto place = [&](const Point& point) {
        const double share = static_cast<double>((point.instant - from_).count()) / span;
        return QPointF(plot.left() + share * plot.width(), heightOf(plot, *point.humidity));
    };
    painter.setPen(QPen(tokens.wet, 1.6));
    for (std::size_t index = 1; index < points_.size(); ++index) {
        if (points_[index - 1].humidity && points_[index].humidity) {
            painter.drawLine(place(points_[index - 1]), place(points_[index]));
        }
    }
    for (const Point& point : points_) {
        if (point.humidity) {
            painter.setBrush(point.doubtful ? tokens.sheet : tokens.wet);
            painter.drawEllipse(place(point), kDot, kDot);
        }
    }
}

void FortnightChart::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(typeFont(TypeSize::Label));
    const double lineHeight = QFontMetricsF(painter.font()).height();
    const double left = tabularWidth(painter.font(), QStringLiteral("100")) + 12;
    const QRectF plot(left, lineHeight / 2 + 2, width() - left - 6, height() - 2 * lineHeight - 6);
    paintLines(painter, plot);
    if (points_.empty()) {
        painter.setPen(tokensFor(palette()).soft);
        painter.drawText(plot, Qt::AlignCenter, tr("Nothing written down in these two weeks yet."));
    }
    paintPoints(painter, plot);
    painter.setPen(tokensFor(palette()).soft);
    painter.drawText(QRectF(0, height() - lineHeight, width() - 6, lineHeight),
                     Qt::AlignRight | Qt::AlignBottom, tr("% RH, hollow: doubtful"));
}

} // namespace wickbook::ui
