// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/observe/thermometer_drawing.h"

#include "ui/observe/thermometer_accessible.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/number_words.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <QWheelEvent>

#include <cmath>

namespace wickbook::ui {

namespace {

constexpr double kTopRoom = 14;
constexpr double kBulbRadius = 17;
constexpr double kTubeHalf = 10;
constexpr double kColumnHalf = 4;
constexpr double kBelowScale = 16; ///< tube between the lowest mark shown and the bulb
constexpr double kStepsPerPage = 10;

} // namespace

ThermometerDrawing::ThermometerDrawing(Bulb bulb, QWidget* parent) : QWidget(parent), bulb_(bulb) {
    ThermometerAccessible::makeKnown();
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(bulb == Bulb::Dry ? tr("Drawn dry bulb thermometer")
                                        : tr("Drawn wet bulb thermometer"));
    setToolTip(tr("Up and down move the column by a step of the scale, Page Up and Page Down by ten."));
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Expanding);
    setCursor(Qt::SizeVerCursor);
}

QSize ThermometerDrawing::sizeHint() const {
    return {typePixels(88), typePixels(480)};
}

QSize ThermometerDrawing::minimumSizeHint() const {
    return {typePixels(88), typePixels(280)};
}

void ThermometerDrawing::setScale(const ThermometerScale& scale) {
    scale_ = scale;
    update();
}

void ThermometerDrawing::setReading(std::optional<double> value, bool belowScale) {
    if (value_ == value && belowScale_ == belowScale) {
        return;
    }
    value_ = value;
    belowScale_ = belowScale;
    QAccessibleValueChangeEvent changed(this, value ? QVariant(*value) : QVariant(spokenReading()));
    QAccessible::updateAccessibility(&changed);
    update();
}

QString ThermometerDrawing::spokenReading() const {
    return belowScale_ ? tr("below scale")
           : value_
               ? numberWords(QLocale(), value_, scale_.decimals) + QLatin1Char(' ') + unitWords(scale_.unit)
               : tr("no reading yet");
}

double ThermometerDrawing::heightOf(double value) const {
    const double bottom = height() - 2 * kBulbRadius - kBelowScale;
    const double share = (value - scale_.low) / (scale_.high - scale_.low);
    return bottom - share * (bottom - kTopRoom);
}

void ThermometerDrawing::moveTo(double value) {
    if (value < scale_.lowestMark - scale_.step / 2) {
        emit movedBelowScale();
        return;
    }
    const double kept = std::min(value, scale_.highestMark);
    emit moved(std::round(kept / scale_.step) * scale_.step);
}

void ThermometerDrawing::moveBy(double steps) {
    if (belowScale_) {
        if (steps > 0) {
            moveTo(scale_.lowestMark);
        }
        return;
    }
    const double from = value_.value_or(std::round((scale_.low + scale_.high) / 2));
    moveTo(value_ ? from + steps * scale_.step : from);
}

void ThermometerDrawing::dragTo(double y) {
    const double bottom = heightOf(scale_.low);
    const double value = scale_.low + (bottom - y) / (bottom - kTopRoom) * (scale_.high - scale_.low);
    if (scale_.low > scale_.lowestMark) {
        moveTo(std::max(value, scale_.low)); // more of the scale lies below what is shown
    } else {
        moveTo(value);
    }
}

void ThermometerDrawing::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Up:
        moveBy(1);
        return;
    case Qt::Key_Down:
        moveBy(-1);
        return;
    case Qt::Key_PageUp:
        moveBy(kStepsPerPage);
        return;
    case Qt::Key_PageDown:
        moveBy(-kStepsPerPage);
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

void ThermometerDrawing::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) {
        dragTo(event->position().y());
    }
}

void ThermometerDrawing::mouseMoveEvent(QMouseEvent* event) {
    if (event->buttons() & Qt::LeftButton) {
        dragTo(event->position().y());
    }
}

void ThermometerDrawing::wheelEvent(QWheelEvent* event) {
    event->ignore(); // a stray wheel must never change a reading
}

void ThermometerDrawing::paintScale(QPainter& painter, double tubeRight) const {
    const Tokens& tokens = tokensFor(palette());
    const double perDegree = (heightOf(scale_.low) - kTopRoom) / (scale_.high - scale_.low);
    const double every = scale_.markEvery(perDegree);
    const double numbered = scale_.numberedEvery();
    const auto isMultiple = [](double value, double of) {
        return std::abs(value / of - std::round(value / of)) < 1e-6;
    };
    const auto count = static_cast<int>(std::round((scale_.high - scale_.low) / every));
    painter.setFont(typeFont(TypeSize::Label));
    for (int index = 0; index <= count; ++index) {
        const double value = scale_.low + index * every;
        const double y = std::round(heightOf(value)) + 0.5;
        const bool isNumbered = isMultiple(value, numbered);
        const bool isWhole = isMultiple(value, 1.0);
        const double length = isNumbered ? 22 : isWhole ? 12 : isMultiple(value, 0.5) ? 8 : 5;
        painter.setPen(QPen(isWhole ? tokens.ink : tokens.soft, 1));
        painter.drawLine(QPointF(tubeRight + 4, y), QPointF(tubeRight + 4 + length, y));
        if (isNumbered) {
            painter.setPen(tokens.ink);
            drawTabular(painter, QRectF(tubeRight + 30, y - 9, 30, 18), Qt::AlignLeft,
                        numberWords(QLocale(), value, 0));
        }
    }
}

