// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/chart_drawing.h"
#include "ui/print/chart_frame.h"
#include "ui/text/time_words.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace wickbook::ui {

namespace {

constexpr double kRadius = 3.0;
constexpr double kSmallRadius = 2.0;

struct ChartText {
    Q_DECLARE_TR_FUNCTIONS(ChartText)
};

} // namespace

HumidityChart::Marks::Marks(HumidityChart& chart) : QGraphicsItem(&chart), chart_(chart) {}

QRectF HumidityChart::Marks::boundingRect() const {
    return QRectF{QPointF{0, 0}, chart_.size()};
}

void HumidityChart::Marks::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    if (chart_.to_ <= chart_.from_) {
        return;
    }
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setFont(chart_.look_.font);
    paintPoints(*painter);
    paintCaret(*painter);
    paintWords(*painter);
    painter->restore();
}

void HumidityChart::Marks::paintWords(QPainter& painter) const {
    const Tokens& tokens = chart_.look_.tokens;
    const QFontMetricsF metrics(chart_.look_.font);
    const double line = metrics.height();
    QFont bold = chart_.look_.font;
    bold.setBold(true);
    painter.setFont(bold);
    painter.setPen(tokens.ink);
    const QPointF head{chart_.plot_.left(), 2};
    painter.drawText(QPointF{head.x(), head.y() + metrics.ascent()}, chart_.title());
    painter.setFont(chart_.look_.font);
    if (chart_.keyBelow_) {
        key(&painter, {chart_.plot_.left(), head.y() + line + 4});
    } else {
        const double width = key(nullptr, {});
        key(&painter, {chart_.plot_.right() - width, head.y()});
    }

    drawValueWords(painter, chart_.look_, chart_.locale_, chart_.plot_, chart_.scale_);
    std::vector<PlacedWord> words;
    for (const TimeTick& tick : chart_.ticks_) {
        words.push_back({chart_.xOf(tick.instant), tick.label});
    }
    drawWordsBelow(painter, chart_.look_, chart_.plot_, chart_.size().width(), words);
}

double HumidityChart::Marks::key(QPainter* painter, QPointF topLeft) const {
    const Tokens& tokens = chart_.look_.tokens;
    const QFontMetricsF metrics(chart_.look_.font);
    const double middle = topLeft.y() + metrics.height() / 2;
    double x = topLeft.x();
    const auto entry = [&](double sample, const QString& text, const auto& draw) {
        if (painter != nullptr) {
            draw(QPointF{x, middle});
            painter->setPen(tokens.soft);
            painter->setBrush(Qt::NoBrush);
            painter->drawText(QPointF{x + sample + 5, topLeft.y() + metrics.ascent()}, text);
        }
        x += sample + 5 + metrics.horizontalAdvance(text) + 16;
    };
    bool doubtful = false;
    bool erroneous = false;
    const auto seen = [&](const ChartPoint& point) {
        doubtful = doubtful || point.mark == PointMark::Doubtful;
        erroneous = erroneous || point.mark == PointMark::Erroneous;
    };
    for (const std::size_t i : chart_.hoursInSight_) {
        const HourLine& hour = chart_.points_->hours[i];
        const auto aside = pointsWithin(hour.aside, chart_.from_, chart_.to_);
        std::for_each(aside.begin(), aside.end(), seen);
        entry(28, hourWords(hour.hour), [&](QPointF at) {
            QPen pen(lineColour(tokens, i), 1.5);
            if (const auto dash = lineDash(i); !dash.isEmpty()) {
                pen.setDashPattern(dash);
            }
            painter->setPen(pen);
            painter->drawLine(at, at + QPointF{28, 0});
            drawKept(*painter, shapeOf(i), at + QPointF{14, 0}, kRadius, lineColour(tokens, i));
        });
    }
    const auto extras = pointsWithin(chart_.points_->extras, chart_.from_, chart_.to_);
    std::for_each(extras.begin(), extras.end(), seen);
    if (!extras.empty() && chart_.showsExtras()) {
        entry(8, ChartText::tr("extra"), [&](QPointF at) {
            drawKept(*painter, PointShape::Extra, at + QPointF{4, 0}, kRadius, tokens.soft);
        });
    }
    if (doubtful) {
        entry(8, ChartText::tr("doubtful"), [&](QPointF at) {
            drawHollow(*painter, PointShape::Circle, at + QPointF{4, 0}, kRadius, tokens.query, tokens.sheet);
        });
    }
    if (erroneous) {
        entry(8, ChartText::tr("erroneous"), [&](QPointF at) {
            drawCross(*painter, at + QPointF{4, 0}, kRadius, tokens.wrong);
        });
    }
    const auto events = chart_.eventsInSight();
    const auto inSight = [&](ChartEvent::Kind kind) {
        return std::any_of(events.begin(), events.end(),
                           [kind](const ChartEvent& event) { return event.kind == kind; });
    };
    const auto upright = [&](const QList<qreal>& dash) {
        return [&, dash](QPointF at) {
            QPen pen(tokens.soft, 1);
            if (!dash.isEmpty()) {
                pen.setDashPattern(dash);
            }
            painter->setPen(pen);
            painter->drawLine(at + QPointF{4, -6}, at + QPointF{4, 6});
        };
    };
    if (chart_.showsWickChanges()) {
        entry(8, ChartText::tr("wick changed"), upright({2, 3}));
    }
    if (inSight(ChartEvent::Kind::InstrumentsChanged) || inSight(ChartEvent::Kind::StationChanged)) {
        entry(8, ChartText::tr("station or instruments changed"), upright({}));
    }
    if (inSight(ChartEvent::Kind::Diary)) {
        entry(8, ChartText::tr("exposure diary"), upright({6, 3}));
    }
    if (!chart_.average_.spans.empty()) {
        //: the station's own mean range; %1 is how many years
        entry(12, ChartText::tr("station average, %1 years").arg(chart_.average_.years), [&](QPointF at) {
            QColor fill = tokens.accent;
            fill.setAlphaF(0.2F);
            painter->fillRect(QRectF{at.x(), at.y() - 5, 12, 10}, fill);
        });
    }
    return std::max(0.0, x - topLeft.x() - 16);
}

