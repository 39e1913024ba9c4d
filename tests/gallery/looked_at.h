// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

class QWidget;

/// What a person would see wrong with a window without knowing what it is about.

namespace wickbook::test {

/// Texts that have less room than they need: labels, buttons, choices, ticks, column heads. Each as
/// "label “text” (objectName): 40 of 66 px".
QStringList clippedTexts(const QWidget& window);

/// Texts that hold letters and do not come from the pseudo-language. person: what people and places wrote,
/// and what is the same in every language.
QStringList untranslatedTexts(const QWidget& window);

/// What takes the keyboard and looks the same with it as without: a person could not tell where the next key
/// goes. Moves the focus about; the window must be active.
QStringList unseenFocus(QWidget& window);

} // namespace wickbook::test