void ThermometerDrawing::paintTube(QPainter& painter, double centre) const {
    const Tokens& tokens = tokensFor(palette());
    const QColor colour = bulb_ == Bulb::Dry ? tokens.dry : tokens.wet;
    const QPointF bulb(centre, height() - kBulbRadius - 5);
    painter.setPen(QPen(tokens.soft, 1.4));
    painter.setBrush(tokens.sheet);
    painter.drawRoundedRect(QRectF(centre - kTubeHalf, 2, 2 * kTubeHalf, bulb.y() - kBulbRadius * 0.8),
                            kTubeHalf, kTubeHalf);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawEllipse(bulb, kBulbRadius, kBulbRadius);
    if (value_ && !belowScale_) {
        const double top = std::clamp(heightOf(*value_), 8.0, bulb.y());
        painter.drawRect(QRectF(centre - kColumnHalf, top, 2 * kColumnHalf, bulb.y() - top));
    }
    if (bulb_ == Bulb::Wet) { // the wick: told by its shape, not by its colour
        QPainterPath muslin;
        const double half = kBulbRadius + 2.5;
        muslin.moveTo(centre - half, bulb.y() - kBulbRadius + 2);
        muslin.quadTo(centre, bulb.y() - kBulbRadius - 7, centre + half, bulb.y() - kBulbRadius + 2);
        muslin.lineTo(centre + half, bulb.y() + kBulbRadius - 3);
        muslin.quadTo(centre, bulb.y() + kBulbRadius + 8, centre - half, bulb.y() + kBulbRadius - 3);
        muslin.closeSubpath();
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(colour, 1.4, Qt::DashLine));
        painter.drawPath(muslin);
    }
}

void ThermometerDrawing::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double centre = kBulbRadius + 6;
    paintTube(painter, centre);
    painter.setRenderHint(QPainter::Antialiasing, false);
    paintScale(painter, centre + kTubeHalf);
    if (hasFocus()) {
        painter.setPen(QPen(tokensFor(palette()).accent, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(rect().adjusted(1, 1, -1, -1), space::kCorner, space::kCorner);
    }
}

DepressionBracket::DepressionBracket(const ThermometerDrawing& dry, const ThermometerDrawing& wet,
                                     QWidget* parent)
    : QWidget(parent), dry_(dry), wet_(wet) {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Expanding);
    setAttribute(Qt::WA_TransparentForMouseEvents);
}

QSize DepressionBracket::sizeHint() const {
    return {typePixels(56), typePixels(280)};
}

void DepressionBracket::paintEvent(QPaintEvent* /*event*/) {
    const auto dry = dry_.reading();
    const auto wet = wet_.reading();
    if (!dry || !wet) {
        return;
    }
    QPainter painter(this);
    const Tokens& tokens = tokensFor(palette());
    const auto place = [&](double value) {
        return std::clamp(std::round(dry_.heightOf(value)), 4.0, height() - 8.0) + 0.5;
    };
    const double top = place(*dry);
    const double bottom = place(*wet);
    const double right = width() - 4.0;
    painter.setPen(QPen(tokens.dry, 1.4, Qt::DashLine));
    painter.drawLine(QPointF(0, top), QPointF(right, top));
    painter.setPen(QPen(tokens.wet, 1.4, Qt::DashLine));
    painter.drawLine(QPointF(0, bottom), QPointF(right, bottom));
    painter.setPen(QPen(tokens.ink, 1.4));
    painter.drawLine(QPointF(14, top), QPointF(14, bottom));
    painter.setFont(typeFont(TypeSize::Label, true));
    const double height = QFontMetricsF(painter.font()).height();
    // Between the lines where there is room, else above them.
    const bool room = std::abs(bottom - top) >= height;
    const double y =
        room ? (top + bottom) / 2 - height / 2 : std::max(0.0, std::min(top, bottom) - height - 1);
    drawTabular(painter, QRectF(20, y, width() - 20.0, height), Qt::AlignLeft,
                numberWords(QLocale(), *dry - *wet, dry_.scale().decimals));
}

} // namespace wickbook::ui
