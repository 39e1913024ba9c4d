// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/log_dialog.h"

#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/window/trouble_log.h"

#include <QClipboard>
#include <QDir>
#include <QFileDialog>
#include <QFontDatabase>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSaveFile>
#include <QScrollBar>
#include <QVBoxLayout>

namespace wickbook::ui {

LogDialog::LogDialog(QWidget* parent)
    : QDialog(parent), text_(new QPlainTextEdit), said_(makeLabel({}, TypeSize::Body, false)) {
    setWindowTitle(tr("Log"));
    Look::follow(*this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
    column->setSpacing(space::kGroup);
    column->addWidget(makeHeading(tr("Log")));
    QLabel* words =
        makeLabel(tr("Starts and troubles, for somebody who helps you. There are no readings, names "
                     "or folders in it; read it before you send it."));
    words->setWordWrap(true);
    column->addWidget(words);
    const QString log = TroubleLog::runningText();
    text_->setObjectName(QStringLiteral("logText"));
    text_->setAccessibleName(tr("Log"));
    text_->setReadOnly(true);
    text_->setFont(QFontDatabase::systemFont(QFontDatabase::FixedFont));
    text_->setPlainText(log.isEmpty() ? tr("Nothing is written down yet.") : log);
    text_->moveCursor(QTextCursor::End);
    column->addWidget(text_, 1);
    said_->setObjectName(QStringLiteral("logSaid"));
    said_->setWordWrap(true);
    said_->hide();
    column->addWidget(said_);
    auto* buttons = new QHBoxLayout;
    auto* copies = new QPushButton(tr("&Copy"));
    auto* keeps = new QPushButton(tr("&Save as a file…"));
    auto* closes = new QPushButton(tr("C&lose"));
    copies->setEnabled(!log.isEmpty());
    keeps->setEnabled(!log.isEmpty());
    buttons->addWidget(copies);
    buttons->addWidget(keeps);
    buttons->addStretch(1);
    buttons->addWidget(closes);
    column->addLayout(buttons);
    connect(copies, &QPushButton::clicked, this, &LogDialog::copy);
    connect(keeps, &QPushButton::clicked, this, &LogDialog::keep);
    connect(closes, &QPushButton::clicked, this, &QDialog::accept);
    resize(typePixels(720), typePixels(480));
}

void LogDialog::copy() {
    QGuiApplication::clipboard()->setText(text_->toPlainText());
    said_->setText(tr("The log is on the clipboard."));
    said_->show();
}

void LogDialog::keep() {
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Save the log"), QDir::home().filePath(QStringLiteral("wickbook-log.txt")),
        tr("Text (*.txt)"));
    if (!path.isEmpty()) {
        keepAs(path);
    }
}

void LogDialog::keepAs(const QString& path) {
    QSaveFile file(path);
    const bool kept =
        file.open(QIODevice::WriteOnly) && file.write(text_->toPlainText().toUtf8()) >= 0 && file.commit();
    said_->setText(
        kept ? tr("The log was saved as %1.").arg(QDir::toNativeSeparators(path))
             : tr("The log could not be saved (%1): choose another folder.").arg(file.errorString()));
    said_->show();
}

} // namespace wickbook::ui
