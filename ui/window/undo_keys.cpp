// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/undo_keys.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QLineEdit>

namespace wickbook::ui {

UndoKeys::UndoKeys(QObject* parent) : QObject(parent) {
    QCoreApplication::instance()->installEventFilter(this);
}

bool UndoKeys::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::ShortcutOverride) {
        return false;
    }
    const auto* edit = qobject_cast<QLineEdit*>(watched);
    const auto* key = static_cast<QKeyEvent*>(event);
    if (edit == nullptr) {
        return false;
    }
    const bool ownUndo = key->matches(QKeySequence::Undo) && !edit->isUndoAvailable();
    const bool redoKeys = key->keyCombination() == (Qt::CTRL | Qt::SHIFT | Qt::Key_Z) ||
                          key->keyCombination() == (Qt::CTRL | Qt::Key_Y);
    const bool ownRedo = redoKeys && !edit->isRedoAvailable();
    if (ownUndo || ownRedo) {
        event->ignore();
        return true;
    }
    return false;
}

} // namespace wickbook::ui
