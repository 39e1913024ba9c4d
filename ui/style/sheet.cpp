// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/style/sheet.h"

#include "ui/style/tokens.h"

#include <QPainter>

namespace wickbook::ui {

Sheet::Sheet(QWidget* parent) : QFrame(parent) {
    setFrameShape(QFrame::NoFrame);
}

void Sheet::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Tokens& tokens = tokensFor(palette());
    painter.setPen(QPen(tokens.rule, 1));
    painter.setBrush(tokens.sheet);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), space::kCorner, space::kCorner);
}

RuledLine::RuledLine(Qt::Orientation orientation, QWidget* parent)
    : QWidget(parent), orientation_(orientation) {
    if (orientation == Qt::Horizontal) {
        setFixedHeight(1);
    } else {
        setFixedWidth(1);
    }
}

void RuledLine::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.fillRect(rect(), tokensFor(palette()).rule);
}

} // namespace wickbook::ui
