// SPDX-License-Identifier: GPL-3.0-or-later
// Copies of the open book, and restoring from one.
#include "ui/station/restore_dialog.h"
#include "ui/window/main_window.h"
#include "ui/window/page_set.h"

#include <QAction>
#include <QFileInfo>
#include <QMenu>

namespace wickbook::ui {

void MainWindow::buildCopyMenu(QMenu& menu) {
    copyNow_ = menu.addAction(tr("Make a cop&y now"), this, [this] {
        if (pages_ != nullptr) {
            pages_->openCopies(); // where it is told how it went
            pages_->session().copies().keepNow();
        }
    });
    copyNow_->setEnabled(false);
    menu.addAction(tr("Res&tore from a copy…"), this, &MainWindow::restoreFromCopy);
}

void MainWindow::rememberFrom(Session& session) {
    connect(&session, &Session::observerChanged, this,
            [this](const QString& initials) { settings_.setObserver(initials); });
    connect(pages_, &PageSet::openBookAsked, this, &MainWindow::openBook, Qt::QueuedConnection);
    CopyKeeper& copies = session.copies();
    connect(&copies, &CopyKeeper::changed, this, [this, &copies, shown = QString{}]() mutable {
        // Only what is new, for the banner may hold another sentence meanwhile.
        if (shown != copies.trouble()) {
            shown = copies.trouble();
            updateBanner();
        }
    });
    connect(
        &copies, &CopyKeeper::choiceChanged, this,
        [this, book = session.path()](const CopyChoice& choice) { settings_.setCopyChoice(book, choice); });
}

void MainWindow::beginCopies() {
    Session& session = pages_->session();
    // A book that can't be written does not change; a copy of it would say nothing new.
    const bool keeps = session.readOnlySentence().isEmpty();
    copyNow_->setEnabled(keeps);
    if (keeps) {
        session.copies().begin(settings_.copyChoice(session.path()));
    }
}

void MainWindow::restoreFromCopy() {
    RestoreStart start;
    if (pages_ != nullptr) {
        start.folder = pages_->session().copies().folder();
        start.book = pages_->session().path();
    } else if (const QString last = settings_.lastBook(); !last.isEmpty()) {
        // The day it can't be opened any more.
        const QString chosen = settings_.copyChoice(last).folder;
        start.folder = chosen.isEmpty()
                           ? QString::fromStdString(
                                 store::usualCopyFolder(std::filesystem::path{last.toStdString()}).string())
                           : chosen;
        start.book = QFileInfo::exists(last) ? last : QString{};
    }
    RestoreDialog dialog(std::move(start), locale(), this);
    QString asked;
    connect(&dialog, &RestoreDialog::openBookAsked, this, [&asked](const QString& path) { asked = path; });
    dialog.exec();
    if (!asked.isEmpty()) {
        openBook(asked);
    }
}

} // namespace wickbook::ui
