// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/observe/working_dialog.h"

#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"

#include <QApplication>
#include <QClipboard>
#include <QEvent>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QMimeData>
#include <QPainter>
#include <QPdfWriter>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QSaveFile>
#include <QTextBrowser>
#include <QTextDocument>
#include <QVBoxLayout>

namespace wickbook::ui {

namespace {

constexpr int kPictureWidth = 900;
constexpr double kPictureScale = 2.0;
constexpr int kPictureEdge = 24;
constexpr int kPdfResolution = 300; // dots an inch
constexpr double kPaperEdge = 15;   // mm

void fillPaper(QTextDocument& paper, const WorkingDialog::Words& words) {
    QFont font = typeFont(TypeSize::Body);
    font.setPointSizeF(10.5);
    paper.setDefaultFont(font);
    paper.setDefaultStyleSheet(
        QStringLiteral("body, td, p, h3 { color: %1; }").arg(lightTokens().ink.name()));
    paper.setHtml(words ? words(lightTokens()) : QString{});
}

} // namespace

WorkingDialog::WorkingDialog(QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("The working"));
    Look::follow(*this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kBetween, space::kBetween, space::kBetween, space::kBetween);
    text_ = new QTextBrowser;
    text_->setAccessibleName(tr("The working"));
    text_->setFont(typeFont(TypeSize::Body));
    column->addWidget(text_, 1);
    message_ = makeLabel({});
    message_->setWordWrap(true);
    message_->hide();
    column->addWidget(message_);
    auto* row = new QHBoxLayout;
    const auto button = [&](const QString& words, auto what) {
        auto* made = new QPushButton(words);
        made->setAutoDefault(false);
        connect(made, &QPushButton::clicked, this, what);
        row->addWidget(made);
        return made;
    };
    button(tr("&Copy"), &WorkingDialog::copyText);
    button(tr("Copy as a p&icture"), &WorkingDialog::copyPicture);
    button(tr("&Print…"), &WorkingDialog::print);
    button(tr("Keep as P&DF…"), &WorkingDialog::savePdf);
    row->addStretch();
    button(tr("C&lose"), &QDialog::close);
    column->addLayout(row);
    resize(typePixels(960), typePixels(620));
}

void WorkingDialog::showWorking(const Words& words) {
    words_ = words;
    text_->setHtml(words_(tokensFor(palette())));
    message_->hide();
}

void WorkingDialog::changeEvent(QEvent* event) {
    QDialog::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && words_) { // the desktop turned light or dark
        text_->setHtml(words_(tokensFor(palette())));
    }
}

QString WorkingDialog::plainText() const {
    return text_->toPlainText();
}

void WorkingDialog::say(const QString& sentence) {
    message_->setText(sentence);
    message_->setVisible(!sentence.isEmpty());
}

void WorkingDialog::copyText() {
    auto* both = new QMimeData;
    both->setHtml(words_ ? words_(lightTokens()) : QString{});
    both->setText(text_->toPlainText());
    QApplication::clipboard()->setMimeData(both);
    say(tr("Copied as text."));
}

void WorkingDialog::copyPicture() {
    QApplication::clipboard()->setImage(picture());
    say(tr("Copied as a picture."));
}

QImage WorkingDialog::picture() const {
    QTextDocument paper;
    fillPaper(paper, words_);
    paper.setTextWidth(kPictureWidth);
    const QSizeF size = paper.size() + QSizeF(2 * kPictureEdge, 2 * kPictureEdge);
    QImage image((size * kPictureScale).toSize(), QImage::Format_RGB32);
    image.setDevicePixelRatio(kPictureScale);
    image.fill(lightTokens().sheet);
    QPainter painter(&image);
    painter.translate(kPictureEdge, kPictureEdge);
    paper.drawContents(&painter);
    return image;
}

void WorkingDialog::print() {
    QPrinter printer(QPrinter::HighResolution);
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() == QDialog::Accepted) {
        QTextDocument paper;
        fillPaper(paper, words_);
        paper.print(&printer);
    }
}

QString WorkingDialog::writePdf(const QString& path) const {
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly)) {
        return tr("The PDF can't be written: %1. Choose another folder.").arg(file.errorString());
    }
    {
        QPdfWriter writer(&file);
        writer.setResolution(kPdfResolution);
        writer.setTitle(windowTitle());
        writer.setPageMargins(QMarginsF(kPaperEdge, kPaperEdge, kPaperEdge, kPaperEdge),
                              QPageLayout::Millimeter);
        QTextDocument paper;
        fillPaper(paper, words_);
        paper.print(&writer);
    }
    if (!file.commit()) {
        return tr("The PDF can't be written: %1. Choose another folder.").arg(file.errorString());
    }
    return {};
}

void WorkingDialog::savePdf() {
    QString path = QFileDialog::getSaveFileName(this, tr("Keep the working as a PDF"), tr("working.pdf"),
                                                tr("PDF (*.pdf)"));
    if (path.isEmpty()) {
        return;
    }
    if (!path.endsWith(QLatin1String(".pdf"), Qt::CaseInsensitive)) {
        path += QLatin1String(".pdf");
    }
    const QString problem = writePdf(path);
    say(problem.isEmpty() ? tr("Kept as %1.").arg(path) : problem);
}

} // namespace wickbook::ui
