// SPDX-License-Identifier: GPL-3.0-or-later
// How the window for restoring is laid out; what it does is in restore_dialog.cpp.
#include "ui/station/restore_dialog.h"
#include "ui/style/look.h"
#include "ui/style/type.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>

namespace wickbook::ui {

namespace {

constexpr int kRestoreWidth = 760;
constexpr int kRestoreHeight = 560;

} // namespace

void RestoreDialog::build() {
    setWindowTitle(tr("Restore from a copy"));
    Look::follow(*this);
    resize(typePixels(kRestoreWidth), typePixels(kRestoreHeight));
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
    page->setSpacing(space::kGroup);
    page->addWidget(makeHeading(tr("Restore from a copy")));
    buildCopies(*page);

    auto* name = new QHBoxLayout;
    QLabel* label = makeLabel(tr("&New book"));
    newBook_ = new QLineEdit;
    newBook_->setObjectName(QStringLiteral("restoreNewBook"));
    newBook_->setAccessibleName(tr("file of the new book"));
    label->setBuddy(newBook_);
    choose_ = new QPushButton(tr("C&hoose…"));
    choose_->setAccessibleName(tr("choose the file of the new book"));
    name->addWidget(label);
    name->addWidget(newBook_, 1);
    name->addWidget(choose_);
    page->addLayout(name);

    sentence_ = makeLabel({}, TypeSize::Body, false);
    sentence_->setObjectName(QStringLiteral("restoreSentence"));
    sentence_->setWordWrap(true);
    page->addWidget(sentence_);
    lines_ = new QListWidget;
    lines_->setObjectName(QStringLiteral("restoreDifferences"));
    lines_->setAccessibleName(tr("what differs"));
    lines_->setWordWrap(true);
    lines_->setFont(typeFont(TypeSize::Body));
    lines_->hide();
    page->addWidget(lines_, 2);
    blank_ = new QWidget;
    page->addWidget(blank_, 2);
    buildFoot(*page);
}

void RestoreDialog::buildCopies(QVBoxLayout& page) {
    auto* row = new QHBoxLayout;
    where_ = makeLabel({}, TypeSize::Body, false);
    where_->setWordWrap(true);
    folderButton_ = new QPushButton(tr("Another &folder…"));
    folderButton_->setObjectName(QStringLiteral("restoreFolder"));
    fileButton_ = new QPushButton(tr("Another f&ile…"));
    fileButton_->setObjectName(QStringLiteral("restoreFile"));
    row->addWidget(where_, 1);
    row->addWidget(folderButton_);
    row->addWidget(fileButton_);
    page.addLayout(row);
    list_ = new QListWidget;
    list_->setObjectName(QStringLiteral("restoreCopies"));
    list_->setAccessibleName(tr("copies to restore from"));
    list_->setFont(typeFont(TypeSize::Body));
    page.addWidget(list_, 3);
}

void RestoreDialog::buildFoot(QVBoxLayout& page) {
    bar_ = new QProgressBar;
    bar_->setAccessibleName(tr("how far it is"));
    bar_->setTextVisible(false);
    bar_->setFixedHeight(typePixels(8));
    page.addWidget(bar_);
    auto* row = new QHBoxLayout;
    verify_ = new QPushButton(tr("&Verify the copy"));
    verify_->setObjectName(QStringLiteral("restoreVerify"));
    restore_ = new QPushButton(tr("&Restore"));
    restore_->setObjectName(QStringLiteral("restoreGo"));
    restore_->setProperty("primary", true);
    open_ = new QPushButton(tr("&Open the restored book"));
    open_->setObjectName(QStringLiteral("restoreOpen"));
    open_->setProperty("primary", true);
    close_ = new QPushButton(tr("Close"));
    close_->setObjectName(QStringLiteral("restoreClose"));
    for (QPushButton* button : {folderButton_, fileButton_, choose_, verify_, close_}) {
        button->setAutoDefault(false);
    }
    restore_->setDefault(true);
    row->addWidget(verify_);
    row->addStretch();
    row->addWidget(restore_);
    row->addWidget(open_);
    row->addWidget(close_);
    page.addLayout(row);
}

} // namespace wickbook::ui
