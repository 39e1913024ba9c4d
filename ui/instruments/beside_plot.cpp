// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/instruments/beside_plot.h"

#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/number_words.h"

#include <QLocale>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace wickbook::ui {

namespace {

/// Ends of an axis and the distance of its marks: 1, 2 or 5 times a power of ten, about four of them.
struct Axis {
    double from = 0;
    double to = 1;
    double step = 0.5;
};

Axis axisOver(double least, double most) {
    if (!(most > least)) {
        least -= 1;
        most += 1;
    }
    const double rough = (most - least) / 4;
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    double step = power;
    for (const double factor : {1.0, 2.0, 5.0, 10.0}) {
        step = factor * power;
        if (step >= rough) {
            break;
        }
    }
    return {std::floor(least / step) * step, std::ceil(most / step) * step, step};
}

int decimalsOf(double step) {
    return std::max(0, static_cast<int>(std::ceil(-std::log10(step) - 1e-9)));
}

} // namespace

BesidePlot::BesidePlot(const QString& xTitle, const QString& yTitle, QWidget* parent)
    : QWidget(parent), xTitle_(xTitle), yTitle_(yTitle) {
    setAccessibleName(tr("%1 against %2").arg(yTitle, xTitle));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void BesidePlot::show(std::vector<QPointF> points, const Line& expected, const std::optional<Line>& fitted) {
    points_ = std::move(points);
    expected_ = expected;
    fitted_ = fitted;
    setVisible(!points_.empty());
    update();
}

QSize BesidePlot::sizeHint() const {
    return {typePixels(260), typePixels(210)};
}

QSize BesidePlot::minimumSizeHint() const {
    return {typePixels(200), typePixels(150)};
}

void BesidePlot::paintEvent(QPaintEvent*) {
    if (points_.empty()) {
        return;
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Tokens& tokens = tokensFor(palette());
    const QLocale locale;
    const QFont font = typeFont(TypeSize::Label);
    painter.setFont(font);
    const QFontMetricsF metrics(font);
    const auto byX = std::ranges::minmax(points_, {}, [](const QPointF& point) { return point.x(); });
    const auto byY = std::ranges::minmax(points_, {}, [](const QPointF& point) { return point.y(); });
    const Axis x = axisOver(byX.min.x(), byX.max.x());
    const double level = expected_.slope == 0 ? expected_.intercept : byY.min.y();
    const Axis y = axisOver(std::min(byY.min.y(), level), std::max(byY.max.y(), level));
    const QRectF ground =
        QRectF(rect()).adjusted(metrics.horizontalAdvance(QStringLiteral("−00.00 ")), metrics.height() * 1.5,
                                -metrics.height() / 2, -metrics.height() * 2.4);
    const auto place = [&](double atX, double atY) {
        return QPointF(ground.left() + (atX - x.from) / (x.to - x.from) * ground.width(),
                       ground.bottom() - (atY - y.from) / (y.to - y.from) * ground.height());
    };
    painter.setPen(tokens.soft);
    painter.drawText(QPointF(0, metrics.ascent()), yTitle_);
    painter.drawText(QRectF(ground.left(), height() - metrics.height() - 1, ground.width(), metrics.height()),
                     Qt::AlignRight, xTitle_);
    for (double mark = x.from; mark <= x.to + x.step / 2; mark += x.step) {
        const QPointF at = place(mark, y.from);
        painter.setPen(QPen(tokens.rule, 1));
        painter.drawLine(at, place(mark, y.to));
        painter.setPen(tokens.soft);
        painter.drawText(QRectF(at.x() - 60, ground.bottom() + 2, 120, metrics.height()), Qt::AlignHCenter,
                         numberWords(locale, mark, decimalsOf(x.step)));
    }
    for (double mark = y.from; mark <= y.to + y.step / 2; mark += y.step) {
        const QPointF at = place(x.from, mark);
        painter.setPen(QPen(tokens.rule, 1));
        painter.drawLine(at, place(x.to, mark));
        painter.setPen(tokens.soft);
        painter.drawText(QRectF(0, at.y() - metrics.height() / 2, ground.left() - 4, metrics.height()),
                         Qt::AlignRight | Qt::AlignVCenter, numberWords(locale, mark, decimalsOf(y.step)));
    }
    painter.save();
    painter.setClipRect(ground);
    const auto drawLine = [&](const Line& line) {
        painter.drawLine(place(x.from, line.intercept + line.slope * x.from),
                         place(x.to, line.intercept + line.slope * x.to));
    };
    painter.setPen(QPen(tokens.ink, 1.2));
    drawLine(expected_);
    if (fitted_) {
        painter.setPen(QPen(tokens.accent, 1.6, Qt::DashLine));
        drawLine(*fitted_);
    }
    painter.restore();
    painter.setPen(QPen(tokens.ink, 1));
    painter.setBrush(tokens.sheet);
    for (const QPointF& point : points_) {
        painter.drawEllipse(place(point.x(), point.y()), 2.6, 2.6);
    }
}

} // namespace wickbook::ui
