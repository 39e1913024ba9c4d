// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/style/tokens.h"

#include <QFont>

class QPainter;
class QPointF;

/// How a chart is drawn: colours from the one table, and the font. Each observing hour has its own colour,
/// dash and shape, in this order, so that they stay apart in grey and for the colour-blind.

namespace wickbook::ui {

struct ChartLook {
    Tokens tokens = lightTokens();
    QFont font; ///< of labels; its pixel size is the chart's measure
    /// For paper, always the light colours. Families fall back to DejaVu Sans, so that a bare system prints
    /// the same signs.
    static ChartLook paper();
    /// For the screen, from the palette in force.
    static ChartLook screen(const QPalette& palette);
};

/// Shape of a reading's mark by the place of its hour in the day.
enum class PointShape { Circle, Square, Triangle, Diamond, Down, Lying, Extra };
PointShape shapeOf(std::size_t hourIndex);
QColor lineColour(const Tokens& tokens, std::size_t hourIndex);
/// Dash pattern in pen widths; empty for a whole line.
QList<qreal> lineDash(std::size_t hourIndex);

/// A filled, hollow or crossed mark of about twice the radius, in the painter's colours of the moment.
void drawKept(QPainter& painter, PointShape shape, QPointF centre, double radius, const QColor& colour);
void drawHollow(QPainter& painter, PointShape shape, QPointF centre, double radius, const QColor& colour,
                const QColor& inside);
void drawCross(QPainter& painter, QPointF centre, double radius, const QColor& colour);

} // namespace wickbook::ui
