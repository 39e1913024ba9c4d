// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QProxyStyle>

namespace wickbook::ui {

/// The desktop's own style, but for pictures on the buttons of dialogs: words are enough, and the pictures
/// differ from desktop to desktop.
class QuietStyle : public QProxyStyle {
    Q_OBJECT

public:
    /// Over this style, which it owns; the platform's where there is none.
    explicit QuietStyle(QStyle* base) : QProxyStyle(base) {}

    int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                  QStyleHintReturn* returned) const override {
        return hint == SH_DialogButtonBox_ButtonsHaveIcons
                   ? 0
                   : QProxyStyle::styleHint(hint, option, widget, returned);
    }
};

} // namespace wickbook::ui
