// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/pair_chart.h"

#include "ui/text/number_words.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <limits>

namespace wickbook::ui {

namespace {

constexpr double kBulb = 2.8;
constexpr double kPixelsAPair = 5; ///< closer, discs run into each other
constexpr double kReachColumn = 3;

struct PairText {
    Q_DECLARE_TR_FUNCTIONS(PairText)
};

double secondsOf(record::Instant instant) {
    return static_cast<double>(instant.time_since_epoch().count());
}

} // namespace

PairChart::PairChart(const record::StationRecord& station, ChartLook look, QLocale locale,
                     units::TemperatureUnit unit)
    : FramedChart(std::move(look), std::move(locale))
    , station_(station)
    , unit_(unit)
    , points_(std::make_shared<ChartPoints>()) {}

void PairChart::setPoints(std::shared_ptr<const ChartPoints> points) {
    points_ = std::move(points);
    layOut();
}

void PairChart::setSpan(record::Instant from, record::Instant to) {
    from_ = from;
    to_ = std::max(to, from + std::chrono::hours{1});
    layOut();
}

void PairChart::setCaret(const std::optional<record::Instant>& caret) {
    caret_ = caret;
    update();
}

QString PairChart::title() const {
    return PairText::tr("Dry and wet bulb, %1").arg(unitWords(unit_));
}

double PairChart::shown(double celsius) const {
    return celsiusAsShown(celsius, unit_);
}

double PairChart::placeAt(record::Instant instant) const {
    return xOf(secondsOf(instant));
}

record::Instant PairChart::instantAt(double x) const {
    const double share = plot_.width() > 0 ? (x - plot_.left()) / plot_.width() : 0;
    return from_ + std::chrono::seconds{std::llround(share * (secondsOf(to_) - secondsOf(from_)))};
}

template <typename Each>
void PairChart::eachPair(Each each) const {
    forEachPoint(*points_, from_, to_, [&](const ChartPoint& point) {
        if (point.dry && point.wet) {
            each(point);
        }
    });
}

void PairChart::arrange() {
    double low = std::numeric_limits<double>::max();
    double high = std::numeric_limits<double>::lowest();
    std::size_t count = 0;
    eachPair([&](const ChartPoint& point) {
        low = std::min(low, shown(std::min(*point.dry, *point.wet)));
        high = std::max(high, shown(std::max(*point.dry, *point.wet)));
        ++count;
    });
    if (low > high) {
        low = shown(0);
        high = shown(20);
    }
    dense_ = count > 2 && plot_.width() / static_cast<double>(count) < kPixelsAPair;
    y_ = valueScale(low, high, std::clamp(static_cast<int>(plot_.height() / 36), 2, 8));
    xLow_ = secondsOf(from_);
    xHigh_ = secondsOf(to_);
    const QFontMetricsF metrics(look_.font);
    const double widest = metrics.horizontalAdvance(QStringLiteral("00 Mmm 0000")) + 14;
    const double days = (xHigh_ - xLow_) / 86400.0;
    for (const TimeTick& tick :
         timeTicks(locale_, station_, from_, to_, plot_.width(), days < 100 ? widest * 0.75 : widest)) {
        words_.push_back({placeAt(tick.instant), tick.label});
    }
}

void PairChart::paintBelow(QPainter& painter) const {
    painter.setPen(QPen(look_.tokens.rule, 1));
    for (const PlacedWord& word : words_) {
        painter.drawLine(QPointF{word.x, plot_.bottom()}, QPointF{word.x, plot_.bottom() + 4});
    }
}

void PairChart::paintReaches(QPainter& painter) const {
    painter.setRenderHint(QPainter::Antialiasing, false);
    const auto count = static_cast<std::size_t>(std::ceil(plot_.width() / kReachColumn)) + 1;
    const double perSecond = static_cast<double>(count - 1) / (xHigh_ - xLow_);
    for (const bool dry : {true, false}) {
        std::vector<double> lowest(count, std::numeric_limits<double>::max());
        std::vector<double> highest(count, std::numeric_limits<double>::lowest());
        eachPair([&](const ChartPoint& point) {
            const auto at = static_cast<std::size_t>((secondsOf(point.instant) - xLow_) * perSecond);
            const double value = shown(dry ? *point.dry : *point.wet);
            lowest[at] = std::min(lowest[at], value);
            highest[at] = std::max(highest[at], value);
        });
        const QColor colour = dry ? look_.tokens.dry : look_.tokens.wet;
        // The wet bulb's strokes stand beside the dry bulb's, so that both are seen without colour too.
        painter.setPen(QPen(colour, dry ? 1 : 2));
        for (std::size_t at = 0; at < count; ++at) {
            if (lowest[at] <= highest[at]) {
                const double x = plot_.left() + (static_cast<double>(at) + (dry ? 0.2 : 0.7)) * kReachColumn;
                painter.drawLine(QPointF{x, yOf(highest[at])},
                                 QPointF{x, std::max(yOf(lowest[at]), yOf(highest[at]) + 2)});
            }
        }
    }
}

void PairChart::paintAbove(QPainter& painter) const {
    if (dense_) {
        paintReaches(painter);
    } else {
        eachPair([&](const ChartPoint& point) {
            const QPointF dry{placeAt(point.instant), yOf(shown(*point.dry))};
            const QPointF wet{dry.x(), yOf(shown(*point.wet))};
            painter.setPen(QPen(look_.tokens.soft, 1));
            painter.drawLine(dry, wet);
            const bool kept = point.mark == PointMark::Kept;
            drawHollow(painter, PointShape::Circle, wet, kBulb, look_.tokens.wet, look_.tokens.sheet);
            drawKept(painter, PointShape::Circle, dry, kBulb, kept ? look_.tokens.dry : look_.tokens.soft);
            if (!kept) {
                drawCross(painter, dry - QPointF{0, kBulb * 3}, kBulb,
                          point.mark == PointMark::Doubtful ? look_.tokens.query : look_.tokens.wrong);
            }
        });
    }
    if (caret_ && *caret_ >= from_ && *caret_ <= to_) {
        painter.setPen(QPen(look_.tokens.accent, 1.5));
        painter.drawLine(QPointF{placeAt(*caret_), plot_.top()}, QPointF{placeAt(*caret_), plot_.bottom()});
    }
}

std::vector<FramedChart::KeyEntry> PairChart::key() const {
    std::vector<KeyEntry> entries;
    entries.push_back({PairText::tr("dry bulb"), 8, [this](QPainter& painter, QPointF at) {
                           drawKept(painter, PointShape::Circle, at + QPointF{4, 0}, kBulb, look_.tokens.dry);
                       }});
    entries.push_back({PairText::tr("wet bulb"), 8, [this](QPainter& painter, QPointF at) {
                           drawHollow(painter, PointShape::Circle, at + QPointF{4, 0}, kBulb,
                                      look_.tokens.wet, look_.tokens.sheet);
                       }});
    entries.push_back({PairText::tr("depression"), 8, [this](QPainter& painter, QPointF at) {
                           painter.setPen(QPen(look_.tokens.soft, 1));
                           painter.drawLine(at + QPointF{4, -6}, at + QPointF{4, 6});
                       }});
    return entries;
}

const ChartPoint* PairChart::pointNear(QPointF place, double reach) const {
    const ChartPoint* nearest = nullptr;
    double best = reach;
    eachPair([&](const ChartPoint& point) {
        const double across = std::abs(placeAt(point.instant) - place.x());
        const double top = std::min(yOf(shown(*point.dry)), yOf(shown(*point.wet))) - reach;
        const double bottom = std::max(yOf(shown(*point.dry)), yOf(shown(*point.wet))) + reach;
        if (across <= best && place.y() >= top && place.y() <= bottom) {
            best = across;
            nearest = &point;
        }
    });
    return nearest;
}

} // namespace wickbook::ui
