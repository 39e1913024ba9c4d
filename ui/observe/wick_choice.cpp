// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/observe/wick_choice.h"

#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QKeySequence>
#include <QPushButton>

namespace wickbook::ui {

namespace {
constexpr int kRoundWords = 22;
} // namespace

LetterChoice::LetterChoice(const QString& what, const QList<Answer>& answers, QWidget* parent)
    : QWidget(parent), answers_(answers) {
    setAccessibleName(what);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kStep);
    for (const Answer& answer : answers) {
        const QString letter = QKeySequence(answer.key).toString();
        auto* button = new QPushButton(answer.words + QStringLiteral("  ") + letter);
        button->setProperty("choice", true);
        button->setCheckable(true);
        button->setAutoDefault(false);
        button->setFont(typeFont(TypeSize::Body));
        // Before the look is on it a button does not know of the room round its words.
        button->setMinimumWidth(button->fontMetrics().horizontalAdvance(button->text()) +
                                typePixels(kRoundWords));
        button->setAccessibleName(tr("%1: %2, key %3").arg(what, answer.words, letter));
        connect(button, &QPushButton::clicked, this, [this, key = answer.key] { takeKey(key); });
        row->addWidget(button);
        buttons_.append(button);
    }
    if (!buttons_.isEmpty()) {
        setFocusProxy(buttons_.first());
    }
}

void LetterChoice::setValue(const QString& value) {
    value_ = value;
    for (qsizetype index = 0; index < answers_.size(); ++index) {
        buttons_[index]->setChecked(answers_[index].value == value);
    }
}

bool LetterChoice::takeKey(int key) {
    for (const Answer& answer : answers_) {
        if (answer.key == key) {
            setValue(answer.value == value_ ? QString{} : answer.value);
            emit changed();
            return true;
        }
    }
    return false;
}

void LetterChoice::showAsked(bool asked) {
    for (QPushButton* button : std::as_const(buttons_)) {
        if (button->property("asked").toBool() != asked) {
            button->setProperty("asked", asked);
            refreshLook(*button);
        }
    }
}

void LetterChoice::keyPressEvent(QKeyEvent* event) {
    if (event->modifiers() != Qt::NoModifier || !takeKey(event->key())) {
        QWidget::keyPressEvent(event);
    }
}

} // namespace wickbook::ui
