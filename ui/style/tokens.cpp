// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/style/tokens.h"

namespace wickbook::ui {

const Tokens& lightTokens() {
    static const Tokens tokens{false,
                               QColor(0xFB, 0xF8, 0xF1),
                               QColor(0xFF, 0xFF, 0xFF),
                               QColor(0x22, 0x26, 0x2B),
                               QColor(0x5E, 0x64, 0x6B),
                               QColor(0xDA, 0xD4, 0xC6),
                               QColor(0xA8, 0x50, 0x0F),
                               QColor(0x1C, 0x5C, 0x96),
                               QColor(0x2F, 0x6B, 0x4F),
                               QColor(0xFF, 0xFF, 0xFF),
                               QColor(0x8A, 0x5A, 0x00),
                               QColor(0xFF, 0xF6, 0xDF),
                               QColor(0xE4, 0xD4, 0xA6),
                               QColor(0xA3, 0x26, 0x2B),
                               QColor(0xEF, 0xE9, 0xDB)};
    return tokens;
}

const Tokens& darkTokens() {
    static const Tokens tokens{true,
                               QColor(0x1D, 0x20, 0x23),
                               QColor(0x24, 0x28, 0x2C),
                               QColor(0xEC, 0xE7, 0xDB),
                               QColor(0xA7, 0xAB, 0xAF),
                               QColor(0x3B, 0x40, 0x45),
                               QColor(0xF0, 0xA8, 0x68),
                               QColor(0x8C, 0xC1, 0xF0),
                               QColor(0x8F, 0xCB, 0xAE),
                               QColor(0x1D, 0x20, 0x23),
                               QColor(0xE8, 0xC4, 0x68),
                               QColor(0x24, 0x28, 0x2C),
                               QColor(0x6B, 0x5D, 0x38),
                               QColor(0xF2, 0x95, 0x9A),
                               QColor(0x1D, 0x20, 0x23)};
    return tokens;
}

const Tokens& tokensFor(const QPalette& palette) {
    const bool dark =
        palette.color(QPalette::Window).lightnessF() < palette.color(QPalette::WindowText).lightnessF();
    return dark ? darkTokens() : lightTokens();
}

QPalette paletteOf(const Tokens& tokens) {
    QPalette palette;
    palette.setColor(QPalette::Window, tokens.paper);
    palette.setColor(QPalette::WindowText, tokens.ink);
    palette.setColor(QPalette::Base, tokens.sheet);
    palette.setColor(QPalette::AlternateBase, tokens.paper);
    palette.setColor(QPalette::Text, tokens.ink);
    palette.setColor(QPalette::PlaceholderText, tokens.soft);
    palette.setColor(QPalette::Button, tokens.sheet);
    palette.setColor(QPalette::ButtonText, tokens.ink);
    palette.setColor(QPalette::BrightText, tokens.wrong);
    palette.setColor(QPalette::ToolTipBase, tokens.sheet);
    palette.setColor(QPalette::ToolTipText, tokens.ink);
    palette.setColor(QPalette::Highlight, tokens.accent);
    palette.setColor(QPalette::HighlightedText, tokens.onAccent);
    palette.setColor(QPalette::Link, tokens.accent);
    palette.setColor(QPalette::LinkVisited, tokens.accent);
    palette.setColor(QPalette::Light, tokens.sheet);
    palette.setColor(QPalette::Midlight, tokens.rule);
    palette.setColor(QPalette::Mid, tokens.rule);
    palette.setColor(QPalette::Dark, tokens.soft);
    palette.setColor(QPalette::Shadow, tokens.rule);
    for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        palette.setColor(QPalette::Disabled, role, tokens.soft);
    }
    palette.setColor(QPalette::Disabled, QPalette::Base, tokens.paper);
    return palette;
}

} // namespace wickbook::ui
