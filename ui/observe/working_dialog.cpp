// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/observe/working_dialog.h"

#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QMimeData>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QTextBrowser>
#include <QTextDocument>
#include <QVBoxLayout>

namespace wickbook::ui {

WorkingDialog::WorkingDialog(QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("The working"));
    Look::follow(*this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kBetween, space::kBetween, space::kBetween, space::kBetween);
    text_ = new QTextBrowser;
    text_->setAccessibleName(tr("The working"));
    text_->setFont(typeFont(TypeSize::Body));
    column->addWidget(text_, 1);
    auto* row = new QHBoxLayout;
    auto* copy = new QPushButton(tr("&Copy"));
    auto* print = new QPushButton(tr("&Print…"));
    auto* close = new QPushButton(tr("Close"));
    connect(copy, &QPushButton::clicked, this, &WorkingDialog::copyAll);
    connect(print, &QPushButton::clicked, this, &WorkingDialog::print);
    connect(close, &QPushButton::clicked, this, &QDialog::close);
    row->addWidget(copy);
    row->addWidget(print);
    row->addStretch();
    row->addWidget(close);
    column->addLayout(row);
    resize(typePixels(560), typePixels(680));
}

void WorkingDialog::showHtml(const QString& html) {
    text_->setHtml(html);
}

QString WorkingDialog::plainText() const {
    return text_->toPlainText();
}

void WorkingDialog::copyAll() {
    auto* both = new QMimeData;
    both->setHtml(text_->toHtml());
    both->setText(text_->toPlainText());
    QApplication::clipboard()->setMimeData(both);
}

void WorkingDialog::print() {
    QPrinter printer(QPrinter::HighResolution);
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() == QDialog::Accepted) {
        QTextDocument paper; // its own document: paper is always dark on light
        paper.setDefaultFont(typeFont(TypeSize::Body));
        paper.setHtml(text_->toHtml());
        paper.print(&printer);
    }
}

} // namespace wickbook::ui
