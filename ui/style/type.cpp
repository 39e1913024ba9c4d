// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/style/type.h"

#include <QApplication>
#include <QFontInfo>
#include <QFontMetricsF>
#include <QLabel>
#include <QPainter>

#include <algorithm>

namespace wickbook::ui {

namespace {

/// Desktop fonts of 9 to 11 points are usual; beyond that the person wants larger letters.
constexpr double kUsualDesktopPixels = 15.0;

const char* const kGrown = "wickbook-letters";

double grownBy() {
    const QVariant factor = qApp->property(kGrown);
    return factor.isValid() ? factor.toDouble() : 1.0;
}

double typeScale() {
    const double desktopPixels = QFontInfo(QApplication::font()).pixelSize() / grownBy();
    return std::max(1.0, desktopPixels / kUsualDesktopPixels) * grownBy();
}

double digitWidth(const QFontMetricsF& metrics) {
    double widest = 0;
    for (char16_t digit = u'0'; digit <= u'9'; ++digit) {
        widest = std::max(widest, metrics.horizontalAdvance(QChar(digit)));
    }
    return widest;
}

} // namespace

void growLetters(const QFont& desktopFont, double factor) {
    QFont font = desktopFont;
    if (font.pointSizeF() > 0) {
        font.setPointSizeF(font.pointSizeF() * factor);
    } else {
        font.setPixelSize(std::max(1, static_cast<int>(font.pixelSize() * factor + 0.5)));
    }
    qApp->setProperty(kGrown, factor);
    QApplication::setFont(font);
}

int typePixels(int atUsualFont) {
    return static_cast<int>(atUsualFont * typeScale() + 0.5);
}

QFont typeFont(TypeSize size, bool bold) {
    QFont font = QApplication::font();
    font.setPixelSize(typePixels(static_cast<int>(size)));
    font.setWeight(bold ? QFont::Bold : QFont::Normal);
    return font;
}

QLabel* makeLabel(const QString& text, TypeSize size, bool soft) {
    auto* label = new QLabel(text);
    label->setTextFormat(Qt::PlainText); // what people wrote is text, never markup
    label->setFont(typeFont(size));
    if (soft) {
        label->setProperty("soft", true);
    }
    return label;
}

QLabel* makeHeading(const QString& text) {
    QLabel* label = makeLabel(text, TypeSize::Heading, false);
    label->setFont(typeFont(TypeSize::Heading, true));
    return label;
}

double tabularWidth(const QFont& font, const QString& text) {
    const QFontMetricsF metrics(font);
    const double digit = digitWidth(metrics);
    double width = 0;
    for (const QChar letter : text) {
        width += letter.isDigit() ? digit : metrics.horizontalAdvance(letter);
    }
    return width;
}

void drawTabular(QPainter& painter, const QRectF& where, Qt::Alignment alignment, const QString& text) {
    const QFontMetricsF metrics(painter.font());
    const double digit = digitWidth(metrics);
    const double width = tabularWidth(painter.font(), text);
    double x = where.left();
    if (alignment & Qt::AlignRight) {
        x = where.right() - width;
    } else if (alignment & Qt::AlignHCenter) {
        x = where.center().x() - width / 2;
    }
    double baseline = where.center().y() + (metrics.ascent() - metrics.descent()) / 2;
    if (alignment & Qt::AlignTop) {
        baseline = where.top() + metrics.ascent();
    } else if (alignment & Qt::AlignBottom) {
        baseline = where.bottom() - metrics.descent();
    }
    for (const QChar letter : text) {
        const double own = metrics.horizontalAdvance(letter);
        const double cell = letter.isDigit() ? digit : own;
        painter.drawText(QPointF(x + (cell - own) / 2, baseline), QString(letter));
        x += cell;
    }
}

} // namespace wickbook::ui
