// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/book_lock.h"

#include <QFileInfo>
#include <QSysInfo>

namespace wickbook::ui {

namespace {

std::optional<BookLock::Holder> holderIn(const QLockFile& file) {
    BookLock::Holder holder;
    QString program;
    if (!file.getLockInfo(&holder.process, &holder.host, &program)) {
        return std::nullopt;
    }
    holder.onThisComputer = holder.host == QSysInfo::machineHostName();
    return holder;
}

} // namespace

QString BookLock::fileFor(const QString& book) {
    const QFileInfo given(book);
    const QString canonical = given.canonicalFilePath();
    const QFileInfo file(canonical.isEmpty() ? given.absoluteFilePath() : canonical);
    return file.path() + QStringLiteral("/.%1.open").arg(file.fileName());
}

BookLock::BookLock(const QString& book) : file_(std::make_unique<QLockFile>(fileFor(book))) {
    // However old: only a holder that is gone makes it stale.
    file_->setStaleLockTime(0);
    if (!file_->tryLock(0) && file_->error() == QLockFile::LockFailedError) {
        other_ = holderIn(*file_);
    }
}

std::optional<BookLock::Holder> BookLock::holderOf(const QString& book) {
    return BookLock(book).heldByAnother();
}

} // namespace wickbook::ui
