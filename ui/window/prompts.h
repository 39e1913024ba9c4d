// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QWidget;

/// The questions a window asks in dialogs of the desktop, by interface so that tests can answer them.

namespace wickbook::ui {

class Prompts {
public:
    virtual ~Prompts() = default;
    /// Where a new book shall lie; empty: not now. folder: where to begin; empty: among the documents.
    virtual QString newBookPath(QWidget* parent, const QString& suggestedName, const QString& folder) = 0;
    /// Which book to open; empty: none.
    virtual QString bookToOpen(QWidget* parent) = 0;
};

/// The desktop's own file dialogs.
class DialogPrompts final : public Prompts {
public:
    QString newBookPath(QWidget* parent, const QString& suggestedName, const QString& folder) override;
    QString bookToOpen(QWidget* parent) override;
};

} // namespace wickbook::ui
