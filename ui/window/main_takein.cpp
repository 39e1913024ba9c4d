// SPDX-License-Identifier: GPL-3.0-or-later
// Files dropped on the window, and the way to bringing in a register.
#include "ui/takein/takein_dialog.h"
#include "ui/window/main_window.h"
#include "ui/window/page_set.h"

#include <QDragEnterEvent>
#include <QDropEvent>
#include <QMimeData>

namespace wickbook::ui {

namespace {

QStringList localFiles(const QMimeData& mime) {
    QStringList files;
    for (const QUrl& url : mime.urls()) {
        if (url.isLocalFile()) {
            files << url.toLocalFile();
        }
    }
    return files;
}

} // namespace

void MainWindow::takeIn(const QStringList& files) {
    if (pages_ == nullptr) {
        tell(tr("Open the book first that the register is to be brought into."));
        return;
    }
    TakeInDialog dialog(pages_->session(), settings_.takeInFile(), this);
    if (!files.isEmpty()) {
        // Shown first: what is chosen has the focus then.
        QMetaObject::invokeMethod(
            &dialog, [&dialog, files] { dialog.takeFiles(files); }, Qt::QueuedConnection);
    }
    dialog.exec();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (!localFiles(*event->mimeData()).isEmpty()) {
        event->acceptProposedAction();
    }
}

void MainWindow::dropEvent(QDropEvent* event) {
    const QStringList files = localFiles(*event->mimeData());
    event->acceptProposedAction();
    if (files.size() == 1 && files.front().endsWith(QLatin1String(".wickbook"))) {
        openBook(files.front());
        return;
    }
    // The program that the files come from waits for the drop to end.
    QMetaObject::invokeMethod(
        this, [this, files] { takeIn(files); }, Qt::QueuedConnection);
}

} // namespace wickbook::ui
