// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>
#include <QRectF>
#include <QString>

class QLabel;
class QPainter;

/// Type sizes, in the desktop's own font. Sizes grow with a desktop font that is set larger than usual, so
/// that somebody who needs larger letters gets them here too.

namespace wickbook::ui {

enum class TypeSize { Label = 13, Body = 14, Entry = 20, Heading = 21, Answer = 60 };

/// Gives the application letters of factor times the desktop's own; every size here grows with them.
void growLetters(const QFont& desktopFont, double factor);

QFont typeFont(TypeSize size, bool bold = false);
/// Pixels of a size given at the usual desktop font, scaled like the type.
int typePixels(int atUsualFont);

/// A label with its type and, when soft, in the soft colour.
QLabel* makeLabel(const QString& text, TypeSize size = TypeSize::Label, bool soft = true);
QLabel* makeHeading(const QString& text);

/// Paints digits in cells of one width, whatever the font, so that figures stand under each other.
void drawTabular(QPainter& painter, const QRectF& where, Qt::Alignment alignment, const QString& text);
double tabularWidth(const QFont& font, const QString& text);

} // namespace wickbook::ui
