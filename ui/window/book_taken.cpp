// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/book_taken.h"

#include "ui/window/raise_line.h"

#include <QCoreApplication>
#include <QFileInfo>

namespace wickbook::ui {

namespace {

struct TakenText {
    Q_DECLARE_TR_FUNCTIONS(TakenText)
};

} // namespace

bool broughtForward(const BookLock& lock) {
    const auto& holder = lock.heldByAnother();
    return holder && holder->onThisComputer && holder->process != QCoreApplication::applicationPid() &&
           RaiseLine::call(holder->process);
}

QString openElsewhereWords(const QString& book) {
    return TakenText::tr("%1 is open in another window, which was brought forward: go on there.")
        .arg(QFileInfo(book).fileName());
}

QString onlyToReadWords(const QString& book, const BookLock::Holder& holder) {
    const QString file = QFileInfo(book).fileName();
    return holder.onThisComputer || holder.host.isEmpty()
               ? TakenText::tr(
                     "%1 is open in another window and can only be read here: close it there, then open "
                     "it here again.")
                     .arg(file)
               : TakenText::tr(
                     "%1 is open on the computer %2 and can only be read here: close it there, then open "
                     "it here again.")
                     .arg(file, holder.host);
}

} // namespace wickbook::ui
