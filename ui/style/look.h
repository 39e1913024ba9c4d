// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/style/tokens.h"

#include <QObject>
#include <QString>

class QWidget;

/// The look of one window or dialog: palette and a short style sheet, renewed whenever the desktop turns
/// light or dark. The application's own palette stays the desktop's, so that it can still be asked.
/// Properties that the sheet knows: soft (a label in the soft colour), primary (the one thing to do),
/// quiet (a button that looks like a link), query (a marginal note), wrong (a sentence about a refusal),
/// problem (a field whose text can't be taken), sheet (the page), bulb "dry" / "wet" (text in its colour).

namespace wickbook::ui {

class Look : public QObject {
    Q_OBJECT

public:
    /// Applies the look to a window and keeps it up to date; owned by the window.
    static void follow(QWidget& window);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    explicit Look(QWidget& window);
    void apply();

    QWidget& window_;
};

/// The style sheet for a set of tokens.
QString styleSheetOf(const Tokens& tokens);

/// After setting one of the properties above on a widget that is already shown.
void refreshLook(QWidget& widget);

} // namespace wickbook::ui
