// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

/// Lets Ctrl+Z through to the book where a text field has nothing of its own to take back. A field keeps the
/// key otherwise: what is being typed is taken back first, then what was saved.

namespace wickbook::ui {

class UndoKeys : public QObject {
    Q_OBJECT
public:
    /// Watches the whole application while it lives.
    explicit UndoKeys(QObject* parent);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace wickbook::ui
