// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QPalette>

/// Colours and spacing, kept in this one place; charts, prints and icons take them from here too.
/// Light or dark follows the lightness of the palette in force, since this Qt does not tell the desktop's
/// scheme. Every text colour reaches 5 : 1 or more on paper and sheet; nothing is told by colour alone.

namespace wickbook::ui {

struct Tokens {
    bool dark = false;
    QColor paper;      ///< behind the page
    QColor sheet;      ///< the page
    QColor ink;        ///< text, marks
    QColor soft;       ///< labels, units
    QColor rule;       ///< ruled lines, never text
    QColor dry;        ///< dry bulb, with its word or a plain bulb
    QColor wet;        ///< wet bulb, with its word or a dashed wick
    QColor accent;     ///< the one thing to do, focus
    QColor onAccent;   ///< text on the accent
    QColor query;      ///< marginal notes: a hollow circle
    QColor queryPaper; ///< behind a marginal note
    QColor queryRule;  ///< round a marginal note
    QColor wrong;      ///< impossible, erroneous: a cross
    QColor tab;        ///< an index tab that lies below
};

const Tokens& lightTokens(); ///< also for everything printed
const Tokens& darkTokens();
/// The set that belongs to a palette: of a widget for painting, of the application for the desktop's choice.
const Tokens& tokensFor(const QPalette& palette);

/// Palette with these colours in every role that widgets use.
QPalette paletteOf(const Tokens& tokens);

namespace space {
inline constexpr int kStep = 4;
inline constexpr int kGroup = 8;    ///< inside a group
inline constexpr int kBetween = 16; ///< between groups
inline constexpr int kEdge = 24;    ///< at the page's edge
inline constexpr int kCorner = 4;
} // namespace space

} // namespace wickbook::ui
