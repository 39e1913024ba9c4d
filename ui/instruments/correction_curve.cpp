// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/instruments/correction_curve.h"

#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/number_words.h"

#include <QLocale>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace wickbook::ui {

CorrectionCurve::CorrectionCurve(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("the correction over the scale"));
}

void CorrectionCurve::show(const std::vector<record::CorrectionPoint>& points, units::TemperatureUnit unit) {
    points_ = points;
    unit_ = unit;
    std::ranges::sort(points_, {}, &record::CorrectionPoint::reading);
    update();
}

QSize CorrectionCurve::sizeHint() const {
    return {typePixels(320), typePixels(110)};
}

void CorrectionCurve::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Tokens& tokens = tokensFor(palette());
    const QLocale locale;
    const QFont font = typeFont(TypeSize::Label);
    painter.setFont(font);
    const QFontMetricsF metrics(font);
    const QRectF ground =
        QRectF(rect()).adjusted(metrics.horizontalAdvance(QStringLiteral("+0.00 ")), metrics.height() / 2 + 1,
                                -metrics.height(), -metrics.height() - space::kStep);
    painter.setPen(QPen(tokens.rule, 1));
    painter.drawRect(ground);
    if (points_.empty()) {
        return;
    }
    double largest = 0.1;
    for (const auto& point : points_) {
        largest = std::max(largest, std::abs(point.correction));
    }
    largest *= 1.2;
    const double first = points_.front().reading;
    const double last = points_.back().reading;
    const double margin = std::max(5.0, (last - first) * 0.15);
    const auto place = [&](double reading, double correction) {
        return QPointF(ground.left() +
                           (reading - first + margin) / (last - first + 2 * margin) * ground.width(),
                       ground.center().y() - correction / largest * ground.height() / 2);
    };
    painter.drawLine(place(first - margin, 0), place(last + margin, 0));
    painter.setPen(tokens.soft);
    for (const double mark : {-largest / 1.2, 0.0, largest / 1.2}) {
        const QPointF at = place(first - margin, mark);
        painter.drawText(
            QRectF(0, at.y() - metrics.height() / 2, ground.left() - space::kStep, metrics.height()),
            Qt::AlignRight | Qt::AlignVCenter, numberWords(locale, mark, 2));
    }
    QPolygonF line;
    line << place(first - margin, points_.front().correction);
    for (const auto& point : points_) {
        line << place(point.reading, point.correction);
    }
    line << place(last + margin, points_.back().correction);
    painter.setPen(QPen(tokens.ink, 1.5));
    painter.drawPolyline(line);
    painter.setBrush(tokens.sheet);
    double shownTo = -1e9;
    for (const auto& point : points_) {
        const QPointF at = place(point.reading, point.correction);
        painter.setPen(QPen(tokens.ink, 1.5));
        painter.drawEllipse(at, 3.5, 3.5);
        const QString words = numberWords(locale, point.reading, 0);
        const double width = metrics.horizontalAdvance(words);
        if (at.x() - width / 2 > shownTo) { // readings that lie close share one number
            painter.setPen(tokens.soft);
            painter.drawText(
                QRectF(at.x() - width, ground.bottom() + space::kStep, 2 * width, metrics.height()),
                Qt::AlignHCenter | Qt::AlignTop, words);
            shownTo = at.x() + width / 2 + space::kGroup;
        }
    }
    painter.setPen(tokens.soft);
    painter.drawText(
        QRectF(0, ground.bottom() + space::kStep, ground.left() - space::kStep, metrics.height()),
        Qt::AlignRight | Qt::AlignTop, unitWords(unit_));
}

} // namespace wickbook::ui
