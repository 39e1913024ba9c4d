// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

namespace wickbook::ui {

/// Reasons for a missing hour as the book keeps them: "away", "ill", "wick dry", "broken", "forgotten".
QStringList missingReasons();
/// The reason in the person's language; own words come back as they are.
QString missingReasonWords(const QString& reason);
/// What to store for words chosen or typed.
QString missingReasonFromWords(const QString& words);

} // namespace wickbook::ui
