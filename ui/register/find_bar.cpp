// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/register/find_bar.h"

#include "ui/style/tokens.h"
#include "ui/style/type.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace wickbook::ui {

FindBar::FindBar(QWidget* parent) : QFrame(parent) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kGroup);
    field_ = new QLineEdit;
    field_->setObjectName(QStringLiteral("findText"));
    field_->setAccessibleName(tr("Find in the whole register"));
    field_->setPlaceholderText(tr("a word, a number, a date"));
    field_->setMaximumWidth(typePixels(260));
    auto* label = makeLabel(tr("Find in the whole re&gister"));
    label->setBuddy(field_);
    const auto button = [](const QString& text, const QString& name, const QString& accessible) {
        auto* made = new QPushButton(text);
        made->setObjectName(name);
        made->setAccessibleName(accessible);
        made->setToolTip(accessible);
        return made;
    };
    auto* back = button(tr("Before"), QStringLiteral("findBack"), tr("Find the one before (Shift+F3)"));
    auto* on = button(tr("Next"), QStringLiteral("findOn"), tr("Find the next one (F3)"));
    stop_ = button(tr("Stop"), QStringLiteral("findStop"), tr("Stop looking (Esc)"));
    auto* close = button(tr("Close"), QStringLiteral("findClose"), tr("Close the search (Esc)"));
    status_ = makeLabel({}, TypeSize::Label, false);
    status_->setObjectName(QStringLiteral("findStatus"));
    status_->setWordWrap(true); // a long sentence must not widen the window
    row->addWidget(label);
    row->addWidget(field_, 1);
    row->addWidget(back);
    row->addWidget(on);
    row->addWidget(stop_);
    row->addWidget(status_, 2);
    row->addWidget(close);
    connect(back, &QPushButton::clicked, this, [this] { emit findAsked(false); });
    connect(on, &QPushButton::clicked, this, [this] { emit findAsked(true); });
    connect(stop_, &QPushButton::clicked, this, &FindBar::stopAsked);
    connect(close, &QPushButton::clicked, this, &FindBar::closed);
    connect(field_, &QLineEdit::textEdited, this, [this] { say({}); });
    setRunning(false);
    hide();
}

QString FindBar::text() const {
    return field_->text().simplified();
}

void FindBar::open() {
    show();
    field_->setFocus(Qt::ShortcutFocusReason);
    field_->selectAll();
}

void FindBar::say(const QString& sentence) {
    status_->setText(sentence);
}

void FindBar::setRunning(bool running) {
    running_ = running;
    stop_->setVisible(running);
}

void FindBar::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        if (running_) {
            emit stopAsked();
        } else {
            emit closed();
        }
    } else if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && field_->hasFocus()) {
        emit findAsked(!event->modifiers().testFlag(Qt::ShiftModifier));
    } else {
        QFrame::keyPressEvent(event);
    }
}

} // namespace wickbook::ui
