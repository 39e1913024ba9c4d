// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/import_preview.h"

#include <QLocale>
#include <QString>

/// What is said while a register is brought in.

namespace wickbook::ui {

/// "dry bulb", "date", …: what a column may be.
QString fieldWords(exchange::ImportField field);
/// As importErrorWords, said to somebody who sits before the window. name: of the file.
QString takeInErrorWords(const exchange::ImportError& error, const QString& name);
/// One word for how a line stands: "new", "there already", "conflict", "left out", and "new, marked".
QString verdictWords(const desk::PreviewLine& line, exchange::OnConflict onConflict);
/// The sentence beside it: why it is left out, what the book has, what the rules say.
QString verdictSentence(const QLocale& locale, const desk::PreviewLine& line,
                        exchange::OnConflict onConflict);
/// "1,240 lines: 1,200 new (8 marked), 30 there already, 4 conflicts, 6 left out."
QString countsSentence(const QLocale& locale, const desk::ImportPreview& preview);
/// "61.5 °F": a file may hold both units.
QString bulbWithUnit(const QLocale& locale, const record::BulbReading& bulb);
QString separatorWords(char separator);

} // namespace wickbook::ui
