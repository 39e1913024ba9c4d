// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/help_window.h"

#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/window/help_reader.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QShortcut>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace wickbook::ui {

HelpWindow::HelpWindow(const QLocale& locale, QWidget* parent)
    : QDialog(parent)
    , pages_(helpPages(locale))
    , sought_(new QLineEdit)
    , contents_(new QListWidget)
    , reader_(new HelpReader) {
    setWindowTitle(tr("Help"));
    setModal(false);
    Look::follow(*this);

    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(space::kBetween, space::kBetween, space::kBetween, space::kBetween);
    row->setSpacing(space::kBetween);
    auto* left = new QVBoxLayout;
    left->setSpacing(space::kGroup);
    row->addLayout(left, 2);
    sought_->setObjectName(QStringLiteral("helpSought"));
    sought_->setPlaceholderText(tr("Look for a word"));
    sought_->setAccessibleName(tr("Look for a word"));
    sought_->setClearButtonEnabled(true);
    left->addWidget(sought_);
    contents_->setObjectName(QStringLiteral("helpContents"));
    contents_->setAccessibleName(tr("Contents"));
    contents_->setFont(typeFont(TypeSize::Body));
    contents_->setWordWrap(true);
    contents_->setSpacing(2);
    left->addWidget(contents_, 1);
    auto* foot = new QHBoxLayout;
    auto* back = new QPushButton(tr("&Back"));
    back->setAutoDefault(false);
    auto* close = new QPushButton(tr("&Close"));
    close->setAutoDefault(false);
    foot->addWidget(back);
    foot->addWidget(close);
    foot->addStretch(1);
    left->addLayout(foot);
    row->addWidget(reader_, 5);

    connect(sought_, &QLineEdit::textChanged, this, &HelpWindow::search);
    connect(sought_, &QLineEdit::returnPressed, this, [this] { reader_->setFocus(Qt::OtherFocusReason); });
    connect(contents_, &QListWidget::currentItemChanged, this, [this](QListWidgetItem* item) {
        if (item != nullptr) {
            turnTo(item->data(Qt::UserRole).toString(), true);
        }
    });
    connect(contents_, &QListWidget::itemActivated, this,
            [this] { reader_->setFocus(Qt::OtherFocusReason); });
    connect(reader_, &HelpReader::pageAsked, this, &HelpWindow::showPage);
    connect(back, &QPushButton::clicked, this, &HelpWindow::goBack);
    connect(close, &QPushButton::clicked, this, &QDialog::close);
    connect(new QShortcut(QKeySequence::Find, this), &QShortcut::activated, this, [this] {
        sought_->setFocus(Qt::ShortcutFocusReason);
        sought_->selectAll();
    });
    connect(new QShortcut(QKeySequence::Back, this), &QShortcut::activated, this, &HelpWindow::goBack);

    search();
    resize(typePixels(940), typePixels(680));
}

QString HelpWindow::current() const {
    return current_;
}

void HelpWindow::search() {
    const QSignalBlocker quiet(contents_);
    contents_->clear();
    for (const std::size_t at : findHelp(pages_, sought_->text())) {
        auto* item = new QListWidgetItem(pages_[at].title, contents_);
        item->setData(Qt::UserRole, pages_[at].name);
        if (pages_[at].name == current_) {
            contents_->setCurrentItem(item);
        }
    }
    if (contents_->count() == 0) {
        auto* none =
            new QListWidgetItem(tr("No page has these words. Try fewer or shorter ones."), contents_);
        none->setFlags(Qt::NoItemFlags);
        return;
    }
    if (contents_->currentItem() == nullptr && !sought_->text().isEmpty()) {
        contents_->setCurrentRow(0);
        turnTo(contents_->item(0)->data(Qt::UserRole).toString(), true);
    }
    if (!sought_->text().isEmpty()) {
        // The word itself, where it stands first.
        reader_->moveCursor(QTextCursor::Start);
        reader_->find(sought_->text().simplified());
    }
}

void HelpWindow::turnTo(const QString& name, bool remember) {
    const auto page =
        std::find_if(pages_.begin(), pages_.end(), [&](const HelpPage& each) { return each.name == name; });
    const HelpPage& shown = page == pages_.end() ? pages_.front() : *page;
    if (shown.name == current_) {
        return;
    }
    if (remember && !current_.isEmpty()) {
        before_ << current_;
    }
    current_ = shown.name;
    reader_->showPage(shown.title, shown.text);
    const QSignalBlocker quiet(contents_);
    for (int row = 0; row < contents_->count(); ++row) {
        if (contents_->item(row)->data(Qt::UserRole).toString() == current_) {
            contents_->setCurrentRow(row);
        }
    }
}

void HelpWindow::showPage(const QString& name) {
    if (!sought_->text().isEmpty()) {
        sought_->clear(); // all pages again, so that the one asked for stands among them
    }
    turnTo(name, true);
    reader_->setFocus(Qt::OtherFocusReason);
}

void HelpWindow::goBack() {
    if (!before_.isEmpty()) {
        turnTo(before_.takeLast(), false);
    }
}

void HelpWindow::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && !sought_->text().isEmpty()) {
        sought_->clear();
        return;
    }
    QDialog::keyPressEvent(event);
}

} // namespace wickbook::ui