/// Where a century is in sight there are thousands of marks: small ones then, each kind in one stroke of the
/// pen. Doubtful stays hollow, erroneous a cross, an extra reading upright and across.
void HumidityChart::Marks::paintDenseMarks(QPainter& painter) const {
    const Tokens& tokens = chart_.look_.tokens;
    QList<QRectF> hollow;
    QList<QLineF> crosses;
    QList<QLineF> extras;
    const double r = kSmallRadius;
    const auto sort = [&](const ChartPoint& point, bool extra) {
        if (!point.value(chart_.quantity_)) {
            return;
        }
        const QPointF at = chart_.placeOf(point);
        if (point.mark == PointMark::Erroneous) {
            crosses << QLineF{at.x() - r, at.y() - r, at.x() + r, at.y() + r}
                    << QLineF{at.x() - r, at.y() + r, at.x() + r, at.y() - r};
        } else if (point.mark == PointMark::Doubtful) {
            hollow << QRectF{at.x() - r, at.y() - r, 2 * r, 2 * r};
        } else if (extra) {
            extras << QLineF{at.x() - r, at.y(), at.x() + r, at.y()}
                   << QLineF{at.x(), at.y() - r, at.x(), at.y() + r};
        }
    };
    for (const HourLine& hour : chart_.points_->hours) {
        for (const ChartPoint& point : pointsWithin(hour.aside, chart_.from_, chart_.to_)) {
            sort(point, false);
        }
    }
    if (chart_.showsExtras()) {
        for (const ChartPoint& point : pointsWithin(chart_.points_->extras, chart_.from_, chart_.to_)) {
            sort(point, true);
        }
    }
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(QPen(tokens.soft, 1));
    painter.drawLines(extras);
    painter.setPen(QPen(tokens.query, 1));
    painter.setBrush(tokens.sheet);
    painter.drawRects(hollow);
    painter.setPen(QPen(tokens.wrong, 1));
    painter.drawLines(crosses);
    painter.setRenderHint(QPainter::Antialiasing);
}

void HumidityChart::Marks::paintPoints(QPainter& painter) const {
    if (chart_.dense_) {
        paintDenseMarks(painter);
        return;
    }
    const Tokens& tokens = chart_.look_.tokens;
    const auto visible = [&](const ChartPoint& point) { return point.value(chart_.quantity_).has_value(); };
    // At half-dense the marks would run into each other: smaller ones then.
    const double days = static_cast<double>((chart_.to_ - chart_.from_).count()) / 86400.0;
    const double radius = chart_.plot_.width() / days < 8 ? kSmallRadius : kRadius;
    for (std::size_t i = 0; i < chart_.points_->hours.size(); ++i) {
        const HourLine& hour = chart_.points_->hours[i];
        for (const auto& run : hour.runs) {
            if (run.back().instant < chart_.from_ || run.front().instant > chart_.to_) {
                continue;
            }
            for (const ChartPoint& point : pointsWithin(run, chart_.from_, chart_.to_)) {
                if (visible(point)) {
                    drawKept(painter, shapeOf(i), chart_.placeOf(point), radius, lineColour(tokens, i));
                }
            }
        }
        for (const ChartPoint& point : pointsWithin(hour.aside, chart_.from_, chart_.to_)) {
            if (!visible(point)) {
                continue;
            }
            if (point.mark == PointMark::Erroneous) {
                drawCross(painter, chart_.placeOf(point), radius, tokens.wrong);
            } else {
                drawHollow(painter, shapeOf(i), chart_.placeOf(point), radius, tokens.query, tokens.sheet);
            }
        }
    }
    for (const ChartPoint& point : pointsWithin(chart_.points_->extras, chart_.from_, chart_.to_)) {
        if (!visible(point)) {
            continue;
        }
        if (point.mark == PointMark::Kept) {
            drawKept(painter, PointShape::Extra, chart_.placeOf(point), radius, tokens.soft);
        } else if (point.mark == PointMark::Doubtful) {
            drawHollow(painter, PointShape::Extra, chart_.placeOf(point), radius, tokens.query, tokens.sheet);
        } else {
            drawCross(painter, chart_.placeOf(point), radius, tokens.wrong);
        }
    }
}

void HumidityChart::Marks::paintCaret(QPainter& painter) const {
    if (!chart_.caret_ || *chart_.caret_ < chart_.from_ || *chart_.caret_ > chart_.to_) {
        return;
    }
    const double x = chart_.xOf(*chart_.caret_);
    painter.setPen(QPen(chart_.look_.tokens.accent, 1.5));
    painter.drawLine(QPointF{x, chart_.plot_.top()}, QPointF{x, chart_.plot_.bottom()});
    if (const ChartPoint* point = chart_.points_->at(*chart_.caret_);
        point != nullptr && point->value(chart_.quantity_)) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(chart_.look_.tokens.accent, 2));
        painter.drawEllipse(chart_.placeOf(*point), kRadius * 2.2, kRadius * 2.2);
    }
}

} // namespace wickbook::ui
