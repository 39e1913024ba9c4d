// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/window/book_lock.h"

/// What is done and said about a book that another window has open.

namespace wickbook::ui {

/// Whether another window on this computer has the book and came forward when it was asked.
bool broughtForward(const BookLock& lock);
QString openElsewhereWords(const QString& book);
/// Why it opens for reading only: its holder can't be reached from here.
QString onlyToReadWords(const QString& book, const BookLock::Holder& holder);

} // namespace wickbook::ui
