// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/chart_look.h"

#include "ui/style/type.h"

#include <QGuiApplication>
#include <QPainter>
#include <QPainterPath>

namespace wickbook::ui {

namespace {

constexpr int kPaperPixels = 12;
/// Observing hours that are told apart: a station may change its hours, and keep both kinds in one chart.
constexpr std::size_t kStyles = 6;

QPainterPath outline(PointShape shape, QPointF centre, double radius) {
    QPainterPath path;
    switch (shape) {
    case PointShape::Circle:
        path.addEllipse(centre, radius, radius);
        break;
    case PointShape::Square: {
        const double half = radius * 0.9;
        path.addRect(QRectF{centre.x() - half, centre.y() - half, 2 * half, 2 * half});
        break;
    }
    case PointShape::Triangle: {
        const double r = radius * 1.2;
        path.addPolygon(QPolygonF{{centre.x(), centre.y() - r},
                                  {centre.x() + r * 0.9, centre.y() + r * 0.7},
                                  {centre.x() - r * 0.9, centre.y() + r * 0.7}});
        path.closeSubpath();
        break;
    }
    case PointShape::Diamond: {
        const double r = radius * 1.25;
        path.addPolygon(QPolygonF{{centre.x(), centre.y() - r},
                                  {centre.x() + r, centre.y()},
                                  {centre.x(), centre.y() + r},
                                  {centre.x() - r, centre.y()}});
        path.closeSubpath();
        break;
    }
    case PointShape::Down: {
        const double r = radius * 1.2;
        path.addPolygon(QPolygonF{{centre.x(), centre.y() + r},
                                  {centre.x() + r * 0.9, centre.y() - r * 0.7},
                                  {centre.x() - r * 0.9, centre.y() - r * 0.7}});
        path.closeSubpath();
        break;
    }
    case PointShape::Lying:
        path.addRect(
            QRectF{centre.x() - radius * 1.3, centre.y() - radius * 0.6, radius * 2.6, radius * 1.2});
        break;
    case PointShape::Extra: {
        const double r = radius * 1.1;
        path.moveTo(centre.x() - r, centre.y());
        path.lineTo(centre.x() + r, centre.y());
        path.moveTo(centre.x(), centre.y() - r);
        path.lineTo(centre.x(), centre.y() + r);
        break;
    }
    }
    return path;
}

} // namespace

ChartLook ChartLook::paper() {
    ChartLook look;
    look.tokens = lightTokens();
    QFont font = QGuiApplication::font();
    QStringList families = font.families();
    families << QStringLiteral("DejaVu Sans");
    font.setFamilies(families);
    font.setPixelSize(kPaperPixels);
    look.font = font;
    return look;
}

ChartLook ChartLook::screen(const QPalette& palette) {
    ChartLook look;
    look.tokens = tokensFor(palette);
    look.font = typeFont(TypeSize::Label);
    return look;
}

PointShape shapeOf(std::size_t hourIndex) {
    constexpr PointShape kShapes[] = {PointShape::Circle,  PointShape::Square, PointShape::Triangle,
                                      PointShape::Diamond, PointShape::Down,   PointShape::Lying};
    return kShapes[hourIndex % kStyles];
}

QColor lineColour(const Tokens& tokens, std::size_t hourIndex) {
    const QColor colours[] = {tokens.wet, tokens.ink, tokens.accent, tokens.soft, tokens.dry, tokens.wet};
    return colours[hourIndex % kStyles];
}

QList<qreal> lineDash(std::size_t hourIndex) {
    const QList<qreal> dashes[] = {{}, {5, 3}, {1.5, 2.5}, {6, 2.5, 1.5, 2.5}, {9, 3}, {3, 1.5}};
    return dashes[hourIndex % kStyles];
}

void drawKept(QPainter& painter, PointShape shape, QPointF centre, double radius, const QColor& colour) {
    painter.setPen(shape == PointShape::Extra ? QPen(colour, 1.4) : QPen(Qt::NoPen));
    painter.setBrush(colour);
    painter.drawPath(outline(shape, centre, radius));
}

void drawHollow(QPainter& painter, PointShape shape, QPointF centre, double radius, const QColor& colour,
                const QColor& inside) {
    painter.setPen(QPen(colour, 1.4));
    painter.setBrush(inside);
    painter.drawPath(outline(shape == PointShape::Extra ? PointShape::Circle : shape, centre, radius * 1.1));
}

void drawCross(QPainter& painter, QPointF centre, double radius, const QColor& colour) {
    painter.setPen(QPen(colour, 1.6));
    const double r = radius * 1.1;
    painter.drawLine(QPointF{centre.x() - r, centre.y() - r}, QPointF{centre.x() + r, centre.y() + r});
    painter.drawLine(QPointF{centre.x() - r, centre.y() + r}, QPointF{centre.x() + r, centre.y() - r});
}

} // namespace wickbook::ui
