// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/prompts.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileDialog>
#include <QRegularExpression>
#include <QStandardPaths>

namespace wickbook::ui {

namespace {

class PromptText {
    Q_DECLARE_TR_FUNCTIONS(PromptText)
};

QString documents() {
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return QFileInfo::exists(folder) ? folder : QDir::homePath();
}

QString bookFilter() {
    return PromptText::tr("Wickbook books (*.wickbook);;All files (*)");
}

} // namespace

QString DialogPrompts::newBookPath(QWidget* parent, const QString& suggestedName, const QString& folder) {
    QString name = suggestedName;
    static const QRegularExpression unfit(QStringLiteral("[\\\\/:*?\"<>|]+"));
    name.replace(unfit, QStringLiteral(" "));
    QString path =
        QFileDialog::getSaveFileName(parent, PromptText::tr("Where the new book shall lie"),
                                     QDir(folder.isEmpty() ? documents() : folder)
                                         .filePath(name.simplified() + QStringLiteral(".wickbook")),
                                     bookFilter());
    if (!path.isEmpty() && QFileInfo(path).suffix().isEmpty()) {
        path += QStringLiteral(".wickbook");
    }
    return path;
}

QString DialogPrompts::bookToOpen(QWidget* parent) {
    return QFileDialog::getOpenFileName(parent, PromptText::tr("Open a book"), documents(), bookFilter());
}

} // namespace wickbook::ui
