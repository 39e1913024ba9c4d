// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/book_difference.h"

#include <QLocale>
#include <QString>
#include <QStringList>

/// What differs between two books, in words: totals as sentences, then a line for each reading and fact.

namespace wickbook::ui {

/// What the two books are called: "the restored book", "the book that is open"; file names.
struct BookNames {
    QString first;
    QString second;
};

/// One sentence for each kind of difference there is; one sentence where there is none.
QStringList differenceSentences(const QLocale& locale, const store::BookDifference& difference,
                                const BookNames& names);
/// A line for each difference that is listed, readings first; a last one where more differ than are listed.
QStringList differenceLines(const QLocale& locale, const store::BookDifference& difference,
                            const BookNames& names);

} // namespace wickbook::ui
