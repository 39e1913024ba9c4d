// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/register/paper_words.h"

#include <QCoreApplication>

namespace wickbook::ui {

QString paperWords(const std::optional<record::PaperPlace>& place) {
    if (!place) {
        return {};
    }
    const QString book = QString::fromStdString(place->book).simplified();
    const QString page = QString::fromStdString(place->page).simplified();
    if (page.isEmpty()) {
        return book;
    }
    //: page of a paper register
    const QString words = QCoreApplication::translate("paper", "p. %1").arg(page);
    return book.isEmpty() ? words : QStringLiteral("%1, %2").arg(book, words);
}

} // namespace wickbook::ui
